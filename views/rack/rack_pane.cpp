#include "views/rack/rack_pane.h"

#include "views/rack/rack_model.h"
#include "views/style/style.h"

#include <QLineEdit>
#include <QListView>
#include <QVBoxLayout>

namespace ts {

RackPane::RackPane(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("rackPane"));
    setMinimumWidth(210);
    m_filter = new QLineEdit(this);
    m_filter->setPlaceholderText(tr("Narrow this list…"));
    m_filter->setAccessibleName(tr("Narrow the rack"));
    m_filter->setClearButtonEnabled(true);
    m_model = new RackModel(m_work.desk(), this);
    m_view = new QListView(this);
    m_view->setObjectName(QStringLiteral("rack"));
    m_view->setModel(m_model);
    m_view->setUniformItemSizes(true);
    m_view->setAccessibleName(tr("Rack of units"));
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::small, gap::small, gap::small, 0);
    column->addWidget(m_filter);
    column->addWidget(m_view, 1);
    connect(m_view->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &current) {
        if (current.isValid())
            m_work.takeInHand(Id<Unit>{current.data(RackModel::UnitId).toUuid()});
    });
    connect(m_model, &RackModel::troubled, &m_work, [this](const QString &sentence) { m_work.refuse(sentence); });
    connect(&m_work, &Workplace::rackChanged, this, &RackPane::reload);
    connect(&m_work, &Workplace::unitTaken, this, &RackPane::follow);
    reload();
}

void RackPane::reload()
{
    m_model->reload();
    follow();
}

void RackPane::follow()
{
    const int row = m_model->rowOf(m_work.file().unit.id.value);
    if (row != m_view->currentIndex().row())
        m_view->setCurrentIndex(m_model->index(row));
}

void RackPane::step(int by)
{
    const QModelIndex next = m_model->index(m_view->currentIndex().row() + by);
    if (next.isValid())
        m_view->setCurrentIndex(next);
}

void RackPane::focusFilter()
{
    m_filter->setFocus();
}

void RackPane::takeFirst()
{
    if (!m_work.hasUnit() && m_model->rowCount() > 0)
        m_view->setCurrentIndex(m_model->index(0));
}

} // namespace ts
