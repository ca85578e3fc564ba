#include "model/sums/take_out.h"

#include "model/records/made_with.h"
#include "model/records/unit_rows.h"

#include <QHash>
#include <QSet>

namespace ts {

namespace {

class Taker {
public:
    explicit Taker(const UnitFile &file) : m_file(file) {}

    Expected<Change> taken(const QList<Event> &entries)
    {
        QList<RecordKey> whole;
        QList<Event> later;
        for (const Event &entry : entries) {
            const RecordKey key{&kindOf(entry.what), entry.record};
            if (auto allowed = mayGo(entry, key); !allowed)
                return allowed.trouble();
            if (entry.later)
                later << entry;
            else if (!whole.contains(key))
                whole << key;
        }
        m_change = Change(entries.size() == 1 ? QStringLiteral("Taken out: ") + entries.first().text : QStringLiteral("Taken out: %1 entries").arg(entries.size()));
        QSet<QUuid> taken;
        for (const Event &entry : later) {
            const bool goesWhole = whole.contains(RecordKey{&kindOf(entry.what), entry.record}) || taken.contains(entry.record);
            taken << entry.record;
            if (!goesWhole)
                takeBack(entry);
        }
        takeWhole(whole, taken);
        return m_change;
    }

private:
    Expected<void> mayGo(const Event &entry, const RecordKey &key)
    {
        const QString did = QStringLiteral("Nothing was taken out");
        if (!rowOf(m_file, key))
            return Trouble{did, QStringLiteral("it is there no longer"), {}};
        if (entry.what == EventKind::TakenIn)
            return Trouble{did, QStringLiteral("a unit stays taken in"), QStringLiteral("close it with an outcome when it goes")};
        if (entry.what == EventKind::Paper)
            return Trouble{did, QStringLiteral("a paper that was made stays in the record"), QStringLiteral("make a new edition")};
        if (entry.what == EventKind::Stage && entry.record != lastMove().id.value)
            return Trouble{did, QStringLiteral("only the last move of a stage can be taken back"), {}};
        return {};
    }

    [[nodiscard]] StageMove lastMove(int before = 0) const
    {
        const QList<StageMove> &moves = m_file.all<StageMove>();
        return moves.value(moves.size() - 1 - before);
    }

    void takeBack(const Event &entry)
    {
        switch (entry.what) {
        case EventKind::SymptomCleared:
            edit<Symptom>(entry, [](Symptom &r) {
                r.state = SymptomState::Open;
                r.clearedAt = {};
            });
            break;
        case EventKind::CauseRuledOut:
        case EventKind::CauseConfirmed:
            edit<Cause>(entry, [](Cause &r) {
                r.state = CauseState::Open;
                r.settledAt = {};
                r.reason.clear();
            });
            break;
        case EventKind::PutBack:
            edit<TeardownItem>(entry, [](TeardownItem &r) {
                r.state = TeardownState::Off;
                r.backAt = {};
                r.leftOutBecause.clear();
            });
            break;
        case EventKind::Check:
            edit<Check>(entry, [](Check &r) {
                r.cameOut = CameOut::NotDone;
                r.doneAt = {};
                r.result.clear();
            });
            break;
        case EventKind::Soak:
            edit<Soak>(entry, [](Soak &r) { r.endedAt = {}; });
            break;
        default:
            edit<Need>(entry, [](Need &r) {
                r.state = r.state == NeedState::Fitted ? NeedState::Here : NeedState::Needed;
                r.stateSince = r.state == NeedState::Here ? r.stateSince : QDateTime();
            });
        }
    }

    template <class R, class Edit>
    void edit(const Event &entry, Edit edit)
    {
        const R before = *m_file.find(Id<R>{entry.record});
        R after = before;
        edit(after);
        m_change.edit(before, after);
    }

    void takeWhole(QList<RecordKey> whole, const QSet<QUuid> &edited)
    {
        QList<Id<Reading>> readings;
        for (const RecordKey &key : whole) {
            if (key.kind == &description<Reading>())
                readings << Id<Reading>{key.id};
            if (key.kind == &description<StageMove>())
                stepBack();
        }
        for (const TestPoint &point : pointsMadeWith(readings, m_file))
            whole << RecordKey{&description<TestPoint>(), point.id.value};
        QList<RecordKey> gone;
        for (const KindRow &each : withWhatHangs(whole, m_file, Hanging::Needs)) {
            m_change.addItem({each.kind, each.row, std::nullopt});
            gone << each.key();
        }
        for (const ChangeItem &item : lettingGo(gone, m_file))
            if (!edited.contains(Kind::id(*item.before))) // one change cannot edit a record twice
                m_change.addItem(item);
    }

    void stepBack()
    {
        const StageMove move = lastMove();
        const StageMove earlier = lastMove(1);
        Unit after = m_file.unit;
        if (after.stage != move.toStage)
            return;
        after.stage = move.fromStage;
        after.stageSince = earlier.id.isNull() ? m_file.unit.at : earlier.at;
        after.heldBecause = after.stage == Stage::Held ? earlier.because : QString();
        after.heldUntil = after.stage == Stage::Held ? earlier.until : QDate();
        after.outcome = after.stage == Stage::Closed ? earlier.outcome : std::nullopt;
        m_change.edit(m_file.unit, after);
    }

    const UnitFile &m_file;
    Change m_change;
};

} // namespace

Expected<Change> takenOut(const QList<Event> &entries, const UnitFile &file)
{
    return Taker(file).taken(entries);
}

} // namespace ts
