#include "views/style/ink.h"

#include <array>
#include <utility>

namespace ts {

namespace {

constexpr std::array names{std::pair{"paper", &Ink::paper},
                           std::pair{"raised", &Ink::raised},
                           std::pair{"sheet", &Ink::sheet},
                           std::pair{"rack", &Ink::rack},
                           std::pair{"line", &Ink::line},
                           std::pair{"strong", &Ink::strong},
                           std::pair{"ink", &Ink::ink},
                           std::pair{"quiet", &Ink::quiet},
                           std::pair{"faint", &Ink::faint},
                           std::pair{"copper", &Ink::copper},
                           std::pair{"on_copper", &Ink::onCopper},
                           std::pair{"copper_paper", &Ink::copperPaper},
                           std::pair{"within", &Ink::within},
                           std::pair{"within_paper", &Ink::withinPaper},
                           std::pair{"outside", &Ink::outside},
                           std::pair{"outside_paper", &Ink::outsidePaper},
                           std::pair{"too_close", &Ink::tooClose},
                           std::pair{"too_close_paper", &Ink::tooClosePaper},
                           std::pair{"neutral", &Ink::neutral},
                           std::pair{"neutral_paper", &Ink::neutralPaper},
                           std::pair{"hint", &Ink::hint},
                           std::pair{"hint_paper", &Ink::hintPaper},
                           std::pair{"bar", &Ink::bar},
                           std::pair{"passed", &Ink::passed}};

} // namespace

Ink lightInk()
{
    return {.paper = QColor(0xf5f3ee),
            .raised = QColor(0xfbfaf7),
            .sheet = QColor(0xfffdf9),
            .rack = QColor(0xefebe2),
            .line = QColor(0xdcd7cc),
            .strong = QColor(0xc9c2b4),
            .ink = QColor(0x23272b),
            .quiet = QColor(0x5f666c),
            .faint = QColor(0x6c655a),
            .copper = QColor(0xa8502a),
            .onCopper = QColor(0xfffdf9),
            .copperPaper = QColor(0xf7ede7),
            .within = QColor(0x21633a),
            .withinPaper = QColor(0xe1f0e4),
            .outside = QColor(0x9b2a22),
            .outsidePaper = QColor(0xf8e1de),
            .tooClose = QColor(0x7d590b),
            .tooClosePaper = QColor(0xfaeed2),
            .neutral = QColor(0x625b4e),
            .neutralPaper = QColor(0xece7db),
            .hint = QColor(0x22587a),
            .hintPaper = QColor(0xe0edf3),
            .bar = QColor(0xe9e4d9),
            .passed = QColor(0xe2dccd)};
}

Ink darkInk()
{
    return {.paper = QColor(0x1f2022),
            .raised = QColor(0x26272a),
            .sheet = QColor(0x2b2c30),
            .rack = QColor(0x1a1b1d),
            .line = QColor(0x3e3f43),
            .strong = QColor(0x55565b),
            .ink = QColor(0xebe7df),
            .quiet = QColor(0xb0b4b8),
            .faint = QColor(0xb8b0a2),
            .copper = QColor(0xe0976b),
            .onCopper = QColor(0x24140b),
            .copperPaper = QColor(0x3a2c25),
            .within = QColor(0x96d6aa),
            .withinPaper = QColor(0x21392a),
            .outside = QColor(0xf3aca4),
            .outsidePaper = QColor(0x4a2623),
            .tooClose = QColor(0xe9c873),
            .tooClosePaper = QColor(0x423516),
            .neutral = QColor(0xd0c9ba),
            .neutralPaper = QColor(0x3b3934),
            .hint = QColor(0x9fcbe3),
            .hintPaper = QColor(0x213845),
            .bar = QColor(0x3b3c40),
            .passed = QColor(0x3a3833)};
}

QColor inkNamed(const Ink &ink, const QString &name)
{
    for (const auto &[word, member] : names)
        if (name == QLatin1String(word))
            return ink.*member;
    return {};
}

} // namespace ts
