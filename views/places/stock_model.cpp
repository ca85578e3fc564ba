#include "views/places/stock_model.h"

#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/word_text.h"

namespace ts {

StockModel::StockModel(const Style &style, QObject *parent) : QAbstractTableModel(parent), m_style(style) {}

void StockModel::setLines(QList<StockLine> lines)
{
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int StockModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int StockModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : Columns;
}

std::optional<Money> StockModel::sum(const StockLine &line, int column)
{
    switch (column) {
    case Bought:
        return line.bought;
    case Sold:
        return line.sold;
    case Margin:
        return line.margin ? std::optional(line.margin->margin) : std::nullopt;
    case Tax:
        return line.margin ? std::optional(line.margin->tax) : std::nullopt;
    case Costs:
        return line.costs;
    case Left:
        return line.profit;
    default:
        return std::nullopt;
    }
}

QString StockModel::text(const StockLine &line, int column)
{
    if (const auto money = sum(line, column))
        return shown::money(*money);
    switch (column) {
    case Tag:
        return tr("%1 %2").arg(tagText(line.tag), line.name);
    case From:
        return line.from;
    case BoughtOn:
        return shown::day(line.boughtOn);
    case Gone:
        if (!line.goneOn.isValid())
            return tr("in stock");
        return line.to.isEmpty() ? tr("%1, %2").arg(shown::day(line.goneOn), shown::word(line.how)) : tr("%1, %2, %3").arg(shown::day(line.goneOn), shown::word(line.how), line.to);
    default:
        return {};
    }
}

QVariant StockModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const StockLine &line = m_lines.at(index.row());
    const bool money = index.column() == Bought || index.column() >= Sold;
    switch (role) {
    case Qt::DisplayRole:
        return text(line, index.column());
    case SortRole:
        if (index.column() == Tag)
            return line.tag;
        if (index.column() == BoughtOn || index.column() == Gone)
            return index.column() == Gone ? line.goneOn : line.boughtOn;
        if (money)
            return sum(line, index.column()).value_or(Money()).minor();
        return text(line, index.column());
    case Qt::TextAlignmentRole:
        return int(Qt::AlignVCenter | (money ? Qt::AlignRight : Qt::AlignLeft));
    case Qt::ForegroundRole:
        if (index.column() == Left && line.profit)
            return line.profit->minor() < 0 ? m_style.ink().outside : m_style.ink().within;
        return index.column() == Gone && !line.goneOn.isValid() ? QVariant(m_style.ink().quiet) : QVariant();
    default:
        return {};
    }
}

QVariant StockModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    static const char *const titles[]{QT_TR_NOOP("Unit"), QT_TR_NOOP("Bought from"), QT_TR_NOOP("Bought on"), QT_TR_NOOP("Bought for"), QT_TR_NOOP("Gone"), QT_TR_NOOP("Sold for"),
                                      QT_TR_NOOP("Margin"), QT_TR_NOOP("Tax in it"), QT_TR_NOOP("Other costs"), QT_TR_NOOP("Left")};
    if (orientation != Qt::Horizontal)
        return {};
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignVCenter | (section == Bought || section >= Sold ? Qt::AlignRight : Qt::AlignLeft));
    return role == Qt::DisplayRole ? QVariant(tr(titles[section])) : QVariant();
}

} // namespace ts
