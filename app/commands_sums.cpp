// judge, reckon, sound: sums without a workbook.
#include "app/commands.h"

#include "model/sums/given.h"
#include "model/sums/meter_spec.h"
#include "model/sums/reckon.h"
#include "model/sums/verdict.h"
#include "model/values/number.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace ts {

namespace {

Expected<std::optional<double>> uncertaintyAsked(const Options &options, const Quantity &value)
{
    const auto plain = [&](const QString &name) -> Expected<double> {
        const auto given = Quantity::parse(options.value(name), value.measure());
        if (!given)
            return Trouble{QLatin1String("--") + name, given.trouble().sentence(), {}};
        if (given->measure().isNone())
            return given->value();
        const auto same = given->in(value.measure());
        return same ? Expected<double>(same->value()) : Expected<double>(same.trouble());
    };
    if (options.has(QStringLiteral("meter"))) {
        const auto spec = MeterSpec::parse(options.value(QStringLiteral("meter")));
        if (!spec)
            return spec.trouble();
        const auto expanded = spec->expanded95(value);
        if (!expanded)
            return expanded.trouble();
        return std::optional(*expanded);
    }
    if (options.has(QStringLiteral("uncertainty"))) {
        const auto given = plain(QStringLiteral("uncertainty"));
        return given ? Expected<std::optional<double>>(std::optional(*given)) : Expected<std::optional<double>>(given.trouble());
    }
    if (options.has(QStringLiteral("standard-uncertainty"))) {
        const auto given = plain(QStringLiteral("standard-uncertainty"));
        return given ? Expected<std::optional<double>>(std::optional(expandedFromStandard(*given)))
                     : Expected<std::optional<double>>(given.trouble());
    }
    return std::optional<double>();
}

} // namespace

Exit runJudge(Invocation &run)
{
    Options options(run);
    const QStringList ways{QStringLiteral("meter"), QStringLiteral("uncertainty"), QStringLiteral("standard-uncertainty")};
    options.add(QStringLiteral("want"), QStringLiteral("limit"));
    for (const QString &way : ways)
        options.add(way, QStringLiteral("value"));
    options.add(QStringLiteral("json"));
    if (auto read = options.read(run.arguments(), 1, 2); !read)
        return run.misuse(read.trouble().sentence());
    qsizetype given = 0;
    for (const QString &way : ways)
        given += options.has(way) ? 1 : 0;
    if (given > 1)
        return run.misuse(QStringLiteral("Give the uncertainty one way only: --meter, --uncertainty or --standard-uncertainty."));
    if (!options.has(QStringLiteral("want")))
        return run.misuse(QStringLiteral("Say what is wanted: turnscrew judge --want \"12 V 5%\" -- 11.92 V."));

    auto limit = Limit::parse(options.value(QStringLiteral("want")));
    if (!limit)
        return run.refuse(limit.trouble());
    const auto value = Quantity::parse(options.places().join(QLatin1Char(' ')), limit->measure());
    if (!value)
        return run.refuse(value.trouble());
    if (limit->measure().isNone())
        limit = Limit::parse(options.value(QStringLiteral("want")), value->measure());
    const Quantity inUnit = value->measure().isNone() && value->sense() != Sense::OverRange
                                ? Quantity(value->value(), limit->measure(), value->sense())
                                : *value;
    const auto uncertainty = uncertaintyAsked(options, inUnit);
    if (!uncertainty)
        return run.refuse(uncertainty.trouble());
    const auto judged = judge(inUnit, *limit, *uncertainty);
    if (!judged)
        return run.refuse(judged.trouble());
    if (options.has(QStringLiteral("json"))) {
        QJsonObject document;
        document.insert(QStringLiteral("value"), inUnit.sense() == Sense::OverRange ? QJsonValue() : QJsonValue(judged->value));
        document.insert(QStringLiteral("unit"), judged->measure.text());
        document.insert(QStringLiteral("wanted_low"), orNull(judged->low));
        document.insert(QStringLiteral("wanted_high"), orNull(judged->high));
        document.insert(QStringLiteral("uncertainty"), orNull(judged->uncertainty95));
        document.insert(QStringLiteral("verdict"), toWord(judged->verdict));
        document.insert(QStringLiteral("chance_within"), orNull(judged->chanceWithin));
        run.print(document);
        return Exit::Done;
    }
    run.out() << verdictText(judged->verdict) << ": " << inUnit.text();
    if (judged->uncertainty95)
        run.out() << QStringLiteral(" ± %1 (95 %)").arg(*judged->uncertainty95, 0, 'g', 3);
    run.out() << ", wanted " << limit->display();
    if (judged->chanceWithin)
        run.out() << QStringLiteral("; chance of being within %1 %").arg(*judged->chanceWithin * 100, 0, 'f', 1);
    run.out() << '\n';
    return Exit::Done;
}

namespace {

/// One fact of each key that has it, by the key's name.
QJsonObject keyList(const QList<SumKey> &keys, QString SumKey::*fact)
{
    QJsonObject list;
    for (const SumKey &key : keys)
        if (!(key.*fact).isEmpty())
            list.insert(key.name, key.*fact);
    return list;
}

/// ", in F, usually half, one of half and full": what belongs to a key beside its meaning.
QString keyTail(const SumKey &key)
{
    QString tail;
    if (!key.choices.isEmpty())
        tail += QStringLiteral("; one of ") + key.choices.join(QStringLiteral(", "));
    if (!key.usual.isEmpty())
        tail += QStringLiteral("; usually ") + key.usual;
    return tail;
}

/// A figure for people: without the last bits that binary arithmetic adds.
QString shownFigure(const QJsonValue &value)
{
    if (value.isDouble())
        return numberText(withoutBinaryDust(value.toDouble(), value.toDouble()));
    if (value.isArray())
        return QString::fromUtf8(QJsonDocument(value.toArray()).toJson(QJsonDocument::Compact));
    return value.isNull() ? QStringLiteral("none") : value.toVariant().toString();
}

Exit listSums(Invocation &run, bool json)
{
    QJsonObject document;
    for (const Sum &sum : allSums()) {
        if (json) {
            document.insert(sum.name, QJsonObject{{QStringLiteral("says"), sum.says},
                                                  {QStringLiteral("keys"), keyList(sum.keys, &SumKey::meaning)},
                                                  {QStringLiteral("units"), keyList(sum.keys + sum.gives, &SumKey::unit)},
                                                  {QStringLiteral("usual"), keyList(sum.keys, &SumKey::usual)},
                                                  {QStringLiteral("gives"), keyList(sum.gives, &SumKey::meaning)},
                                                  {QStringLiteral("formula"), sum.formula},
                                                  {QStringLiteral("source"), sum.source}});
            continue;
        }
        run.out() << sum.name << ": " << sum.says << '\n';
        for (const SumKey &key : sum.keys)
            run.out() << "    " << key.name << (key.required ? "" : " (optional)") << ": " << key.meaning << keyTail(key) << '\n';
        for (const SumKey &key : sum.gives)
            run.out() << "    gives " << key.name << ": " << key.meaning << '\n';
        if (!sum.formula.isEmpty())
            run.out() << "    formula: " << sum.formula << '\n';
        run.out() << "    source: " << sum.source << '\n';
    }
    if (json)
        run.print(document);
    return Exit::Done;
}

} // namespace

Exit runReckon(Invocation &run)
{
    // Values may begin with a dash, so only --json is looked for.
    QStringList words = run.arguments();
    words.removeAll(QStringLiteral("--"));
    const bool json = words.removeAll(QStringLiteral("--json")) > 0;
    if (words.isEmpty())
        return listSums(run, json);
    SumInput input;
    for (const QString &word : words.mid(1)) {
        const qsizetype at = word.indexOf(QLatin1Char('='));
        if (at <= 0)
            return run.misuse(QStringLiteral("\"%1\" is not of the form key=value; %2.").arg(word, run.usageHint()));
        if (input.contains(word.left(at)))
            return run.misuse(QStringLiteral("\"%1\" is given twice.").arg(word.left(at)));
        input.insert(word.left(at), word.mid(at + 1));
    }
    const auto output = reckon(words.first(), input);
    if (!output)
        return run.refuse(output.trouble());
    QJsonObject document;
    for (const auto &[key, value] : *output) {
        if (json)
            document.insert(key, value);
        else
            run.out() << key << ": " << shownFigure(value) << '\n';
    }
    if (json)
        run.print(document);
    return Exit::Done;
}

Exit runSound(Invocation &run)
{
    return run.misuse(QStringLiteral("This version does not measure recordings yet."));
}

} // namespace ts
