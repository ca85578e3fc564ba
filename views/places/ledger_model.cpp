#include "views/places/ledger_model.h"

#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"

namespace ts {

LedgerModel::LedgerModel(const Style &style, QObject *parent) : QAbstractTableModel(parent), m_style(style) {}

void LedgerModel::setLines(QList<BookLine> lines)
{
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

QString LedgerModel::kindText(SpendKind kind)
{
    switch (kind) {
    case SpendKind::Purchase:
        return tr("purchase");
    case SpendKind::CarriageIn:
        return tr("carriage in");
    case SpendKind::Part:
        return tr("part");
    case SpendKind::Consumable:
        return tr("consumable");
    case SpendKind::OutsideWork:
        return tr("outside work");
    case SpendKind::Overhead:
        return tr("overhead");
    case SpendKind::Packing:
        return tr("packing");
    case SpendKind::CarriageOut:
        return tr("carriage out");
    case SpendKind::SellingFee:
        return tr("selling fee");
    case SpendKind::Sale:
        return tr("sale");
    case SpendKind::Refund:
        return tr("refund");
    case SpendKind::Deposit:
        return tr("deposit");
    case SpendKind::Other:
        return tr("other");
    }
    return {};
}

int LedgerModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int LedgerModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : Columns;
}

QVariant LedgerModel::text(const BookLine &line, int column) const
{
    switch (column) {
    case Day:
        return line.day.isValid() ? shown::day(line.day) : QString();
    case Tag:
        return line.tag > 0 ? tr("%1 %2").arg(tagText(line.tag), line.unit) : tr("the bench");
    case What:
        return line.text;
    case Kind:
        return kindText(line.kind);
    case Out:
        return line.flow == Flow::Out ? shown::money(line.amount) : QString();
    case In:
        return line.flow == Flow::In ? shown::money(line.amount) : QString();
    default:
        return {};
    }
}

QVariant LedgerModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const BookLine &line = m_lines.at(index.row());
    const bool money = index.column() == Out || index.column() == In;
    switch (role) {
    case Qt::DisplayRole:
        return text(line, index.column());
    case SortRole:
        if (index.column() == Day)
            return line.day;
        if (money)
            return (index.column() == Out) == (line.flow == Flow::Out) ? line.amount.minor() : 0;
        return index.column() == Tag ? QVariant(line.tag) : text(line, index.column());
    case YearRole:
        return line.day.year();
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter | (money ? Qt::AlignRight : Qt::AlignLeft));
    case Qt::ForegroundRole:
        return index.column() == In ? QVariant(m_style.ink().within) : index.column() == Kind ? QVariant(m_style.ink().quiet) : QVariant();
    default:
        return {};
    }
}

QVariant LedgerModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == Out || section == In ? Qt::AlignRight : Qt::AlignLeft));
    if (role != Qt::DisplayRole)
        return {};
    switch (section) {
    case Day:
        return tr("Day");
    case Tag:
        return tr("Unit");
    case What:
        return tr("What for");
    case Kind:
        return tr("Kind");
    case Out:
        return tr("Out");
    case In:
        return tr("In");
    default:
        return {};
    }
}

} // namespace ts
