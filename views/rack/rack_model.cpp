#include "views/rack/rack_model.h"

#include "model/records/tag_text.h"
#include "model/sums/hours.h"

namespace ts {

namespace {
constexpr int pageSize = 200;
}

RackModel::RackModel(Desk &desk, QObject *parent) : QAbstractListModel(parent), m_desk(desk) {}

int RackModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant RackModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const RackRow &row = m_rows.at(index.row());
    QString stage = toWord(row.stage);
    stage[0] = stage.at(0).toUpper();
    switch (role) {
    case Qt::DisplayRole: {
        const QString second = row.doNotPower ? tr("Do not power") : row.stage == Stage::Held ? row.heldBecause : row.symptom;
        return QStringLiteral("%1  %2\n%3%4\n%5 · %6").arg(tagText(row.tag), row.name, stage, second.isEmpty() ? QString() : QStringLiteral(": ") + second,
                                                         row.spent.display(), durationText(static_cast<int>(row.minutes)));
    }
    case Qt::AccessibleTextRole:
        return tr("Unit %1, %2, %3").arg(tagText(row.tag), row.name, stage);
    case UnitId:
        return row.id.value;
    case Tag:
        return row.tag;
    default:
        return {};
    }
}

bool RackModel::canFetchMore(const QModelIndex &parent) const
{
    return !parent.isValid() && !m_complete;
}

void RackModel::fetchMore(const QModelIndex &parent)
{
    if (!canFetchMore(parent))
        return;
    const auto more = m_desk.rack({static_cast<int>(m_rows.size()), pageSize, std::nullopt});
    if (!more) {
        m_complete = true;
        Q_EMIT troubled(more.trouble().sentence());
        return;
    }
    m_complete = more->size() < pageSize;
    if (more->isEmpty())
        return;
    beginInsertRows({}, static_cast<int>(m_rows.size()), static_cast<int>(m_rows.size() + more->size()) - 1);
    m_rows << *more;
    endInsertRows();
}

void RackModel::reload()
{
    // The first page comes with the reset, so whoever listens to it finds units and not an empty rack.
    auto first = m_desk.rack({0, pageSize, std::nullopt});
    beginResetModel();
    m_rows = first ? *std::move(first) : QList<RackRow>();
    m_complete = m_rows.size() < pageSize;
    endResetModel();
    if (!first)
        Q_EMIT troubled(first.trouble().sentence());
}

int RackModel::rowOf(const QUuid &unit) const
{
    for (qsizetype i = 0; i < m_rows.size(); ++i)
        if (m_rows.at(i).id.value == unit)
            return static_cast<int>(i);
    return -1;
}

} // namespace ts
