#include "views/frame/workspace.h"

#include "views/clock/clock_box.h"
#include "views/frame/strip.h"
#include "views/frame/help_card.h"
#include "views/photos/photo_desk.h"
#include "views/photos/photo_tray.h"
#include "views/places/place.h"
#include "views/places/places.h"
#include "views/rack/rack_pane.h"
#include "views/take_in/take_in_page.h"
#include "views/unit/unit_pane.h"
#include "views/standing/leaving_bar.h"
#include "views/widgets/answers_bar.h"
#include "views/widgets/notice_bar.h"

#include <QDataStream>
#include <QPointer>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

namespace ts {

namespace {
constexpr int takeInPlace = -1; // among the places' widgets, beside the keys
constexpr int pollEveryMs = 700;
}

Workspace::Workspace(Desk &desk, Style &style, LongWork::OpenDesk again, QWidget *parent) : QWidget(parent), m_work(desk, style)
{
    m_work.setAgain(again);
    if (!again)
        again = [] { return Trouble{tr("Nothing was done"), tr("this window cannot open the workbook a second time"), {}}; };
    m_longWork = new LongWork(std::move(again), this);
    build();
    connect(&m_work, &Workplace::workWanted, this, [this](const QString &what, const LongWork::Job &job) {
        if (!m_longWork->start(what, job))
            m_work.refuse(tr("Something else is being done; wait for it, or stop it first."));
    });
    connect(m_longWork, &LongWork::done, this, [this](const QString &sentence) {
        m_work.poll();
        m_work.say(sentence);
    });
    connect(m_longWork, &LongWork::refused, &m_work, [this](const QString &sentence) { m_work.refuse(sentence); });
    auto *poll = new QTimer(this);
    connect(poll, &QTimer::timeout, &m_work, &Workplace::poll);
    poll->start(pollEveryMs);
    m_rackPane->takeFirst();
}

void Workspace::build()
{
    m_strip = new Strip(m_work, this);
    m_notice = new NoticeBar(this);
    m_said = new SaidLine(this);
    m_photos = new PhotoDesk(m_work, this);
    m_said->addAtRight(m_photos->progress());
    m_said->addAtRight(m_longWork);
    m_help = new HelpCard(this);
    connect(&m_work, &Workplace::refused, m_notice, &NoticeBar::refuse);
    connect(&m_work, &Workplace::said, m_said, &SaidLine::say);
    connect(&m_work, &Workplace::said, m_notice, [this](const QString &, bool undoable) {
        if (undoable)
            m_notice->settle();
    });
    connect(m_said, &SaidLine::undoWanted, &m_work, &Workplace::undo);
    m_rackPane = new RackPane(m_work);
    m_unitPane = new UnitPane(m_work);
    m_panes = new QSplitter(this);
    m_panes->addWidget(m_rackPane);
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_unitPane);
    m_panes->addWidget(m_stack);
    m_panes->setStretchFactor(0, 0);
    m_panes->setStretchFactor(1, 1);
    m_panes->setChildrenCollapsible(false);
    m_panes->setSizes({292, 1148});
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_strip);
    column->addWidget(m_notice);
    column->addWidget(clock()->question());
    m_leaving = new LeavingBar(m_work, clock()->clock(), this);
    column->addWidget(m_leaving->bar());
    column->addWidget(m_panes, 1);
    column->addWidget(m_photos->tray());
    column->addWidget(m_said);
    connect(m_strip, &Strip::takeInWanted, this, &Workspace::takeIn);
    connect(m_unitPane, &UnitPane::takeInWanted, this, &Workspace::takeIn);
    connect(m_rackPane, &RackPane::openWanted, m_unitPane, [this] { m_unitPane->showPage(m_unitPane->currentPage()); });
    connect(&m_work, &Workplace::placeWanted, this, &Workspace::showPlace);
    // Another tag in hand is looked at, whatever place was shown.
    connect(&m_work, &Workplace::unitTaken, this, [this] { showPlace(PlaceKey::Units); });
}

Workspace::~Workspace()
{
    // What is being typed is kept while everything is still there. Then all that is shown goes before the workplace that it works
    // with: a member goes before the children of its class do.
    if (QWidget *at = focusWidget())
        at->clearFocus();
    QList<QPointer<QObject>> shown;
    for (QObject *child : children())
        shown << child;
    for (const QPointer<QObject> &child : shown)
        delete child.data();
}

bool Workspace::mayClose(std::function<void()> close)
{
    commitEdits();
    return m_leaving->mayClose(std::move(close));
}

ClockBox *Workspace::clock() const
{
    return m_strip->findChild<ClockBox *>();
}

QWidget *Workspace::placeWidget(PlaceKey place)
{
    if (place == PlaceKey::Units)
        return m_unitPane;
    QWidget *&widget = m_places[static_cast<int>(place)];
    if (!widget) {
        widget = makePlace(place, m_work);
        m_stack->addWidget(widget);
    }
    return widget;
}

void Workspace::showPlace(PlaceKey place)
{
    m_place = place;
    QWidget *widget = placeWidget(place);
    m_stack->setCurrentWidget(widget);
    m_strip->showPlace(place);
    if (auto *beside = qobject_cast<Place *>(widget))
        beside->focusFirst();
}

void Workspace::takeIn()
{
    QWidget *&widget = m_places[takeInPlace];
    if (!widget) {
        auto *page = new TakeInPage(m_work);
        connect(page, &TakeInPage::done, this, [this] { showPlace(PlaceKey::Units); });
        connect(page, &TakeInPage::photosGiven, &m_photos->intake(), &PhotoIntake::take);
        connect(page, &TakeInPage::photoFilesWanted, m_photos, &PhotoDesk::chooseFiles);
        m_photos->setFirst([this, page](const QList<PhotoSource> &photos) {
            if (m_stack->currentWidget() == page)
                page->addPhotos(photos);
            return m_stack->currentWidget() == page;
        });
        widget = page;
        m_stack->addWidget(widget);
    }
    m_stack->setCurrentWidget(widget);
    static_cast<TakeInPage *>(widget)->begin();
}

void Workspace::commitEdits()
{
    m_unitPane->page(m_unitPane->currentPage())->commitEdits();
    if (auto *beside = qobject_cast<Place *>(m_stack->currentWidget()))
        beside->commitEdits();
    m_photos->settle();
}

void Workspace::explain()
{
    const auto *beside = qobject_cast<Place *>(m_stack->currentWidget());
    const QString help = beside ? beside->help() : m_unitPane->page(m_unitPane->currentPage())->help();
    const QString name = beside ? Strip::placeName(m_place) : UnitPane::pageName(m_unitPane->currentPage());
    m_help->explain(name, help);
}

QByteArray Workspace::layoutState() const
{
    QByteArray state;
    QDataStream out(&state, QIODevice::WriteOnly);
    out << m_panes->saveState() << m_unitPane->panes()->saveState() << m_rackPane->state();
    for (int i = 0; i <= static_cast<int>(PageKey::Handover); ++i)
        out << m_unitPane->page(static_cast<PageKey>(i))->keptState();
    return state;
}

void Workspace::restoreLayout(const QByteArray &state)
{
    QDataStream in(state);
    QByteArray whole, unit, rack;
    in >> whole >> unit >> rack;
    if (in.status() != QDataStream::Ok)
        return;
    m_panes->restoreState(whole);
    m_unitPane->panes()->restoreState(unit);
    m_rackPane->restore(rack);
    for (int i = 0; i <= static_cast<int>(PageKey::Handover) && !in.atEnd(); ++i) {
        QByteArray page;
        in >> page;
        m_unitPane->page(static_cast<PageKey>(i))->restoreState(page);
    }
}

} // namespace ts
