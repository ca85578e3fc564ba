#include "model/faults/starting_table.h"

#include "model/records/settings.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include <cmath>

namespace ts {

namespace {

constexpr int most = 200; // causes of a symptom, symptoms of a table, tables of a file: more is no table of this kind

Trouble wrong(const QString &where, const QString &what)
{
    return Trouble{
        QStringLiteral("Cannot read the fault table"), where.isEmpty() ? what : where + QStringLiteral(": ") + what, {}};
}

QString textAt(const QJsonObject &object, const char *key)
{
    return object.value(QLatin1String(key)).toString().simplified().left(400);
}

Expected<int> minutesAt(const QJsonObject &object, const char *key, const QString &where)
{
    const QJsonValue value = object.value(QLatin1String(key));
    const double minutes = value.toDouble(-1);
    if (!value.isDouble() || !(minutes >= 0 && minutes <= 100'000))
        return wrong(where, QStringLiteral("%1 is no number of minutes from 0 up").arg(QLatin1String(key)));
    return static_cast<int>(std::lround(minutes));
}

Expected<TableCause> readCause(const QJsonObject &object, const QString &symptom, const QMap<QString, QString> &sources)
{
    TableCause cause;
    cause.cause = textAt(object, "cause");
    const QString where = QStringLiteral("\"%1\", \"%2\"").arg(symptom, cause.cause);
    if (cause.cause.isEmpty())
        return wrong(QStringLiteral("\"%1\"").arg(symptom), QStringLiteral("a cause has no text"));
    cause.weight = object.value(QLatin1String("weight")).toDouble(-1);
    if (!(cause.weight >= 0 && cause.weight <= 1))
        return wrong(where, QStringLiteral("weight is no share from 0 to 1"));
    cause.check = textAt(object, "check");
    if (cause.check.isEmpty())
        return wrong(where, QStringLiteral("it has no check"));
    const auto fix = minutesAt(object, "fix_minutes", where);
    if (!fix)
        return fix.trouble();
    const auto minutes = minutesAt(object, "minutes", where);
    if (!minutes)
        return minutes.trouble();
    cause.fixMinutes = *fix;
    cause.minutes = *minutes;
    cause.normal = textAt(object, "normal");
    for (const QJsonValue &each : object.value(QLatin1String("also")).toArray())
        cause.also << each.toString().simplified();
    for (const QJsonValue &each : object.value(QLatin1String("sources")).toArray()) {
        if (!sources.contains(each.toString()))
            return wrong(where, QStringLiteral("the source \"%1\" is not named").arg(each.toString()));
        cause.sources << each.toString();
    }
    return cause;
}

Expected<TableSymptom> readSymptom(const QJsonObject &object, const QMap<QString, QString> &sources)
{
    TableSymptom symptom;
    symptom.symptom = textAt(object, "symptom");
    const QString where = QStringLiteral("\"%1\"").arg(symptom.symptom);
    if (symptom.symptom.isEmpty())
        return wrong({}, QStringLiteral("a symptom has no text"));
    symptom.somethingElse = object.value(QLatin1String("something_else")).toDouble(-1);
    if (!(symptom.somethingElse > 0 && symptom.somethingElse <= 1))
        return wrong(where, QStringLiteral("something_else is no share above 0, up to 1"));
    const QJsonArray causes = object.value(QLatin1String("causes")).toArray();
    if (causes.isEmpty() || causes.size() > most)
        return wrong(where, QStringLiteral("it needs 1 to %1 causes").arg(most));
    double sum = symptom.somethingElse;
    QStringList names, checks;
    for (const QJsonValue &each : causes) {
        const auto cause = readCause(each.toObject(), symptom.symptom, sources);
        if (!cause)
            return cause.trouble();
        if (names.contains(cause->cause, Qt::CaseInsensitive) || checks.contains(cause->check, Qt::CaseInsensitive))
            return wrong(where, QStringLiteral("\"%1\" or its check stands there twice").arg(cause->cause));
        names << cause->cause;
        checks << cause->check;
        sum += cause->weight;
        symptom.causes << *cause;
    }
    if (std::abs(sum - 1) > 0.005)
        return wrong(where, QStringLiteral("the weights add up to %1 and not to 1").arg(sum));
    for (const TableCause &cause : symptom.causes)
        for (const QString &other : cause.also)
            if (!names.contains(other) || other == cause.cause)
                return wrong(where, QStringLiteral("\"%1\" shows \"%2\", which is no other cause there").arg(cause.check, other));
    return symptom;
}

Expected<StartingTable> tableFrom(const QJsonObject &object)
{
    StartingTable table;
    const auto category = parseWord<Category>(object.value(QLatin1String("category")).toString(), QStringLiteral("category"));
    if (!category)
        return wrong({}, category.trouble().did);
    table.category = *category;
    table.status = textAt(object, "status");
    const QJsonObject sources = object.value(QLatin1String("sources")).toObject();
    for (auto it = sources.begin(); it != sources.end(); ++it)
        table.sources.insert(it.key(), it.value().toString().simplified());
    if (const QJsonObject ended = object.value(QLatin1String("outcomes")).toObject(); !ended.isEmpty())
        table.outcomes =
            RepairOutcomes{ended.value(QLatin1String("fixed")).toInt(), ended.value(QLatin1String("repairable")).toInt(),
                           ended.value(QLatin1String("end_of_life")).toInt(), ended.value(QLatin1String("of")).toInt(),
                           table.sources.value(ended.value(QLatin1String("source")).toString())};
    const QJsonArray symptoms = object.value(QLatin1String("symptoms")).toArray();
    if (symptoms.size() > most)
        return wrong({}, QStringLiteral("it has more than %1 symptoms").arg(most));
    for (const QJsonValue &each : symptoms) {
        auto symptom = readSymptom(each.toObject(), table.sources);
        if (!symptom)
            return symptom.trouble();
        table.symptoms << *std::move(symptom);
    }
    return table;
}

Expected<QJsonDocument> documentOf(const QByteArray &json)
{
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(json, &error);
    if (document.isNull())
        return wrong({}, QStringLiteral("it is no JSON (%1 at byte %2)").arg(error.errorString()).arg(error.offset));
    return document;
}

QByteArray shipped(const QString &word)
{
    QFile file(QStringLiteral(":/faults/%1.json").arg(word));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

Expected<StartingTable> readTable(const QByteArray &json)
{
    const auto document = documentOf(json);
    return document ? tableFrom(document->object()) : Expected<StartingTable>(document.trouble());
}

Expected<QList<StartingTable>> readTables(const QByteArray &json)
{
    const auto document = documentOf(json);
    if (!document)
        return document.trouble();
    const QJsonArray list = document->isArray() ? document->array() : QJsonArray{document->object()};
    if (list.isEmpty() || list.size() > most)
        return wrong({}, QStringLiteral("it holds no table"));
    QList<StartingTable> tables;
    for (const QJsonValue &each : list) {
        auto table = tableFrom(each.toObject());
        if (!table)
            return table.trouble();
        for (const StartingTable &other : tables)
            if (other.category == table->category)
                return wrong({}, QStringLiteral("%1 stands there twice").arg(toWord(table->category)));
        tables << *std::move(table);
    }
    return tables;
}

QByteArray writeTables(const QList<StartingTable> &tables)
{
    QJsonArray list;
    for (const StartingTable &table : tables) {
        QJsonArray symptoms;
        for (const TableSymptom &symptom : table.symptoms) {
            QJsonArray causes;
            for (const TableCause &cause : symptom.causes) {
                QJsonObject object{{QStringLiteral("cause"), cause.cause},
                                   {QStringLiteral("weight"), cause.weight},
                                   {QStringLiteral("fix_minutes"), cause.fixMinutes},
                                   {QStringLiteral("check"), cause.check},
                                   {QStringLiteral("minutes"), cause.minutes},
                                   {QStringLiteral("normal"), cause.normal},
                                   {QStringLiteral("sources"), QJsonArray::fromStringList(cause.sources)}};
                if (!cause.also.isEmpty())
                    object.insert(QStringLiteral("also"), QJsonArray::fromStringList(cause.also));
                causes << object;
            }
            symptoms << QJsonObject{{QStringLiteral("symptom"), symptom.symptom},
                                    {QStringLiteral("something_else"), symptom.somethingElse},
                                    {QStringLiteral("causes"), causes}};
        }
        QJsonObject sources;
        for (auto it = table.sources.begin(); it != table.sources.end(); ++it)
            sources.insert(it.key(), it.value());
        QJsonObject object{{QStringLiteral("category"), toWord(table.category)},
                           {QStringLiteral("status"), table.status},
                           {QStringLiteral("sources"), sources},
                           {QStringLiteral("symptoms"), symptoms}};
        if (table.outcomes)
            object.insert(QStringLiteral("outcomes"),
                          QJsonObject{{QStringLiteral("fixed"), table.outcomes->fixed},
                                      {QStringLiteral("repairable"), table.outcomes->repairable},
                                      {QStringLiteral("end_of_life"), table.outcomes->endOfLife},
                                      {QStringLiteral("of"), table.outcomes->of},
                                      {QStringLiteral("source"), table.sources.key(table.outcomes->source)}});
        list << object;
    }
    return QJsonDocument(list).toJson(QJsonDocument::Indented);
}

StartingTable tableOf(const BenchFile &bench, Category category)
{
    if (const QString own = bench.setting(settings::faultTables); !own.isEmpty())
        if (const auto tables = readTables(own.toUtf8()))
            for (StartingTable table : *tables)
                if (table.category == category) {
                    table.own = true;
                    return table;
                }
    const auto table = readTable(shipped(toWord(category)));
    return table ? *table : StartingTable{category, {}, {}, {}, {}, false};
}

QList<StartingTable> allTables(const BenchFile &bench)
{
    QList<StartingTable> all;
    for (const auto &[category, word] : Words<Category>::list)
        if (StartingTable table = tableOf(bench, category); !table.symptoms.isEmpty())
            all << std::move(table);
    return all;
}

} // namespace ts
