#include "views/widgets/word_text.h"

#include <QCoreApplication>

namespace ts::shown {

namespace {

// Every word that a record stores for people to choose from. The stored ones are fixed; these are what is read.
constexpr std::array words{
    std::pair{"open", QT_TRANSLATE_NOOP("words", "open")},
    std::pair{"cleared", QT_TRANSLATE_NOOP("words", "cleared")},
    std::pair{"ruled_out", QT_TRANSLATE_NOOP("words", "ruled out")},
    std::pair{"confirmed", QT_TRANSLATE_NOOP("words", "confirmed")},
    std::pair{"not_done", QT_TRANSLATE_NOOP("words", "not done")},
    std::pair{"normal", QT_TRANSLATE_NOOP("words", "normal")},
    std::pair{"abnormal", QT_TRANSLATE_NOOP("words", "abnormal")},
    std::pair{"unclear", QT_TRANSLATE_NOOP("words", "unclear")},
    std::pair{"as_found", QT_TRANSLATE_NOOP("words", "as found")},
    std::pair{"during_work", QT_TRANSLATE_NOOP("words", "during work")},
    std::pair{"as_it_leaves", QT_TRANSLATE_NOOP("words", "as it leaves")},
    std::pair{"clean", QT_TRANSLATE_NOOP("words", "clean")},
    std::pair{"lubricate", QT_TRANSLATE_NOOP("words", "lubricate")},
    std::pair{"adjust", QT_TRANSLATE_NOOP("words", "adjust")},
    std::pair{"solder", QT_TRANSLATE_NOOP("words", "solder")},
    std::pair{"renew", QT_TRANSLATE_NOOP("words", "renew")},
    std::pair{"align", QT_TRANSLATE_NOOP("words", "align")},
    std::pair{"investigate", QT_TRANSLATE_NOOP("words", "investigate")},
    std::pair{"other", QT_TRANSLATE_NOOP("words", "other")},
    std::pair{"off", QT_TRANSLATE_NOOP("words", "off")},
    std::pair{"back", QT_TRANSLATE_NOOP("words", "back")},
    std::pair{"left_out", QT_TRANSLATE_NOOP("words", "left out")},
    std::pair{"needed", QT_TRANSLATE_NOOP("words", "needed")},
    std::pair{"ordered", QT_TRANSLATE_NOOP("words", "ordered")},
    std::pair{"here", QT_TRANSLATE_NOOP("words", "here")},
    std::pair{"fitted", QT_TRANSLATE_NOOP("words", "fitted")},
    std::pair{"purchase", QT_TRANSLATE_NOOP("words", "purchase")},
    std::pair{"carriage_in", QT_TRANSLATE_NOOP("words", "carriage in")},
    std::pair{"part", QT_TRANSLATE_NOOP("words", "part")},
    std::pair{"consumable", QT_TRANSLATE_NOOP("words", "consumable")},
    std::pair{"outside_work", QT_TRANSLATE_NOOP("words", "outside work")},
    std::pair{"overhead", QT_TRANSLATE_NOOP("words", "overhead")},
    std::pair{"packing", QT_TRANSLATE_NOOP("words", "packing")},
    std::pair{"carriage_out", QT_TRANSLATE_NOOP("words", "carriage out")},
    std::pair{"selling_fee", QT_TRANSLATE_NOOP("words", "selling fee")},
    std::pair{"sale", QT_TRANSLATE_NOOP("words", "sale")},
    std::pair{"refund", QT_TRANSLATE_NOOP("words", "refund")},
    std::pair{"deposit", QT_TRANSLATE_NOOP("words", "deposit")},
    std::pair{"out", QT_TRANSLATE_NOOP("words", "out")},
    std::pair{"in", QT_TRANSLATE_NOOP("words", "in")},
    std::pair{"function", QT_TRANSLATE_NOOP("words", "function")},
    std::pair{"cosmetic", QT_TRANSLATE_NOOP("words", "cosmetic")},
    std::pair{"electrical_safety", QT_TRANSLATE_NOOP("words", "electrical safety")},
    std::pair{"not_tested", QT_TRANSLATE_NOOP("words", "not tested")},
    std::pair{"passed", QT_TRANSLATE_NOOP("words", "passed")},
    std::pair{"failed", QT_TRANSLATE_NOOP("words", "failed")},
    std::pair{"not_applicable", QT_TRANSLATE_NOOP("words", "not applicable")},
    std::pair{"restoration", QT_TRANSLATE_NOOP("words", "restoration sheet")},
    std::pair{"quote", QT_TRANSLATE_NOOP("words", "quote")},
    std::pair{"bill", QT_TRANSLATE_NOOP("words", "bill")},
    std::pair{"label", QT_TRANSLATE_NOOP("words", "tag label")},
    std::pair{"putting_back", QT_TRANSLATE_NOOP("words", "putting-back sheet")},
    std::pair{"order", QT_TRANSLATE_NOOP("words", "order list")},
    std::pair{"ledger", QT_TRANSLATE_NOOP("words", "year's ledger")},
    std::pair{"note", QT_TRANSLATE_NOOP("words", "note")},
    std::pair{"flaw", QT_TRANSLATE_NOOP("words", "flaw")},
    std::pair{"use", QT_TRANSLATE_NOOP("words", "use")},
    std::pair{"sold", QT_TRANSLATE_NOOP("words", "sold")},
    std::pair{"returned_to_owner", QT_TRANSLATE_NOOP("words", "returned to owner")},
    std::pair{"kept", QT_TRANSLATE_NOOP("words", "kept")},
    std::pair{"broken_for_parts", QT_TRANSLATE_NOOP("words", "broken for parts")},
    std::pair{"scrapped", QT_TRANSLATE_NOOP("words", "scrapped")},
    std::pair{"finish_and_sell", QT_TRANSLATE_NOOP("words", "finish and sell")},
    std::pair{"sell_as_it_stands", QT_TRANSLATE_NOOP("words", "sell as it stands")},
    std::pair{"break_for_parts", QT_TRANSLATE_NOOP("words", "break for parts")},
    std::pair{"return_to_seller", QT_TRANSLATE_NOOP("words", "return to seller")},
    std::pair{"stop", QT_TRANSLATE_NOOP("words", "stop")},
    std::pair{"scouted", QT_TRANSLATE_NOOP("words", "Scouted")},
    std::pair{"inbound", QT_TRANSLATE_NOOP("words", "Inbound")},
    std::pair{"shelved", QT_TRANSLATE_NOOP("words", "Shelved")},
    std::pair{"bench", QT_TRANSLATE_NOOP("words", "Bench")},
    std::pair{"held", QT_TRANSLATE_NOOP("words", "Held")},
    std::pair{"proving", QT_TRANSLATE_NOOP("words", "Proving")},
    std::pair{"ready", QT_TRANSLATE_NOOP("words", "Ready")},
    std::pair{"offered", QT_TRANSLATE_NOOP("words", "Offered")},
    std::pair{"pass", QT_TRANSLATE_NOOP("words", "pass")},
    std::pair{"stop", QT_TRANSLATE_NOOP("words", "stop")},
    std::pair{"closed", QT_TRANSLATE_NOOP("words", "Closed")},
};

} // namespace

QString word(const QString &stored)
{
    for (const auto &[each, text] : words)
        if (stored == QLatin1String(each))
            return QCoreApplication::translate("words", text);
    return QString(stored).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString bigWord(const QString &stored)
{
    QString text = word(stored);
    if (!text.isEmpty())
        text[0] = text.at(0).toUpper();
    return text;
}

} // namespace ts::shown
