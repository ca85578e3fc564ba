#include "views/money/cost_model.h"

#include "views/money/plan_edit.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"

namespace ts {

CostModel::CostModel(Workplace &workplace, QObject *parent) : QAbstractTableModel(parent), m_work(workplace) {}

void CostModel::refresh(const CostSheet &sheet, const Completion &completion)
{
    const bool sameRows = sheet.lines.size() == m_sheet.lines.size();
    if (!sameRows)
        beginResetModel();
    m_sheet = sheet;
    m_completion = completion;
    if (!sameRows)
        endResetModel();
    else if (rowCount() > 0)
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, Columns - 1));
}

int CostModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_sheet.lines.size());
}

int CostModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : Columns;
}

bool CostModel::isPlanned(CostKey key)
{
    return key == CostKey::Parts || key == CostKey::CarriageOut || key == CostKey::Resale || key == CostKey::YourHours;
}

QString CostModel::text(const CostLine &line, int column) const
{
    const auto amount = [](const std::optional<Money> &money) { return money ? shown::amount(*money) : QString(); };
    if (column == What)
        return line.text;
    const std::optional<Money> completed = m_completion.lines.contains(line.key) ? std::optional(m_completion.lines.value(line.key)) : std::nullopt;
    const std::optional<Money> &money = column == Planned ? line.planned : column == ToDate ? line.toDate : completed;
    if (line.key != CostKey::YourHours)
        return amount(money);
    const std::optional<int> minutes = column == Planned ? m_sheet.minutesPlanned : column == ToDate ? m_sheet.hours.minutes() : m_completion.minutes;
    if (!minutes)
        return amount(money);
    return money ? tr("%1 · %2").arg(shown::duration(*minutes), shown::amount(*money)) : shown::duration(*minutes);
}

QString CostModel::forEditing(const CostLine &line) const
{
    if (line.key == CostKey::YourHours)
        return m_sheet.minutesPlanned ? shown::duration(*m_sheet.minutesPlanned) : QString();
    return line.planned ? shown::amount(*line.planned) : QString();
}

QVariant CostModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const CostLine &line = m_sheet.lines.at(index.row());
    const bool strong = line.isTotal && line.key != CostKey::BreakEven && line.key != CostKey::Spent;
    switch (role) {
    case Qt::DisplayRole:
        return text(line, index.column());
    case Qt::EditRole:
        return forEditing(line);
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter | (index.column() == What ? Qt::AlignLeft : Qt::AlignRight));
    case Qt::FontRole:
        return m_work.style().text(1, (strong || line.key == CostKey::Spent) && index.column() != Planned && index.column() != ToDate ? QFont::DemiBold : QFont::Normal);
    case Qt::BackgroundRole:
        return line.key == CostKey::Spent || line.key == CostKey::EverythingButHours || line.key == CostKey::BreakEven ? QVariant(m_work.style().ink().neutralPaper) : QVariant();
    case Qt::ForegroundRole:
        if (line.key == CostKey::ProfitBeforeHours || line.key == CostKey::EarnedPerHour) {
            const auto &lines = m_completion.lines;
            const std::optional<Money> money = index.column() == Planned  ? line.planned
                                               : index.column() == ToDate ? line.toDate
                                               : lines.contains(line.key) ? std::optional(lines.value(line.key))
                                                                          : std::nullopt;
            if (index.column() != What && money && money->minor() < 0)
                return m_work.style().ink().outside;
        }
        return {};
    case Qt::ToolTipRole:
        return index.column() == Planned && isPlanned(line.key) ? tr("Press Enter or F2 to change the plan") : QString();
    case Qt::AccessibleTextRole:
        return tr("%1, %2: %3").arg(line.text, headerData(index.column(), Qt::Horizontal).toString(), text(line, index.column()));
    case IsTotal:
        return line.isTotal;
    default:
        return {};
    }
}

QVariant CostModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == What ? Qt::AlignLeft : Qt::AlignRight));
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case What:
        return tr("Cost against resale");
    case Planned:
        return tr("Planned at purchase");
    case ToDate:
        return tr("To date");
    case AtCompletion:
        return tr("At completion");
    default:
        return {};
    }
}

Qt::ItemFlags CostModel::flags(const QModelIndex &index) const
{
    Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    if (index.isValid() && index.column() == Planned && isPlanned(m_sheet.lines.at(index.row()).key))
        flags |= Qt::ItemIsEditable;
    return flags;
}

bool CostModel::setData(const QModelIndex &index, const QVariant &value, int role)
{
    if (role != Qt::EditRole || !(flags(index) & Qt::ItemIsEditable))
        return false;
    // What is shown follows what is being typed, so that being the same as shown says nothing; the delegate hands on what was typed alone.
    const CostLine line = m_sheet.lines.at(index.row());
    Maker maker = m_work.maker();
    return m_work.record(planWith(m_work.file(), m_work.bench(), line.key, value.toString(), maker));
}

} // namespace ts
