#include "model/sums/setting_rules.h"

#include "model/records/settings.h"
#include "model/sums/money_settings.h"
#include "model/sums/safety_rules.h"
#include "model/values/plain_text.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

Expected<void> checkCurrency(const QString &value, const Currency &currency, bool moneyRecorded)
{
    const auto wanted = Currency::parse(value);
    if (!wanted)
        return wanted.trouble();
    if (*wanted == currency || !moneyRecorded)
        return {};
    return Trouble{QStringLiteral("The currency stays %1").arg(currency.code()),
                   QStringLiteral("money is recorded in this workbook already"),
                   QStringLiteral("choose it before the first unit is taken in")};
}

Expected<void> checkChannel(const BenchFile &bench, const QString &value)
{
    QStringList names;
    for (const Channel &channel : bench.all<Channel>())
        names << channel.name;
    if (names.contains(value))
        return {};
    return Trouble{QStringLiteral("There is no channel \"%1\"").arg(value),
                   names.isEmpty() ? QStringLiteral("this workbook has none yet") : QString(),
                   names.isEmpty() ? QString() : QStringLiteral("choose one of ") + names.join(QStringLiteral(", "))};
}

Expected<void> checkSetting(const BenchFile &bench, const QString &name, const QString &value, bool moneyRecorded)
{
    if (value.isEmpty())
        return {};
    if (name == settings::currency)
        return checkCurrency(value, bench.currency(), moneyRecorded);
    if (name == settings::channel)
        return checkChannel(bench, value);
    if (name == settings::paperSize && value != QLatin1String("A4") && value != QLatin1String("Letter"))
        return Trouble{QStringLiteral("\"%1\" is no paper size").arg(value), {}, QStringLiteral("choose A4 or Letter")};
    if (name == settings::safetyRules && !fromWord<SafetyRules>(value))
        return Trouble{QStringLiteral("\"%1\" is no rule set").arg(value), {}, QStringLiteral("choose one of ") + allWords<SafetyRules>().join(QStringLiteral(", "))};
    static const QRegularExpression millimetres(QStringLiteral("^[0-9]{2,3}x[0-9]{2,3}$"));
    if ((name == settings::labelSize || name == settings::bagLabelSize) && !millimetres.match(value).hasMatch())
        return Trouble{QStringLiteral("\"%1\" is no size of a label").arg(value), {}, QStringLiteral("give width and height in millimetres, such as 62x29")};
    static const QRegularExpression country(QStringLiteral("^[A-Z]{3}$"));
    if (name == settings::country && !country.match(value).hasMatch())
        return Trouble{QStringLiteral("\"%1\" is no country").arg(value),
                       {},
                       QStringLiteral("write its three letters of ISO 3166-1, such as GBR")};
    return MoneySettings::check(name, value, bench.currency());
}

} // namespace

const QList<KnownSetting> &knownSettings()
{
    static const QList<KnownSetting> all{
        {settings::benchName, QStringLiteral("the bench's name, as printed on papers")},
        {settings::benchAddress, QStringLiteral("its address, as printed on papers")},
        {settings::worker, QStringLiteral("who does the work, as printed on papers")},
        {settings::terms, QStringLiteral("terms, printed on the restoration sheet")},
        {settings::country, QStringLiteral("three letters, such as GBR; for open-repair-data")},
        {settings::currency, QStringLiteral("three letters, such as GBP; before the first money is recorded"),
         QStringLiteral("GBP")},
        {settings::hourlyRate, QStringLiteral("what an hour of yours is worth")},
        {settings::overheadRate, QStringLiteral("what the bench costs an hour")},
        {settings::mains, QStringLiteral("the bench's own mains, such as 230 V 50 Hz")},
        {settings::channel, QStringLiteral("name of the channel that break-even is worked out for")},
        {settings::safetyRules, QStringLiteral("electrical safety by en_50678, iet_4, iet_5 or makers; local codes come first"), QStringLiteral("en_50678")},
        {settings::paperSize, QStringLiteral("A4 or Letter"), QStringLiteral("A4")},
        {settings::labelSize, QStringLiteral("of tag labels, width by height in millimetres, such as 62x29"), QStringLiteral("89x36")},
        {settings::bagLabelSize, QStringLiteral("of the labels for small bags"), QStringLiteral("57x32")},
        {settings::resaleHalfLife, QStringLiteral("days after which a comparable sale counts half"), QStringLiteral("120")},
        {settings::looksStep, QStringLiteral("percent of the price for a grade of looks"), QStringLiteral("7")},
        {settings::returnsRate, QStringLiteral("percent of sales that come back"), QStringLiteral("5")},
        {settings::returnsDrop, QStringLiteral("percent of its price that a unit loses that came back"), QStringLiteral("25")},
        {settings::wantedGain, QStringLiteral("what a unit should leave beside your hours"), QStringLiteral("0")},
        {settings::marginTax, QStringLiteral("percent of tax on the margin, where you sell under such a scheme")},
        {settings::daysToSell, QStringLiteral("days from offered to sold"), QStringLiteral("30")},
        {settings::benchHours, QStringLiteral("hours a week that you work at the bench"), QStringLiteral("8")},
        {settings::sellingMinutes, QStringLiteral("minutes to offer, pack and send a unit"), QStringLiteral("45")},
        {settings::capitalRate, QStringLiteral("percent a year that money tied up costs"), QStringLiteral("0")},
    };
    return all;
}

bool isKnownSetting(const QString &name)
{
    const auto &all = knownSettings();
    return std::any_of(all.begin(), all.end(), [&](const KnownSetting &known) { return known.name == name; });
}

Expected<Change> settingChange(const BenchFile &bench, const QString &name, const QString &value, bool moneyRecorded, Maker &maker)
{
    const auto clean = plainLines(value, QStringLiteral("The value"));
    if (!clean)
        return clean.trouble();
    if (auto sound = checkSetting(bench, name, *clean, moneyRecorded); !sound)
        return sound.trouble();
    Change change(QStringLiteral("Setting %1: %2").arg(name, *clean));
    for (const Setting &before : bench.all<Setting>()) {
        if (before.name != name)
            continue;
        Setting after = before;
        after.value = *clean;
        return change.edit(before, after);
    }
    if (clean->isEmpty())
        return change;
    Setting fresh = maker.fresh<Setting>();
    fresh.name = name;
    fresh.value = *clean;
    return change.add(fresh);
}

} // namespace ts
