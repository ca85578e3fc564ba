#include "model/faults/model_learning.h"

#include "model/faults/same_text.h"

#include <algorithm>

namespace ts {

namespace {

/// Adds records to a unit, each once by its name.
class Bringing {
public:
    Bringing(const UnitFile &file, Maker &maker) : m_file(file), m_maker(maker) {}

    /// A new record of the unit, or nothing where it has one whose text reads the same.
    template <class R>
    std::optional<R> fresh(QString R::*text, const QString &value)
    {
        const QList<R> &there = m_file.all<R>();
        if (std::any_of(there.begin(), there.end(), [&](const R &each) { return !each.removed && sameText(each.*text, value); }))
            return std::nullopt;
        R record = m_maker.fresh<R>();
        record.unit = m_file.unit.id;
        record.*text = value;
        return record;
    }
    template <class R>
    void add(const R &record, const QString &what)
    {
        change.add(record);
        ++m_counts[what];
    }
    /// "5 test points, 3 proofs"
    [[nodiscard]] QString counted() const
    {
        QStringList said;
        for (auto it = m_counts.begin(); it != m_counts.end(); ++it)
            said << QStringLiteral("%1 %2%3").arg(it.value()).arg(it.key(), it.value() == 1 ? QString() : QStringLiteral("s"));
        return said.join(QStringLiteral(", "));
    }
    [[nodiscard]] int nextPosition() const
    {
        int last = 0;
        for (const TeardownItem &item : m_file.all<TeardownItem>())
            last = std::max(last, item.position);
        return last + 1;
    }

    Change change;

private:
    const UnitFile &m_file;
    Maker &m_maker;
    QMap<QString, int> m_counts;
};

/// Teardown steps, of notes or of another unit, as items that are still on.
template <class Step>
void bringTeardown(Bringing &bringing, QList<Step> steps)
{
    std::stable_sort(steps.begin(), steps.end(), [](const Step &a, const Step &b) { return a.position < b.position; });
    int position = bringing.nextPosition();
    for (const Step &step : steps) {
        auto item = bringing.fresh(&TeardownItem::what, step.what);
        if (!item)
            continue;
        item->position = position++;
        item->state = TeardownState::On;
        item->fasteners = step.fasteners;
        item->fastenerCount = step.fastenerCount;
        item->connectors = step.connectors;
        item->springs = step.springs;
        item->marks = step.marks;
        item->caution = step.caution;
        bringing.add(*item, QStringLiteral("teardown step"));
    }
}

Expected<Change> done(Bringing &bringing, const QString &from)
{
    if (bringing.change.isEmpty())
        return Trouble{QStringLiteral("Nothing was brought in"), QStringLiteral("the unit has all of it already"), {}};
    bringing.change.setSentence(QStringLiteral("Brought in from %1: %2").arg(from, bringing.counted()));
    return bringing.change;
}

} // namespace

Expected<Change> offerNotes(const UnitFile &file, const NotesFile &notes, const NotesWish &wish, Maker &maker)
{
    Bringing bringing(file, maker);
    if (wish.testPoints)
        for (const TestPoint &known : notes.all<TestPoint>())
            if (auto point = bringing.fresh(&TestPoint::name, known.name)) {
                point->wanted = known.wanted;
                point->conditions = known.conditions;
                point->source = known.source;
                point->position = known.position;
                bringing.add(*point, QStringLiteral("test point"));
            }
    if (wish.teardown)
        bringTeardown(bringing, notes.all<KnownTeardown>());
    if (wish.proofs)
        for (const KnownProof &known : notes.all<KnownProof>())
            if (auto proof = bringing.fresh(&Proof::text, known.text)) {
                proof->kind = known.kind;
                bringing.add(*proof, QStringLiteral("proof"));
            }
    if (wish.parts)
        for (const KnownPart &known : notes.all<KnownPart>())
            if (auto need = bringing.fresh(&Need::text, known.text)) {
                need->position = known.position;
                need->quantity = known.quantity;
                need->stateSince = maker.now();
                bringing.add(*need, QStringLiteral("part"));
            }
    return done(bringing,
                QStringLiteral("the notes on %1 %2").arg(notes.notes.maker.simplified(), notes.notes.makerModel.simplified()));
}

Expected<Change> copyTeardown(const UnitFile &to, const UnitFile &from, Maker &maker)
{
    Bringing bringing(to, maker);
    bringTeardown(bringing, from.all<TeardownItem>());
    return done(bringing, QStringLiteral("unit %1").arg(from.unit.tag, 4, 10, QLatin1Char('0')));
}

} // namespace ts
