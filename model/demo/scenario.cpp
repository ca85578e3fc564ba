#include "model/demo/scenario.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace ts {

namespace {

const QStringList &verbs()
{
    static const QStringList all{
        QStringLiteral("notes_on"), // before "points", which it may carry
        QStringLiteral("jot"),        QStringLiteral("photo"),     QStringLiteral("stage"),   QStringLiteral("unit"),     QStringLiteral("bought"),
        QStringLiteral("record"),     QStringLiteral("edit"),      QStringLiteral("points"),  QStringLiteral("bearings"), QStringLiteral("comparables"),
        QStringLiteral("plan"),       QStringLiteral("pins"),      QStringLiteral("spends"),  QStringLiteral("safety"),   QStringLiteral("proofs"),
        QStringLiteral("clock_from"), QStringLiteral("sale"),      QStringLiteral("paper"),   QStringLiteral("soak"),     QStringLiteral("soak_reading"),
        QStringLiteral("soak_end"),   QStringLiteral("lot_shares"), QStringLiteral("settings"), QStringLiteral("ranges"),  QStringLiteral("stock")};
    return all;
}

/// The beginning of a soak, each of its readings at its own time, and its end unless it still runs.
QList<DemoEvent> spread(const DemoEvent &soak)
{
    QList<DemoEvent> events{soak};
    const QJsonObject what = soak.said().toObject();
    const QJsonArray values = what.value(QLatin1String("values")).toArray();
    const int minutes = what.value(QLatin1String("interval_minutes")).toInt();
    for (qsizetype i = 0; i < values.size(); ++i) {
        DemoEvent reading = soak;
        reading.at = soak.at.addSecs(60 * minutes * i);
        reading.verb = QStringLiteral("soak_reading");
        QJsonObject inner = what;
        inner.insert(QLatin1String("value"), values.at(i));
        reading.content = {{reading.verb, inner}};
        events << reading;
    }
    if (!what.value(QLatin1String("running")).toBool()) {
        DemoEvent end = soak;
        end.at = events.last().at.addSecs(60);
        end.verb = QStringLiteral("soak_end");
        end.content = {{end.verb, what}};
        events << end;
    }
    return events;
}

Expected<QList<DemoEvent>> eventsOf(const QString &name)
{
    const QString did = QStringLiteral("Cannot play the demo");
    QFile file(QStringLiteral(":/demo/") + name);
    QJsonParseError error;
    if (!file.open(QIODevice::ReadOnly))
        return Trouble{did, name + QStringLiteral(" cannot be read"), {}};
    const QJsonObject story = QJsonDocument::fromJson(file.readAll(), &error).object();
    if (error.error != QJsonParseError::NoError)
        return Trouble{did, QStringLiteral("%1: %2 at byte %3").arg(name, error.errorString()).arg(error.offset), {}};
    QList<DemoEvent> events;
    for (const QJsonValue &line : story.value(QLatin1String("events")).toArray()) {
        DemoEvent event;
        event.content = line.toObject();
        event.file = name;
        event.at = QDateTime::fromString(event.content.value(QLatin1String("at")).toString(), Qt::ISODate).toUTC();
        event.tag = event.content.value(QLatin1String("tag")).toInt(story.value(QLatin1String("tag")).toInt());
        for (const QString &verb : verbs())
            if (event.content.contains(verb)) {
                event.verb = verb;
                break;
            }
        if (!event.at.isValid() || event.verb.isEmpty())
            return Trouble{did, QStringLiteral("%1, line %2 has no instant or no verb").arg(name).arg(events.size() + 1), {}};
        if (event.verb == QLatin1String("soak"))
            events << spread(event);
        else
            events << event;
    }
    return events;
}

} // namespace

QString DemoEvent::where() const
{
    const QString text = said().isString() ? said().toString().left(60) : verb;
    return QStringLiteral("%1, %2, \"%3\"").arg(file, at.toString(Qt::ISODate), text);
}

Expected<QList<DemoEvent>> demoScenario()
{
    QList<DemoEvent> all;
    const QStringList files = QDir(QStringLiteral(":/demo")).entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
    if (files.isEmpty())
        return Trouble{QStringLiteral("Cannot play the demo"), QStringLiteral("its story is not in this program"), {}};
    for (const QString &name : files) {
        const auto events = eventsOf(name);
        if (!events)
            return events.trouble();
        all << *events;
    }
    std::stable_sort(all.begin(), all.end(), [](const DemoEvent &a, const DemoEvent &b) { return a.at < b.at; });
    return all;
}

} // namespace ts
