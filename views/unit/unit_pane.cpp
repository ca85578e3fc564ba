#include "views/unit/unit_pane.h"

#include "model/sums/standing.h"
#include "views/details/details_page.h"
#include "views/fault/fault_page.h"
#include "views/handover/handover_page.h"
#include "views/log/log_page.h"
#include "views/money/money_page.h"
#include "views/parts/parts_page.h"
#include "views/proving/proving_page.h"
#include "views/readings/readings_page.h"
#include "views/standing/standing_pane.h"
#include "views/style/style.h"
#include "views/teardown/teardown_page.h"
#include "views/unit/page_tabs.h"
#include "views/unit/stage_panel.h"
#include "views/unit/unit_head.h"
#include "views/widgets/empty_place.h"

#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ts {

QString UnitPane::pageName(PageKey key)
{
    switch (key) {
    case PageKey::Log:
        return tr("Log");
    case PageKey::FaultFinding:
        return tr("Fault-finding");
    case PageKey::Readings:
        return tr("Readings");
    case PageKey::Teardown:
        return tr("Teardown");
    case PageKey::Parts:
        return tr("Parts");
    case PageKey::Proving:
        return tr("Proving");
    case PageKey::Money:
        return tr("Money");
    case PageKey::Handover:
        return tr("Handover");
    case PageKey::Details:
        return tr("Details");
    }
    return {};
}

UnitPane::UnitPane(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    auto *unit = new QWidget;
    auto *top = new QFrame(unit);
    top->setObjectName(QStringLiteral("unitHead"));
    m_head = new UnitHead(workplace, top);
    m_tabs = new PageTabs(workplace.style(), top);
    auto *heads = new QVBoxLayout(top);
    heads->setContentsMargins(0, 0, 0, 0);
    heads->setSpacing(0);
    heads->addWidget(m_head);
    auto *tabRow = new QHBoxLayout;
    tabRow->setContentsMargins(gap::wide, 0, gap::wide, 0);
    tabRow->addWidget(m_tabs, 1);
    heads->addLayout(tabRow);

    m_stack = new QStackedWidget(unit);
    m_standing = new StandingPane(workplace);
    m_panes = new QSplitter(unit);
    m_panes->addWidget(m_stack);
    m_panes->addWidget(m_standing);
    m_panes->setStretchFactor(0, 1);
    m_panes->setStretchFactor(1, 0);
    m_panes->setChildrenCollapsible(false);
    m_panes->setSizes({860, 290});
    auto *details = new DetailsPage(workplace);
    // In the order of PageKey.
    m_pages = {new LogPage(workplace),   new FaultPage(workplace),   new ReadingsPage(workplace), new TeardownPage(workplace),
               new PartsPage(workplace), new ProvingPage(workplace), new MoneyPage(workplace),    new HandoverPage(workplace),
               details};
    for (int i = 0; i < m_pages.size(); ++i) {
        m_stack->addWidget(m_pages.at(i));
        if (m_pages.at(i) != details) // which are opened from the head
            m_tabs->addTab(pageName(static_cast<PageKey>(i)));
    }
    auto *column = new QVBoxLayout(unit);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(top);
    column->addWidget(m_panes, 1);

    auto *none = new EmptyPlace(tr("No unit is in hand. Choose a tag on the left, or take in the first one: a name and a category are enough."),
                                tr("Take in a unit"));
    connect(none, &EmptyPlace::actionWanted, this, &UnitPane::takeInWanted);
    m_whole = new QStackedWidget;
    m_whole->addWidget(unit);
    m_whole->addWidget(none);
    auto *all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(m_whole);

    connect(m_tabs, &QTabBar::currentChanged, this, &UnitPane::pageShown);
    connect(m_tabs, &QTabBar::tabBarClicked, this, [this](int index) {
        if (index == m_tabs->currentIndex() && currentPage() == PageKey::Details)
            pageShown(index);
    });
    connect(m_head, &UnitHead::detailsWanted, this, &UnitPane::toggleDetails);
    connect(details, &DetailsPage::left, this, &UnitPane::toggleDetails);
    connect(&m_work, &Workplace::unitChanged, this, &UnitPane::refreshHead);
    connect(&m_work, &Workplace::pageWanted, this, [this](PageKey key, const QString &kind, const QUuid &record) {
        showPage(key);
        if (!record.isNull())
            page(key)->reveal(kind, record);
    });
    connect(static_cast<LogPage *>(page(PageKey::Log)), &LogPage::photoWanted, &m_work, &Workplace::showPhoto);
    pageShown(0);
    refreshHead();
}

void UnitPane::showPage(PageKey key)
{
    if (key != PageKey::Details)
        m_tabs->setCurrentIndex(static_cast<int>(key));
    if (currentPage() != key)
        pageShown(static_cast<int>(key));
    page(key)->focusFirst();
}

void UnitPane::toggleDetails()
{
    if (!m_work.hasUnit())
        return;
    showPage(currentPage() == PageKey::Details ? static_cast<PageKey>(m_tabs->currentIndex()) : PageKey::Details);
}

void UnitPane::askStage(Stage stage)
{
    if (m_work.hasUnit())
        m_head->panel()->ask(stage);
}

PageKey UnitPane::currentPage() const
{
    return static_cast<PageKey>(m_stack->currentIndex());
}

void UnitPane::pageShown(int index)
{
    if (auto *before = qobject_cast<Page *>(m_stack->currentWidget()))
        before->commitEdits();
    m_stack->setCurrentIndex(index);
    m_tabs->setAside(currentPage() == PageKey::Details);
    m_standing->setVisible(m_pages.at(index)->showsStanding());
    // Typing goes to the page that was opened; but who goes through the tabs by the arrow keys stays on them.
    if (!m_tabs->hasFocus())
        m_pages.at(index)->focusFirst();
}

void UnitPane::refreshHead()
{
    m_whole->setCurrentIndex(m_work.hasUnit() ? 0 : 1);
    if (!m_work.hasUnit())
        return;
    const Standing stand = standing(m_work.file(), m_work.bench());
    const auto failed = std::count_if(m_work.file().all<Proof>().begin(), m_work.file().all<Proof>().end(),
                                      [](const Proof &proof) { return proof.cameOut == ProofOutcome::Failed; });
    const auto badge = [this](PageKey key, qsizetype count, Tone tone) { m_tabs->setBadge(static_cast<int>(key), static_cast<int>(count), tone); };
    badge(PageKey::FaultFinding, stand.openSymptoms.size(), Tone::Neutral);
    badge(PageKey::Readings, stand.outside.size(), Tone::Outside);
    badge(PageKey::Teardown, stand.loose.size(), Tone::Neutral);
    badge(PageKey::Parts, stand.awaited.size(), Tone::Neutral);
    badge(PageKey::Proving, failed, Tone::Outside);
}

} // namespace ts
