#include "model/sums/category_guess.h"

#include <QRegularExpression>

#include <array>

namespace ts {

namespace {

struct Naming {
    Category category;
    const char *words; ///< a pattern, words whole
};

// What people call the things (common practice, no source). Those that say more stand first: a "clock radio tuner" is rare, a "tuner
// amplifier" is an amplifier with a tuner in it.
constexpr std::array namings{Naming{Category::ReelRecorder, "reel(?: to reel)? (?:recorder|deck|machine)|open reel|reel to reel|tape recorder|reel recorder"},
                             Naming{Category::CassetteDeck, "cassette|tape deck"},
                             Naming{Category::DiscPlayer, "(?:compact )?dis[ck] (?:player|changer|transport)|cd (?:player|changer|transport|recorder)|cd|dvd|laserdisc|minidisc"},
                             Naming{Category::Turntable, "turntable|record (?:player|deck)"},
                             Naming{Category::AmplifierReceiver, "receiver|amplifier|amp|preamplifier|preamp|power amp"},
                             Naming{Category::Loudspeaker, "loudspeakers?|speakers?|subwoofer"},
                             Naming{Category::GameConsole, "(?:game |games |video game )?console|handheld game"},
                             Naming{Category::OldComputer, "(?:home )?computer"},
                             Naming{Category::TestGear, "oscilloscope|multimeter|signal generator|function generator|frequency counter|test gear|wow and flutter meter|millivoltmeter|distortion meter"},
                             Naming{Category::Tuner, "tuner"},
                             Naming{Category::Radio, "radio"}};

} // namespace

std::optional<Category> categoryNamed(const QString &name)
{
    const QString text = QString(name).replace(QLatin1Char('-'), QLatin1Char(' ')).simplified();
    for (const auto &[category, words] : namings)
        if (QRegularExpression(QStringLiteral("\\b(?:%1)\\b").arg(QLatin1String(words)), QRegularExpression::CaseInsensitiveOption).match(text).hasMatch())
            return category;
    return std::nullopt;
}

} // namespace ts
