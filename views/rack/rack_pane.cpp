#include "views/rack/rack_pane.h"

#include "views/rack/rack_model.h"
#include "views/rack/rack_view.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QActionGroup>
#include <QDataStream>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QScrollBar>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

namespace ts {

namespace {
constexpr int restMs = 150; // after the last key
}

RackPane::RackPane(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("rackPane"));
    setMinimumWidth(210);
    m_filter = new QLineEdit(this);
    m_filter->setPlaceholderText(tr("Narrow this list…"));
    m_filter->setAccessibleName(tr("Narrow the rack"));
    m_filter->setClearButtonEnabled(true);
    m_filter->installEventFilter(this);
    m_typed = new QTimer(this);
    m_typed->setSingleShot(true);
    m_typed->setInterval(restMs);
    m_sort = new QToolButton(this);
    m_model = new RackModel(m_work.desk(), this);
    makeSorts();
    m_view = new RackView(*m_model, m_work.style(), this);
    m_none = styledLabel("quiet", {}, this);
    m_none->setWordWrap(true);
    m_none->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
    m_none->setContentsMargins(gap::small, gap::wide, gap::small, 0);
    m_none->hide();
    auto *top = new QHBoxLayout;
    top->setSpacing(gap::tight);
    top->addWidget(m_filter, 1);
    top->addWidget(m_sort);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::small, gap::small, 2, 0);
    top->setContentsMargins(0, 0, gap::small - 2, 0);
    column->setSpacing(2);
    column->addLayout(top);
    column->addWidget(m_none);
    column->addWidget(m_view, 1);
    connect(m_filter, &QLineEdit::textChanged, m_typed, qOverload<>(&QTimer::start));
    connect(m_typed, &QTimer::timeout, this, &RackPane::narrow);
    connect(m_view, &RackView::chosen, this, &RackPane::choose);
    connect(m_view, &RackView::entered, this, &RackPane::enter);
    connect(m_view, &RackView::typed, this, [this](const QString &typed) {
        m_filter->setFocus();
        m_filter->setText(typed);
    });
    connect(m_model, &RackModel::troubled, &m_work, [this](const QString &sentence) { m_work.refuse(sentence); });
    connect(&m_work, &Workplace::rackChanged, this, &RackPane::refresh);
    connect(&m_work, &Workplace::unitTaken, this, [this] { follow(true); });
    const auto icon = [this] { m_sort->setIcon(m_work.style().icon(QStringLiteral("view-sort"))); };
    connect(&m_work.style(), &Style::changed, this, icon);
    icon();
    m_model->reload();
    sayCount();
}

void RackPane::makeSorts()
{
    auto *menu = new QMenu(m_sort);
    auto *group = new QActionGroup(menu);
    const auto add = [&](RackSort sort, const QString &name) {
        QAction *action = menu->addAction(name);
        action->setCheckable(true);
        action->setActionGroup(group);
        action->setChecked(m_model->sort() == sort);
        connect(action, &QAction::triggered, this, [this, sort] { keepSight([this, sort] { m_model->setSort(sort); }); });
        connect(menu, &QMenu::aboutToShow, action, [this, action, sort] { action->setChecked(m_model->sort() == sort); });
    };
    add(RackSort::MovedLast, tr("&Moved last on top"));
    add(RackSort::WaitingLongest, tr("&Waiting longest on top"));
    add(RackSort::DueFirst, tr("&Due first on top"));
    add(RackSort::ByTag, tr("By &tag, newest on top"));
    add(RackSort::ByName, tr("By &name"));
    m_sort->setMenu(menu);
    m_sort->setPopupMode(QToolButton::InstantPopup);
    m_sort->setFocusPolicy(Qt::TabFocus);
    m_sort->setToolTip(tr("Order within a stage"));
    m_sort->setAccessibleName(tr("Order within a stage"));
}

// Whatever becomes of the list, what is in sight stays there as far as it can.
void RackPane::keepSight(const std::function<void()> &change)
{
    const int top = m_view->topRow();
    const QUuid unit = top < 0 ? QUuid() : m_model->index(top).data(RackModel::UnitId).toUuid();
    const int offset = top < 0 ? 0 : m_view->visualRect(m_model->index(top)).top();
    const int value = m_view->verticalScrollBar()->value();
    change();
    const int row = m_model->rowOf(unit);
    m_view->verticalScrollBar()->setValue(value);
    if (row >= 0) {
        m_view->scrollTo(m_model->index(row), QAbstractItemView::PositionAtTop);
        const QRect now = m_view->visualRect(m_model->index(row));
        m_view->verticalScrollBar()->setValue(m_view->verticalScrollBar()->value() + now.top() - offset);
    }
    follow(false);
    sayCount();
}

void RackPane::refresh()
{
    const int value = m_view->verticalScrollBar()->value();
    const bool went = m_work.hasUnit() && m_model->inHandAt() != m_work.file().unit.stage;
    m_model->setInHand(m_work.file().unit.id, m_work.file().unit.stage);
    m_model->refresh();
    m_view->verticalScrollBar()->setValue(value);
    follow(went); // what was moved is seen where it hangs now; any other change moves nothing
    sayCount();
}

void RackPane::narrow()
{
    m_typed->stop();
    if (m_filter->text().simplified() == m_model->words())
        return;
    m_model->setWords(m_filter->text());
    m_view->verticalScrollBar()->setValue(0);
    follow(false);
    sayCount();
}

void RackPane::sayCount()
{
    const bool narrowed = !m_model->words().isEmpty();
    m_none->setVisible(m_model->units() == 0);
    m_none->setText(narrowed ? tr("No unit has “%1” in its tag, its name or an open symptom.").arg(m_model->words())
                             : tr("The rack is empty. Each unit that you take in hangs here as a tag."));
    m_filter->setToolTip(narrowed ? tr("%1 found").arg(shown::count(m_model->units())) : QString());
}

void RackPane::follow(bool bringIntoSight)
{
    const QUuid unit = m_work.file().unit.id.value;
    m_model->setInHand(m_work.file().unit.id, m_work.file().unit.stage);
    m_view->setInHand(unit);
    const int row = m_model->rowOf(unit);
    if (row < 0)
        return; // narrowed away: the mark stays where the keyboard is
    m_view->mark(row);
    if (bringIntoSight)
        m_view->scrollTo(m_model->index(row));
}

void RackPane::choose(const QModelIndex &index)
{
    if (m_model->isHeading(index.row())) {
        enter(index);
        return;
    }
    m_work.takeInHand(Id<Unit>{index.data(RackModel::UnitId).toUuid()});
}

void RackPane::enter(const QModelIndex &index)
{
    if (m_model->isHeading(index.row())) {
        const auto stage = static_cast<Stage>(index.data(RackModel::StageOf).toInt());
        const bool folded = index.data(RackModel::Folded).toBool();
        keepSight([&] { m_model->setFolded(stage, !folded); });
        for (const int row : m_model->headings())
            if (m_model->index(row).data(RackModel::StageOf).toInt() == static_cast<int>(stage))
                m_view->mark(row);
        return;
    }
    choose(index);
    Q_EMIT openWanted();
}

void RackPane::step(int by)
{
    const int from = m_model->rowOf(m_work.file().unit.id.value);
    const int row = m_view->tagFrom(from < 0 ? (by > 0 ? 0 : m_model->rowCount() - 1) : from + by, by);
    if (row >= 0)
        choose(m_model->index(row));
}

void RackPane::focusFilter()
{
    m_filter->setFocus();
    m_filter->selectAll();
}

void RackPane::takeFirst()
{
    const int row = m_work.hasUnit() ? -1 : m_view->tagFrom(0, 1);
    if (row >= 0)
        choose(m_model->index(row));
}

// From the field: down goes into the list, Enter takes the first that matches, Escape shows all again.
bool RackPane::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_filter || event->type() != QEvent::KeyPress)
        return QFrame::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent *>(event)->key();
    const bool enter = key == Qt::Key_Return || key == Qt::Key_Enter;
    if (enter || key == Qt::Key_Down) {
        narrow();
        // A whole tag is that unit, whatever else has the same figures in it.
        bool figures = false;
        const int tag = m_filter->text().trimmed().toInt(&figures);
        const auto named = figures && enter ? m_work.desk().unitByTag(tag) : Expected<Id<Unit>>(Id<Unit>());
        const int exact = named ? m_model->rowOf(named->value) : -1;
        const int row = exact >= 0 ? exact : m_view->tagFrom(0, 1);
        if (row >= 0) {
            choose(m_model->index(row));
            m_view->setFocus();
        }
        return true;
    }
    if (key == Qt::Key_Escape) {
        if (m_filter->text().isEmpty())
            m_view->setFocus();
        m_filter->clear();
        narrow();
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

QByteArray RackPane::state() const
{
    QByteArray state;
    QDataStream out(&state, QIODevice::WriteOnly);
    QList<qint32> folded;
    for (const Stage stage : m_model->folded())
        folded << static_cast<qint32>(stage);
    out << static_cast<qint32>(m_model->sort()) << folded;
    return state;
}

void RackPane::restore(const QByteArray &state)
{
    QDataStream in(state);
    qint32 sort = 0;
    QList<qint32> folded;
    in >> sort >> folded;
    if (in.status() != QDataStream::Ok || sort < 0 || sort > static_cast<qint32>(RackSort::DueFirst))
        return;
    QSet<Stage> stages;
    for (const qint32 stage : folded)
        if (stage >= 0 && stage <= static_cast<qint32>(Stage::Closed))
            stages << static_cast<Stage>(stage);
    m_model->setFolding(stages, static_cast<RackSort>(sort));
    follow(true);
}

} // namespace ts
