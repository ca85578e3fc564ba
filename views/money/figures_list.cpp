#include "views/money/figures_list.h"

#include <QEvent>
#include <QHeaderView>

namespace ts {

FiguresList::FiguresList(const QString &name, const QStringList &columns, bool choosing, QWidget *parent) : QTreeWidget(parent)
{
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setTabKeyNavigation(false);
    setAccessibleName(name);
    setHeaderLabels(columns);
    setColumnCount(static_cast<int>(columns.size()));
    for (int column = 1; column < columns.size(); ++column)
        headerItem()->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    header()->setStretchLastSection(false);
    header()->setSectionsClickable(false);
    header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setTextElideMode(Qt::ElideRight);
    if (!choosing) {
        setSelectionMode(QAbstractItemView::NoSelection);
        setFocusPolicy(Qt::NoFocus);
    }
}

void FiguresList::begin()
{
    m_kept = currentKey();
    clear();
}

QTreeWidgetItem *FiguresList::addRow(const QString &key, const QStringList &cells)
{
    auto *item = new QTreeWidgetItem(cells);
    item->setData(0, Qt::UserRole, key);
    for (int column = 1; column < columnCount(); ++column)
        item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
    addTopLevelItem(item);
    return item;
}

void FiguresList::end()
{
    if (!m_kept.isEmpty())
        makeCurrent(m_kept);
    updateGeometry();
}

QString FiguresList::currentKey() const
{
    return currentItem() ? currentItem()->data(0, Qt::UserRole).toString() : QString();
}

void FiguresList::makeCurrent(const QString &key)
{
    for (int row = 0; row < topLevelItemCount(); ++row)
        if (topLevelItem(row)->data(0, Qt::UserRole).toString() == key)
            return setCurrentItem(topLevelItem(row));
}

QSize FiguresList::sizeHint() const
{
    const int row = topLevelItemCount() > 0 ? sizeHintForRow(0) : fontMetrics().height();
    const int head = isHeaderHidden() ? 0 : header()->sizeHint().height();
    return {fontMetrics().averageCharWidth() * 40, head + row * topLevelItemCount() + 2 * frameWidth() + 4};
}

QSize FiguresList::minimumSizeHint() const
{
    return {fontMetrics().averageCharWidth() * 20, sizeHint().height()};
}

void FiguresList::changeEvent(QEvent *event)
{
    QTreeWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        updateGeometry();
}

} // namespace ts
