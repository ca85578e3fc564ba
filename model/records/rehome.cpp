#include "model/records/rehome.h"

#include "model/records/made_with.h"
#include "model/records/tag_text.h"
#include "model/values/name_key.h"

#include <QHash>
#include <QSet>

#include <algorithm>

namespace ts {

namespace {

bool samePoint(const TestPoint &a, const TestPoint &b)
{
    return nameKey(a.name) == nameKey(b.name) && nameKey(a.conditions) == nameKey(b.conditions);
}

class Mover {
public:
    Mover(const UnitFile &from, const UnitFile &to, Maker &maker) : m_from(from), m_to(to), m_maker(maker) {}

    Change moved(const QList<RecordKey> &named, const QString &sentence)
    {
        m_change = Change(sentence);
        touch(m_from.unit);
        touch(m_to.unit);
        const QList<KindRow> rows = withWhatHangs(named, m_from, Hanging::Belongs);
        for (const KindRow &each : rows)
            m_moving << each.key();
        findPoints();
        for (const KindRow &each : rows)
            move(each);
        for (const ChangeItem &item : lettingGo(m_moving.values(), m_from))
            m_change.addItem(item);
        return m_change;
    }

private:
    // Before and after are alike: the journal gives a line to each unit that a change names.
    void touch(const Unit &unit)
    {
        const Row row = description<Unit>().toRow(unit);
        m_change.addItem({&description<Unit>(), row, row});
    }

    void findPoints()
    {
        QList<Id<Reading>> going;
        QSet<QUuid> used;
        for (const Reading &reading : m_from.all<Reading>())
            if (m_moving.contains({&description<Reading>(), reading.id.value})) {
                going << reading.id;
                used << reading.point.value;
            }
        QSet<QUuid> free; // to come along
        for (const TestPoint &point : pointsMadeWith(going, m_from))
            free << point.id.value;
        for (const TestPoint &point : m_from.all<TestPoint>())
            if (used.contains(point.id.value))
                m_points.insert(point.id.value, pointThere(point, free.contains(point.id.value)).value);
    }

    Id<TestPoint> pointThere(const TestPoint &point, bool mayMove)
    {
        for (const TestPoint &there : m_to.all<TestPoint>()) {
            if (!samePoint(point, there))
                continue;
            TestPoint after = there;
            if (after.wanted.isNone())
                after.wanted = point.wanted;
            m_change.edit(there, after);
            return there.id;
        }
        TestPoint after = point;
        after.unit = m_to.unit.id;
        after.position = nextPosition(m_to.all<TestPoint>());
        if (mayMove) {
            m_moving << RecordKey{&description<TestPoint>(), point.id.value};
            m_change.edit(point, after);
        } else {
            const auto fresh = m_maker.fresh<TestPoint>();
            after.id = fresh.id;
            after.version = fresh.version;
            m_change.add(after);
        }
        return after.id;
    }

    template <class R>
    int nextPosition(const QList<R> &records)
    {
        int last = 0;
        for (const R &record : records)
            last = std::max(last, record.position);
        return last + 1 + m_placed[&description<R>()]++;
    }

    void move(const KindRow &each)
    {
        const QList<FieldInfo> &fields = each.kind->fields();
        Row after = each.row;
        after[each.kind->unitColumn()] = QVariant(m_to.unit.id.text());
        for (int i = 0; i < fields.size(); ++i) {
            if (fields.at(i).type != FieldType::Ref || i == each.kind->unitColumn() || after.at(i).isNull())
                continue;
            const RecordKey other{kindNamed(fields.at(i).refersTo), QUuid::fromString(after.at(i).toString())};
            if (m_points.contains(other.id))
                after[i] = QVariant(m_points.value(other.id).toString(QUuid::WithoutBraces));
            else if (!m_moving.contains(other) && rowOf(m_from, other)) {
                if (fields.at(i).required) { // it cannot stand there without what stays here
                    m_change.addItem({each.kind, each.row, std::nullopt});
                    return;
                }
                after[i] = QVariant();
            }
        }
        if (each.kind == &description<LeftOff>() && !m_to.all<LeftOff>().isEmpty()) {
            writeOver(each.row);
            return;
        }
        if (each.kind == &description<Photo>())
            after[each.kind->column(u"position")] = QVariant(static_cast<qlonglong>(nextPosition(m_to.all<Photo>())));
        if (each.kind == &description<TeardownItem>())
            after[each.kind->column(u"position")] = QVariant(static_cast<qlonglong>(nextPosition(m_to.all<TeardownItem>())));
        m_change.addItem({each.kind, each.row, after});
    }

    void writeOver(const Row &row)
    {
        const Kind &kind = description<LeftOff>();
        const Row before = description<LeftOff>().toRow(m_to.all<LeftOff>().last());
        Row after = before;
        for (const auto *name : {"where_at", "next", "loose", "do_not_power"})
            if (const int column = kind.column(QString::fromLatin1(name)); !row.at(column).toString().isEmpty())
                after[column] = row.at(column);
        after[Kind::atColumn] = row.at(Kind::atColumn);
        m_change.addItem({&kind, before, after});
        m_change.addItem({&kind, row, std::nullopt});
    }

    const UnitFile &m_from;
    const UnitFile &m_to;
    Maker &m_maker;
    Change m_change;
    QSet<RecordKey> m_moving;
    QHash<QUuid, QUuid> m_points; ///< a test point here and the one that takes its place there
    QHash<const Kind *, int> m_placed;
};

} // namespace

Expected<Change> rehomed(const QList<RecordKey> &records, const UnitFile &from, const UnitFile &to, Maker &maker)
{
    const QString did = QStringLiteral("Nothing was moved");
    if (records.isEmpty())
        return Trouble{did, QStringLiteral("nothing was chosen"), {}};
    if (from.unit.id == to.unit.id)
        return Trouble{did, QStringLiteral("%1 is the unit it stands on").arg(tagText(from.unit.tag)), QStringLiteral("choose another")};
    for (const RecordKey &key : records) {
        const auto row = rowOf(from, key);
        if (!row)
            return Trouble{did, QStringLiteral("it is no longer on %1").arg(tagText(from.unit.tag)), {}};
        if (key.kind->unitColumn() < 0 || key.kind == &description<StageMove>() || key.kind == &description<Paper>())
            return Trouble{did, QStringLiteral("a %1 stays with its unit").arg(key.kind->noun()), QStringLiteral("choose the others without it")};
    }
    QString what = QStringLiteral("%1 entries").arg(records.size());
    if (records.size() == 1) {
        const QString name = callName(*records.first().kind, *rowOf(from, records.first()));
        what = records.first().kind->noun() + (name.isEmpty() ? QString() : QLatin1Char(' ') + name);
    }
    return Mover(from, to, maker).moved(records, QStringLiteral("Moved from %1 to %2: %3").arg(tagText(from.unit.tag), tagText(to.unit.tag), what));
}

} // namespace ts
