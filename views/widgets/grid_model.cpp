#include "views/widgets/grid_model.h"

#include <algorithm>

namespace ts {

namespace {

QVariant alignmentOf(const GridColumn &column)
{
    return QVariant::fromValue(Qt::Alignment((column.right ? Qt::AlignRight : column.middle ? Qt::AlignHCenter : Qt::AlignLeft) | Qt::AlignVCenter));
}

} // namespace

GridModel::GridModel(QList<GridColumn> columns, QObject *parent) : QAbstractTableModel(parent), m_columns(std::move(columns)) {}

void GridModel::setColumns(QList<GridColumn> columns)
{
    beginResetModel();
    m_columns = std::move(columns);
    m_rows.clear();
    endResetModel();
}

void GridModel::setRows(const QList<GridRow> &rows)
{
    const auto stays = [&rows](const GridRow &row) { return std::any_of(rows.begin(), rows.end(), [&row](const GridRow &each) { return each.same(row); }); };
    for (int i = static_cast<int>(m_rows.size()) - 1; i >= 0; --i) {
        if (stays(m_rows.at(i)))
            continue;
        beginRemoveRows({}, i, i);
        m_rows.removeAt(i);
        endRemoveRows();
    }
    for (int i = 0; i < rows.size(); ++i) {
        const auto found = std::find_if(m_rows.begin() + std::min<qsizetype>(i, m_rows.size()), m_rows.end(), [&](const GridRow &row) { return row.same(rows.at(i)); });
        const int from = static_cast<int>(found - m_rows.begin());
        if (found == m_rows.end()) {
            beginInsertRows({}, i, i);
            m_rows.insert(i, rows.at(i));
            endInsertRows();
        } else if (from != i) {
            beginMoveRows({}, from, from, {}, i);
            m_rows.move(from, i);
            endMoveRows();
        }
    }
    // Told as one block of whole rows: a view then leaves a field alone in which somebody types.
    int first = -1;
    int last = -1;
    for (int i = 0; i < rows.size(); ++i) {
        if (m_rows.at(i) == rows.at(i))
            continue;
        m_rows[i] = rows.at(i);
        first = first < 0 ? i : first;
        last = i;
    }
    if (first >= 0)
        Q_EMIT dataChanged(index(first, 0), index(last, columnCount() - 1));
}

const GridCell &GridModel::cell(const QModelIndex &index) const
{
    static const GridCell none;
    const QList<GridCell> &cells = m_rows.at(index.row()).cells;
    return index.column() < cells.size() ? cells.at(index.column()) : none;
}

int GridModel::rowOf(const QUuid &key) const
{
    if (key.isNull())
        return -1;
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&key](const GridRow &row) { return row.key == key; });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int GridModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int GridModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

QVariant GridModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid))
        return {};
    const GridCell &shown = cell(index);
    switch (role) {
    case Qt::DisplayRole:
        return shown.text;
    case Qt::EditRole:
        return shown.edit;
    case Qt::ToolTipRole:
        return shown.tip.isEmpty() ? QVariant() : QVariant(shown.tip.toHtmlEscaped().replace(QLatin1Char('\n'), QLatin1String("<br>")));
    case Qt::TextAlignmentRole:
        return alignmentOf(m_columns.at(index.column()));
    case Qt::CheckStateRole:
        return shown.tick ? QVariant(*shown.tick ? Qt::Checked : Qt::Unchecked) : QVariant();
    case Qt::AccessibleTextRole: {
        QStringList words{shown.spoken.isEmpty() ? shown.text : shown.spoken, shown.after, shown.second};
        words.removeAll(QString());
        return words.join(QStringLiteral(", "));
    }
    case Qt::AccessibleDescriptionRole:
        return QString(m_columns.at(index.column()).title).replace(QLatin1Char('\n'), QLatin1Char(' '));
    default:
        return {};
    }
}

QVariant GridModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= m_columns.size())
        return {};
    if (role == Qt::DisplayRole)
        return m_columns.at(section).title;
    if (role == Qt::ToolTipRole && !m_columns.at(section).tip.isEmpty())
        return m_columns.at(section).tip.toHtmlEscaped();
    if (role == Qt::TextAlignmentRole)
        return alignmentOf(m_columns.at(section));
    return {};
}

Qt::ItemFlags GridModel::flags(const QModelIndex &index) const
{
    if (!index.isValid() || m_rows.at(index.row()).kind == GridRowKind::Group)
        return Qt::NoItemFlags;
    const GridCell &shown = cell(index);
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (shown.editable)
        flags |= Qt::ItemIsEditable;
    if (shown.tick)
        flags |= Qt::ItemIsUserCheckable;
    return flags;
}

bool GridModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (!index.isValid() || !m_commit || (role != Qt::EditRole && role != Qt::CheckStateRole))
        return false;
    const GridRow row = m_rows.at(index.row()); // a copy: what is recorded brings other rows
    const GridCell shown = cell(index);
    const bool ticking = role == Qt::CheckStateRole;
    if (ticking ? !shown.tick : !shown.editable && !shown.toggle)
        return false;
    const QString typed = ticking ? (value.toInt() == Qt::Checked ? QStringLiteral("yes") : QStringLiteral("no")) : value.toString().trimmed();
    if (!ticking && typed == shown.edit.trimmed()) {
        m_landed = row.key;
        return true;
    }
    const auto landed = m_commit(row, index.column(), typed);
    m_landed = landed.value_or(row.key);
    return landed.has_value();
}

} // namespace ts
