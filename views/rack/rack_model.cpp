#include "views/rack/rack_model.h"

#include "views/widgets/stage_names.h"

#include <algorithm>
#include <array>

namespace ts {

namespace {

constexpr int page = 50;

// As the rack hangs: what is worked on first.
constexpr std::array stages{Stage::Bench, Stage::Held, Stage::Proving, Stage::Ready, Stage::Offered, Stage::Shelved, Stage::Inbound, Stage::Scouted, Stage::Closed};

} // namespace

RackModel::RackModel(Desk &desk, QObject *parent) : QAbstractListModel(parent), m_desk(desk)
{
    connect(&m_desk, &Desk::recorded, this, [this](const QString &kind, const QUuid &, const QUuid &unit, const QStringList &fields) { note(kind, unit, fields); });
    connect(&m_desk, &Desk::everythingChanged, this, [this] { m_all = true; });
}

void RackModel::note(const QString &kind, const QUuid &unit, const QStringList &fields)
{
    if (kind == QLatin1String("setting") || kind == QLatin1String("channel"))
        m_all = true; // the currency, a channel's name
    if (unit.isNull())
        return;
    m_changed << unit;
    static const QStringList hangsBy{QStringLiteral("stage"), QStringLiteral("stage_since"), QStringLiteral("held_until"), QStringLiteral("name"),
                                     QStringLiteral("tag"),   QStringLiteral("removed"),     QStringLiteral("id")};
    const bool narrowed = !m_words.isEmpty() && (kind == QLatin1String("unit") || kind == QLatin1String("symptom"));
    const bool moved = kind == QLatin1String("unit") && std::any_of(fields.begin(), fields.end(), [](const QString &field) { return hangsBy.contains(field); });
    const bool partCame = kind == QLatin1String("need") && (fields.contains(QLatin1String("state")) || fields.contains(QLatin1String("removed")));
    m_moved = m_moved || narrowed || moved || partCame || (kind == QLatin1String("unit") && !m_rows.contains(unit));
}

int RackModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant RackModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Line &line = m_lines.at(index.row());
    const bool heading = line.unit.isNull();
    const auto tag = m_tags.constFind(line.unit.value);
    switch (role) {
    case Qt::DisplayRole:
        return heading ? shown::onStage(line.stage) : tag == m_tags.constEnd() ? QString() : tag->tag + QLatin1Char(' ') + tag->name;
    case Qt::AccessibleTextRole:
        if (heading)
            return (isFolded(line.stage) ? tr("%1, %2 folded away") : tr("%1, %2")).arg(shown::onStage(line.stage)).arg(m_counts.value(line.stage));
        return tag == m_tags.constEnd() ? QString() : tag->spoken();
    case UnitId:
        return line.unit.value;
    case Words:
        return tag == m_tags.constEnd() ? QVariant() : QVariant::fromValue(*tag);
    case IsHeading:
        return heading;
    case StageOf:
        return static_cast<int>(line.stage);
    case Count:
        return m_counts.value(line.stage);
    case Folded:
        return isFolded(line.stage);
    default:
        return {};
    }
}

Qt::ItemFlags RackModel::flags(const QModelIndex &index) const
{
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren : Qt::NoItemFlags;
}

bool RackModel::isFolded(Stage stage) const
{
    return m_folded.contains(stage) && !(m_onlyClosed && stage == Stage::Closed);
}

bool RackModel::keepsInHand(Stage stage) const
{
    return !m_inHand.isNull() && m_inHandAt == stage && m_words.isEmpty() && isFolded(stage);
}

void RackModel::setInHand(const Id<Unit> &unit, Stage stage)
{
    if (unit == m_inHand && stage == m_inHandAt)
        return;
    const bool kept = keepsInHand(m_inHandAt);
    const Id<Unit> before = std::exchange(m_inHand, unit);
    m_inHandAt = stage;
    if (kept || keepsInHand(stage))
        place(hang(), {before.value, unit.value});
}

void RackModel::setWords(const QString &words)
{
    const QString plain = words.simplified();
    if (plain == m_words)
        return;
    m_words = plain;
    reload();
}

void RackModel::setSort(RackSort sort)
{
    if (sort == m_sort)
        return;
    m_sort = sort;
    reload();
}

void RackModel::setFolded(Stage stage, bool folded)
{
    if (m_folded.contains(stage) == folded)
        return;
    if (folded)
        m_folded << stage;
    else
        m_folded.remove(stage);
    reload();
}

void RackModel::setFolding(const QSet<Stage> &folded, RackSort sort)
{
    if (folded == m_folded && sort == m_sort)
        return;
    m_folded = folded;
    m_sort = sort;
    reload();
}

// Only the stages that are seen are asked for: of a workbook of many years, most units are closed.
RackModel::Hung RackModel::hang()
{
    Hung hung;
    const auto counts = m_desk.rackCounts(m_words);
    if (!counts) {
        Q_EMIT troubled(counts.trouble().sentence());
        return hung;
    }
    hung.counts = *counts;
    m_onlyClosed = !m_words.isEmpty() && counts->size() == 1 && counts->contains(Stage::Closed);
    QList<Stage> seen;
    for (const Stage stage : stages)
        if (counts->value(stage) > 0 && !isFolded(stage))
            seen << stage;
    const auto order = seen.isEmpty() ? Expected<QList<RackPlace>>(QList<RackPlace>()) : m_desk.rackOrder(m_words, m_sort, seen);
    if (!order) {
        Q_EMIT troubled(order.trouble().sentence());
        return hung;
    }
    hung.sound = true;
    auto at = order->begin();
    for (const Stage stage : stages) {
        if (hung.counts.value(stage) == 0)
            continue;
        hung.lines << Line{stage, {}};
        if (keepsInHand(stage))
            hung.lines << Line{stage, m_inHand};
        for (; at != order->end() && at->stage == stage; ++at)
            hung.lines << Line{stage, at->id};
    }
    return hung;
}

void RackModel::number()
{
    m_rows.clear();
    m_headings.clear();
    m_rows.reserve(m_lines.size());
    m_units = 0;
    for (const int count : std::as_const(m_counts))
        m_units += count;
    for (int row = 0; row < m_lines.size(); ++row) {
        if (m_lines.at(row).unit.isNull())
            m_headings << row;
        else
            m_rows.insert(m_lines.at(row).unit.value, row);
    }
}

void RackModel::reload()
{
    m_all = m_moved = false;
    m_changed.clear();
    Hung hung = hang();
    if (!hung.sound)
        return; // what was there stays; it was said why
    beginResetModel();
    m_lines = std::move(hung.lines);
    m_counts = hung.counts;
    m_tags.clear();
    m_day = m_desk.maker().now().toLocalTime().date();
    number();
    endResetModel();
}

void RackModel::refresh()
{
    if (m_all || m_day != m_desk.maker().now().toLocalTime().date()) {
        reload();
        return;
    }
    const bool moved = std::exchange(m_moved, false);
    const QSet<QUuid> changed = std::exchange(m_changed, {});
    QList<Id<Unit>> again;
    for (const QUuid &unit : changed)
        if (m_tags.contains(unit))
            again << Id<Unit>{unit};
    if (moved)
        place(hang(), changed);
    readAgain(again);
}

// What hangs elsewhere now goes there row by row, so that the rest keeps its place and the marked tag stays the same unit's.
void RackModel::place(const Hung &hung, const QSet<QUuid> &changed)
{
    if (!hung.sound)
        return;
    const QHash<Stage, int> before = std::exchange(m_counts, hung.counts);
    if (hung.lines != m_lines) {
        QSet<Line> wanted(hung.lines.begin(), hung.lines.end());
        for (const Line &line : hung.lines)
            if (line.unit.isNull() && before.value(line.stage) == 0)
                insert(firstBelow(line.stage), line);
        for (const QUuid &unit : changed)
            if (const int row = rowOf(unit); row >= 0 && !wanted.contains(m_lines.at(row)))
                if (std::none_of(hung.lines.begin(), hung.lines.end(), [&](const Line &line) { return line.unit.value == unit; }))
                    remove(row);
        for (qsizetype i = 1; i < hung.lines.size(); ++i)
            if (changed.contains(hung.lines.at(i).unit.value))
                putAfter(hung.lines.at(i - 1), hung.lines.at(i));
        for (qsizetype i = m_headings.size() - 1; i >= 0; --i)
            if (!wanted.contains(m_lines.at(m_headings.at(i))))
                remove(m_headings.at(i));
    }
    if (hung.lines != m_lines) { // more had moved than was told
        beginResetModel();
        m_lines = hung.lines;
        number();
        endResetModel();
        return;
    }
    number();
    for (const int row : std::as_const(m_headings))
        Q_EMIT dataChanged(index(row), index(row));
}

int RackModel::firstBelow(Stage stage) const
{
    const auto place = [](Stage each) { return std::find(stages.begin(), stages.end(), each); };
    const auto at = std::find_if(m_lines.begin(), m_lines.end(), [&](const Line &line) { return place(line.stage) > place(stage); });
    return static_cast<int>(at - m_lines.begin());
}

int RackModel::rowOf(const Line &line) const
{
    if (!line.unit.isNull())
        return rowOf(line.unit.value);
    const auto at = std::find_if(m_headings.begin(), m_headings.end(), [&](int row) { return m_lines.at(row).stage == line.stage; });
    return at == m_headings.end() ? -1 : *at;
}

void RackModel::putAfter(const Line &above, const Line &line)
{
    const int to = rowOf(above) + 1;
    const int from = rowOf(line);
    if (from < 0) {
        insert(to, line);
        return;
    }
    m_lines[from].stage = line.stage;
    if (from == to)
        return;
    beginMoveRows({}, from, from, {}, to);
    m_lines.move(from, from < to ? to - 1 : to);
    number();
    endMoveRows();
}

void RackModel::insert(int row, const Line &line)
{
    beginInsertRows({}, row, row);
    m_lines.insert(row, line);
    number();
    endInsertRows();
}

void RackModel::remove(int row)
{
    beginRemoveRows({}, row, row);
    m_lines.removeAt(row);
    number();
    endRemoveRows();
}

void RackModel::readAgain(const QList<Id<Unit>> &units)
{
    if (units.isEmpty())
        return;
    const auto rows = m_desk.rackUnits(units);
    if (!rows) {
        Q_EMIT troubled(rows.trouble().sentence());
        return;
    }
    const QDateTime now = m_desk.maker().now();
    for (const RackRow &row : *rows) {
        m_tags.insert(row.id.value, tagWords(row, now));
        const int at = rowOf(row.id.value);
        if (at >= 0)
            Q_EMIT dataChanged(index(at), index(at));
    }
}

void RackModel::load(int first, int last)
{
    QList<Id<Unit>> missing;
    bool seen = false; // something that is looked at is missing; else what is next to it can wait
    const int size = static_cast<int>(m_lines.size());
    for (int row = qMax(0, first - page); row < qMin(size, last + page + 1); ++row) {
        const Line &line = m_lines.at(row);
        if (line.unit.isNull() || m_tags.contains(line.unit.value))
            continue;
        missing << line.unit;
        seen = seen || (row >= first - page / 4 && row <= last + page / 4);
    }
    if (seen)
        readAgain(missing);
}

int RackModel::rowOf(const QUuid &unit) const
{
    return m_rows.value(unit, -1);
}

} // namespace ts
