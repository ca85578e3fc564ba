#include "views/find/found_model.h"

#include "model/records/tag_text.h"

namespace ts {

void FoundModel::show(const QList<Found> &found)
{
    beginResetModel();
    m_found = found;
    m_lines.clear();
    for (int group = 0; group <= static_cast<int>(FoundGroup::Bench); ++group) {
        const auto each = static_cast<FoundGroup>(group);
        bool headed = false;
        for (int i = 0; i < m_found.size(); ++i) {
            if (foundGroupOf(m_found.at(i).kind) != each)
                continue;
            if (!std::exchange(headed, true))
                m_lines << Line{each, -1};
            m_lines << Line{each, i};
        }
    }
    endResetModel();
}

int FoundModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant FoundModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Line &line = m_lines.at(index.row());
    const Found *found = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        // Of a unit's words the first two lines are its tag and its name, which stand before it already.
        if (!found)
            return foundGroupName(line.group);
        return found->kind == QLatin1String("unit") ? QString() : QString(found->text).replace(QLatin1Char('\n'), QStringLiteral(" · ")).simplified();
    case Qt::AccessibleTextRole:
        return found ? tr("%1 %2: %3").arg(index.data(Tag).toString(), found->unitName, index.data().toString()) : foundGroupName(line.group);
    case IsHeading:
        return !found;
    case Tag:
        return found && found->tag > 0 ? tagText(found->tag) : QString();
    case UnitName:
        return found ? found->unitName : QString();
    default:
        return {};
    }
}

Qt::ItemFlags FoundModel::flags(const QModelIndex &index) const
{
    if (!index.isValid())
        return Qt::NoItemFlags;
    return at(index.row()) ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren : Qt::ItemNeverHasChildren;
}

const Found *FoundModel::at(int row) const
{
    if (row < 0 || row >= m_lines.size() || m_lines.at(row).found < 0)
        return nullptr;
    return &m_found.at(m_lines.at(row).found);
}

int FoundModel::nextFrom(int row, int by) const
{
    for (; row >= 0 && row < m_lines.size(); row += by)
        if (at(row))
            return row;
    return -1;
}

} // namespace ts
