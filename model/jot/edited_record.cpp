#include "model/jot/edited_record.h"

#include "model/jot/corrected.h"
#include "model/jot/phrase.h"
#include "model/records/unit_rows.h"

namespace ts {

namespace {

/// What follows for the record itself.
template <class R>
void settle(const R &before, R &after, Maker &maker)
{
    Q_UNUSED(before)
    Q_UNUSED(after)
    Q_UNUSED(maker)
}

template <>
void settle(const Need &before, Need &after, Maker &maker)
{
    if (after.state != before.state && after.stateSince == before.stateSince)
        after.stateSince = after.state == NeedState::Needed ? QDateTime() : maker.now();
}

template <>
void settle(const Check &before, Check &after, Maker &maker)
{
    if (after.cameOut == CameOut::NotDone)
        after.doneAt = {};
    else if (before.cameOut == CameOut::NotDone && after.doneAt == before.doneAt)
        after.doneAt = maker.now();
}

Expected<void> inOrder(const QDateTime &from, const QDateTime &to)
{
    if (from.isValid() && to.isValid() && to < from)
        return Trouble{QStringLiteral("Nothing was changed"), QStringLiteral("it would end before it begins"), {}};
    return {};
}

template <class R>
Expected<void> sound(const R &record, const UnitFile &file)
{
    if constexpr (requires { record.symptom; })
        if (!record.symptom.isNull() && !file.find(record.symptom))
            return Trouble{QStringLiteral("Nothing was changed"), QStringLiteral("what it is for is no symptom of this unit"), {}};
    if constexpr (requires { record.startedAt; record.endedAt; })
        return inOrder(record.startedAt, record.endedAt);
    else
        return {};
}

/// What follows for other records.
template <class R>
void followUp(Change &change, const R &after, const UnitFile &file)
{
    if constexpr (std::is_same_v<R, StageMove>) {
        const QList<StageMove> &moves = file.all<StageMove>();
        if (moves.isEmpty() || moves.last().id != after.id || file.unit.stage != after.toStage || after.toStage != Stage::Held)
            return;
        Unit unit = file.unit;
        unit.heldBecause = after.because;
        unit.heldUntil = after.until;
        change.edit(file.unit, unit);
    } else {
        Q_UNUSED(change)
        Q_UNUSED(after)
        Q_UNUSED(file)
    }
}

template <class R>
Expected<Change> edited(const Row &before, const Row &after, const UnitFile &file, const BenchFile &bench, Maker &maker)
{
    const Description<R> &kind = description<R>();
    if (auto reads = kind.reads(after); !reads)
        return reads.trouble();
    const auto old = kind.fromRow(before);
    auto wanted = kind.fromRow(after);
    if (!old || !wanted)
        return old ? wanted.trouble() : old.trouble();
    if (auto isSound = sound(*wanted, file); !isSound)
        return isSound.trouble();
    if constexpr (std::is_same_v<R, Reading>) {
        return corrected(*old, *wanted, file, bench, maker);
    } else {
        Q_UNUSED(bench)
        settle(*old, *wanted, maker);
        const QString name = callName(kind, after);
        Change change(name.isEmpty() ? QStringLiteral("Corrected a %1").arg(kind.noun()) : QStringLiteral("Corrected %1: %2").arg(kind.noun(), shown(name)));
        change.edit(*old, *wanted);
        if (!change.isEmpty())
            followUp(change, *wanted, file);
        return change;
    }
}

} // namespace

Expected<Change> editedRecord(const Kind &kind, const Row &before, const Row &after, const UnitFile &file, const BenchFile &bench, Maker &maker)
{
    if (before == after)
        return Change();
#define TS_EDITED(R) \
    if constexpr (detail::OfUnit<R>::value || std::is_same_v<R, Unit>) \
        if (&kind == &description<R>()) \
            return edited<R>(before, after, file, bench, maker);
    TS_RECORDS(TS_EDITED)
#undef TS_EDITED
    return Trouble{QStringLiteral("Nothing was changed"), QStringLiteral("a %1 is not of a unit").arg(kind.noun()), {}};
}

} // namespace ts
