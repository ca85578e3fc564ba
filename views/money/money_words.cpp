#include "views/money/money_words.h"

#include "views/widgets/locale_text.h"
#include "views/widgets/word_text.h"

#include <QCoreApplication>

#include <cmath>

namespace ts::shown {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts::shown", text);
}

} // namespace

QString drawn(double minor, const Currency &currency)
{
    return moneyRound(Money(std::llround(minor), currency));
}

QString way(WayOut way)
{
    return bigWord(toWord(way));
}

QString asked(Asked asked)
{
    switch (asked) {
    case Asked::Triage:
        return tr("what to do with it");
    case Asked::FullHour:
        return tr("another full hour");
    case Asked::NewPart:
        return tr("a new part");
    case Asked::NewUnknown:
        return tr("a new symptom or cause");
    case Asked::ByHand:
        break;
    }
    return tr("asked by hand");
}

QString rest(const ForecastRest &rest, const Currency &currency)
{
    const QString from = drawn(rest.worthWorse, currency);
    const QString to = drawn(rest.worthBetter, currency);
    switch (rest.what) {
    case Rest::Price:
        return tr("It rests on the price: %1 to %2 moves it from %3 to %4.").arg(drawn(rest.worse, currency), drawn(rest.better, currency), from, to);
    case Rest::Hours:
        return tr("It rests on your hours: %1 to %2 moves it from %3 to %4.").arg(duration(std::llround(rest.worse)), duration(std::llround(rest.better)), from, to);
    case Rest::Parts:
        return tr("It rests on the parts: %1 to %2 moves it from %3 to %4.").arg(drawn(rest.worse, currency), drawn(rest.better, currency), from, to);
    case Rest::Cause:
        return tr("It rests on the cause: “%1” or “%2” moves it from %3 to %4.").arg(rest.worseCause, rest.betterCause, from, to);
    case Rest::Chance:
        break;
    }
    return tr("It rests on the chance of repair: %1 to %2 moves it from %3 to %4.").arg(percent(rest.worse), percent(rest.better), from, to);
}

} // namespace ts::shown
