#include "model/demo/player.h"

#include "model/demo/demo.h"
#include "model/jot/jot.h"
#include "model/records/all_records.h"
#include "model/records/tag_text.h"

#include <QJsonArray>

namespace ts {

Expected<void> Player::play(const DemoEvent &event)
{
    struct Verb {
        const char *name;
        Done (Player::*play)(const DemoEvent &);
    };
    static constexpr std::array verbs{
        Verb{"jot", &Player::jotLine},         Verb{"photo", &Player::photo},
        Verb{"stage", &Player::stage},         Verb{"unit", &Player::unit},
        Verb{"bought", &Player::bought},       Verb{"record", &Player::record},
        Verb{"edit", &Player::edit},           Verb{"points", &Player::points},
        Verb{"bearings", &Player::bearings},   Verb{"comparables", &Player::comparables},
        Verb{"plan", &Player::plan},           Verb{"pins", &Player::pins},
        Verb{"spends", &Player::spends},       Verb{"safety", &Player::safety},
        Verb{"proofs", &Player::proofs},       Verb{"clock_from", &Player::clockFrom},
        Verb{"sale", &Player::sale},           Verb{"paper", &Player::paper},
        Verb{"soak", &Player::soak},           Verb{"soak_reading", &Player::soakReading},
        Verb{"soak_end", &Player::soakEnd},    Verb{"lot_shares", &Player::lotShares},
        Verb{"settings", &Player::settings},   Verb{"ranges", &Player::ranges},
        Verb{"stock", &Player::stock},         Verb{"notes_on", &Player::notesOn}};
    m_unit = {};
    if (event.tag != 0 && event.verb != QLatin1String("unit")) {
        const auto id = m_desk.unitByTag(event.tag);
        if (!id)
            return Trouble{event.where(), id.trouble().sentence(), {}};
        m_unit = *id;
    }
    for (const Verb &verb : verbs)
        if (event.verb == QLatin1String(verb.name)) {
            const Done done = (this->*verb.play)(event);
            return done ? done : Done(Trouble{event.where(), done.trouble().sentence(), {}});
        }
    return Trouble{event.where(), QStringLiteral("nothing is known by this verb"), {}};
}

Expected<void> Player::apply(const Change &change)
{
    const auto applied = m_desk.apply(change);
    return applied ? Done() : Done(applied.trouble());
}

Expected<Row> Player::add(Change &change, const Kind &kind, const QJsonObject &fields)
{
    auto row = m_writer.fresh(kind, fields, m_unit);
    if (row)
        change.addItem({&kind, std::nullopt, *row});
    return row;
}

Expected<Money> Player::money(const QJsonValue &value)
{
    const auto bench = m_desk.benchFile();
    return bench ? Money::parse(value.toString(), bench->currency()) : Expected<Money>(bench.trouble());
}

namespace {

/// The kind of record that a jotted line of that sort is mainly about.
QString tableOf(const QString &what)
{
    if (what == QLatin1String("part"))
        return QStringLiteral("need");
    if (what == QLatin1String("teardown"))
        return QStringLiteral("teardown_item");
    if (what == QLatin1String("left off"))
        return QStringLiteral("left_off");
    return what == QLatin1String("stage") ? QStringLiteral("unit") : what;
}

} // namespace

Expected<void> Player::jotLine(const DemoEvent &event)
{
    const auto file = m_desk.unitFile(m_unit);
    const auto bench = m_desk.benchFile();
    if (!file || !bench)
        return file ? bench.trouble() : file.trouble();
    Maker maker = m_desk.maker();
    const auto jotted = jot(event.said().toString(), *file, *bench, maker);
    if (!jotted)
        return jotted.trouble();
    const QString expected = event.content.value(QLatin1String("expect")).toString();
    if (jotted->what != expected)
        return Trouble{QStringLiteral("it was taken as %1, not as %2").arg(jotted->what, expected), {}, {}};
    if (jotted->change.isEmpty())
        return Trouble{QStringLiteral("it changes nothing"), {}, {}};

    // What a person would fill in on the page beside the line: conditions, what it was for, which batch it came from.
    QJsonObject set = event.content.value(QLatin1String("set")).toObject();
    if (event.content.contains(QLatin1String("for")))
        set.insert(QLatin1String("symptom"), event.content.value(QLatin1String("for")));
    Change change(jotted->change.sentence());
    if (const QString part = event.content.value(QLatin1String("from_stock")).toString(); !part.isEmpty()) {
        const auto row = m_writer.named(description<Part>(), part, {});
        if (!row)
            return row.trouble();
        const auto batches = m_desk.list<Batch>(QStringLiteral("part"), row->at(Kind::idColumn));
        if (!batches || batches->isEmpty() || batches->first().left < 1)
            return Trouble{QStringLiteral("none of %1 is left in the parts store").arg(part), {}, {}};
        Batch after = batches->first();
        --after.left;
        change.edit(batches->first(), after);
        set.insert(QLatin1String("part"), after.part.text());
        set.insert(QLatin1String("batch"), after.id.text());
    }
    bool isSet = set.isEmpty();
    for (const ChangeItem &item : jotted->change.items()) {
        if (isSet || item.kind->table() != tableOf(jotted->what) || !item.after) {
            change.addItem(item);
            continue;
        }
        const auto row = m_writer.with(*item.kind, *item.after, set);
        if (!row)
            return row.trouble();
        change.addItem({item.kind, item.before, *row});
        isSet = true;
    }
    if (!isSet)
        return Trouble{QStringLiteral("it has nothing to set"), {}, {}};
    return apply(change);
}

Expected<void> playDemo(Desk &desk, SetClock &clock, const Progress &progress)
{
    const auto events = demoScenario();
    if (!events)
        return events.trouble();
    Player player(desk);
    for (qsizetype i = 0; i < events->size(); ++i) {
        clock.set(events->at(i).at);
        if (auto done = player.play(events->at(i)); !done)
            return Trouble{QStringLiteral("Cannot play the demo"), done.trouble().sentence(), {}};
        if (progress && !progress(i + 1, events->size()))
            return Trouble{QStringLiteral("The demo was stopped"), {}, {}};
    }
    return {};
}

} // namespace ts
