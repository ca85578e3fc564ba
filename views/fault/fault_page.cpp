#include "views/fault/fault_page.h"

#include "model/faults/first_power.h"
#include "model/faults/usual_causes.h"
#include "views/fault/fault_rows.h"
#include "views/fault/next_card.h"
#include "views/fault/symptom_choice.h"
#include "views/style/style.h"
#include "views/widgets/ask_line.h"
#include "views/widgets/background.h"
#include "views/widgets/buttons.h"
#include "views/widgets/empty_place.h"
#include "views/widgets/flow_layout.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/page_scroll.h"
#include "views/widgets/pill.h"

#include <QAction>
#include <QBoxLayout>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QStackedWidget>

namespace ts {

FaultPage::FaultPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent), m_background(new Background(this))
{
    m_ask = new AskLine(this);
    auto *none = new EmptyPlace(tr("No symptom is recorded. What was really seen, and under which conditions, is what causes are looked for."), tr("Say what was seen"));
    connect(none, &EmptyPlace::actionWanted, this, &FaultPage::askSymptom);
    auto *boardWidget = new QWidget;
    boardWidget->setObjectName(QStringLiteral("board"));
    makeBoard(boardWidget);
    m_whole = new QStackedWidget(this);
    m_whole->addWidget(new PageScroll(boardWidget, {m_causes, m_checks}));
    m_whole->addWidget(none);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addWidget(m_ask);
    column->addWidget(m_whole, 1);
    makeActions();
}

FaultPage::~FaultPage() = default;

void FaultPage::makeBoard(QWidget *whole)
{
    m_heading = styledLabel("heading", {}, whole);
    m_heading->setWordWrap(true);
    m_which = new QComboBox(whole);
    m_which->setAccessibleName(tr("Symptom"));
    m_which->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_which->setMinimumContentsLength(18);
    m_which->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(m_which, &QComboBox::activated, this, [this](int at) { chooseSymptom(Id<Symptom>{m_which->itemData(at).toUuid()}); });
    m_seen = new Pill({}, Tone::Neutral, whole);
    m_clear = button({}, whole);
    connect(m_clear, &QPushButton::clicked, this, &FaultPage::turnSymptom);
    auto *another = button(tr("Another symptom"), whole);
    connect(another, &QPushButton::clicked, this, &FaultPage::askSymptom);
    auto *usual = button(tr("Bring in usual causes"), whole);
    usual->setToolTip(tr("What the notes on this model, else its category, know of such a symptom, with your own closed units in the weights"));
    connect(usual, &QPushButton::clicked, this, &FaultPage::bringInUsual);
    auto *others = button(tr("From the list…"), whole);
    m_choice = new SymptomChoice(whole);
    connect(m_choice, &SymptomChoice::chosen, this, [this](const FaultOffer &offer) {
        const auto solved = solvedCauses(work().desk(), file().unit);
        bringIn(blended(offer, file().unit, solved ? *solved : QList<SolvedCause>()));
    });
    connect(m_choice, &SymptomChoice::closed, this, [this] { m_causes->setFocus(); });
    others->setToolTip(tr("Choose the symptom whose causes are brought in"));
    connect(others, &QPushButton::clicked, this, [this] { offerOthers(tr("The causes of which of these are to be brought in?")); });

    m_causes = new GridView(work().style(), tr("Possible causes"), causeColumns(), whole);
    m_causes->setCommit([this](const GridRow &row, int column, const QString &typed) { return commitCause(row, column, typed); });
    m_causes->setAddsInARow(true);
    m_causes->setPinned(1, 0);
    m_checks = new GridView(work().style(), tr("Checks"), checkColumns({}), whole);
    m_checks->setCommit([this](const GridRow &row, int column, const QString &typed) { return commitCheck(row, column, typed); });
    m_checks->setAddsInARow(true);
    m_checks->setPinned(2, 1); // what the check is and how it came out; the marks go by between them
    m_next = new NextCard(whole);
    connect(m_next, &NextCard::chosen, this, &FaultPage::takeMove);
    connect(m_next, &NextCard::safetyAnswered, this, &FaultPage::askSafety);
    auto *legend = styledLabel("faint", tr("● would come out abnormal if this were the cause   · no bearing on it"), whole);
    legend->setWordWrap(true);
    m_remarks = styledLabel("faint", {}, whole);
    m_remarks->setWordWrap(true);

    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(m_heading, 1);
    top->addWidget(m_which, 1);
    top->addWidget(m_seen);
    auto *doings = new FlowLayout(gap::small);
    for (QPushButton *each : {m_clear, another, usual, others})
        doings->addWidget(each);
    auto *left = new QVBoxLayout;
    left->setSpacing(gap::small);
    left->addWidget(m_checks);
    left->addWidget(legend);
    left->addWidget(m_remarks);
    left->addStretch(1);
    m_below = new QBoxLayout(QBoxLayout::LeftToRight);
    m_below->setSpacing(gap::normal);
    m_below->addLayout(left, 5);
    m_below->addWidget(m_next, 3);
    auto *column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addLayout(top);
    column->addLayout(doings);
    column->addWidget(m_choice);
    column->addWidget(m_causes);
    column->addLayout(m_below, 1);
}

void FaultPage::makeActions()
{
    m_causes->addRowAction(tr("Take the cause out"), QKeySequence::Delete, [this](const QUuid &key) { removeCause(key); });
    m_checks->addRowAction(tr("Take the check out"), QKeySequence::Delete, [this](const QUuid &key) { removeCheck(key); });
    m_checks->addRowAction(tr("Say more: how sure the mark is, what was seen"), QKeySequence(Qt::CTRL | Qt::Key_E), [this](const QUuid &) { askMore(); });
}

void FaultPage::resizeEvent(QResizeEvent *event)
{
    Page::resizeEvent(event);
    m_below->setDirection(width() < work().style().space(170) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void FaultPage::focusFirst()
{
    m_whole->currentIndex() == 0 ? m_causes->setFocus() : setFocus();
}

void FaultPage::reveal(const QString &kind, const QUuid &record)
{
    if (kind == QLatin1String(Symptom::table))
        return chooseSymptom(Id<Symptom>{record});
    if (const Cause *cause = file().find(Id<Cause>{record})) {
        chooseSymptom(cause->symptom);
        return m_causes->setCurrent(record);
    }
    if (const Check *check = file().find(Id<Check>{record})) {
        chooseSymptom(check->symptom);
        m_checks->setCurrent(record);
    }
}

QString FaultPage::help() const
{
    return tr("Where the fault may lie. Type possible causes and checks in the last rows. Space on a mark says that the check would come out abnormal if that were the cause; Ctrl+E says how "
              "surely, and on “Came out” what was seen. On “Came out”, n, a and u say normal, abnormal and unclear, d not done. On “State”, r rules a cause out and c confirms it, with the reason. The bars show how likely each cause "
              "was before and is now; “Check next” says what saves most minutes. “Bring in usual causes” asks the notes and the category's table; where they know no such symptom, you choose from theirs. Just one cause a symptom is taken to be at work. Unplug and discharge before you touch what can "
              "hurt: local codes and licensed practice come first.");
}

void FaultPage::commitEdits()
{
    m_causes->commitEdit();
    m_checks->commitEdit();
    m_ask->putAway();
}

void FaultPage::refresh()
{
    if (m_of != file().unit.id) {
        m_of = file().unit.id;
        m_symptom = {};
        m_ask->putAway();
        m_choice->putAway();
    }
    m_boards = boardsOf(file(), bench());
    m_whole->setCurrentIndex(m_boards.isEmpty() ? 1 : 0);
    if (m_boards.isEmpty())
        return;
    const auto chosen = std::find_if(m_boards.begin(), m_boards.end(), [this](const FaultBoard &each) { return each.symptom == m_symptom; });
    m_board = chosen == m_boards.end() ? m_boards.first() : *chosen;
    m_symptom = m_board.symptom;
    m_which->clear();
    for (const FaultBoard &each : m_boards)
        m_which->addItem(each.text.isEmpty() ? tr("What stands by itself") : each.cleared ? tr("%1 (cleared)").arg(each.text) : each.text, each.symptom.value);
    m_which->setCurrentIndex(m_which->findData(m_symptom.value));
    m_which->setVisible(m_boards.size() > 1);
    m_heading->setVisible(m_boards.size() == 1);
    showBoard();
}

void FaultPage::chooseSymptom(const Id<Symptom> &symptom)
{
    if (symptom == m_symptom)
        return;
    commitEdits();
    m_choice->putAway();
    m_symptom = symptom;
    refresh();
}

void FaultPage::showBoard()
{
    m_heading->setText(m_board.text.isEmpty() ? tr("What stands by itself") : m_board.text);
    m_seen->show(m_board.cleared ? tr("cleared") : tr("seen %1").arg(shown::day(m_board.seenAt.toLocalTime().date(), work().today())), m_board.cleared ? Tone::Within : Tone::Neutral);
    m_seen->setHidden(m_board.symptom.isNull());
    m_clear->setText(m_board.cleared ? tr("It is back") : tr("It is cleared"));
    m_clear->setAccessibleName(m_clear->text());
    m_clear->setHidden(m_board.symptom.isNull());
    m_causes->setRows(causeRows(m_board));
    m_checks->setColumns(checkColumns(m_board));
    m_checks->setRows(checkRows(m_board));
    m_remarks->setText(m_board.remarks.join(QLatin1Char(' ')));
    m_remarks->setHidden(m_board.remarks.isEmpty());
    workOutNext();
}

// A small board is worked out at once; a large one beside the window, and what comes too late is dropped.
void FaultPage::workOutNext()
{
    const int generation = ++m_generation;
    m_background->forget();
    if (m_board.closed() || m_board.blank())
        return m_next->showNothing(m_board.blank() ? tr("Add a cause or bring in the usual ones, and what to check next is worked out.") : tr("Nothing is left to find out here."));
    const auto rate = bench().hourlyRate();
    const QList<SafetyStep> safety = firstPowerDue(file());
    // Why it must not be powered is said and taken back in the log, not ticked off here.
    const QList<LeftOff> &left = file().all<LeftOff>();
    const bool answers = std::all_of(left.begin(), left.end(), [](const LeftOff &each) { return each.doNotPower.trimmed().isEmpty(); });
    if (m_board.small())
        return m_next->show(checkNext(m_board, rate, safety), answers);
    m_next->showWaiting();
    m_background->run([board = m_board, rate, safety] { return checkNext(board, rate, safety); },
                      [this, generation, answers](const CheckNext &next) {
                          if (generation == m_generation)
                              m_next->show(next, answers);
                      });
}

void FaultPage::takeMove(const NextMove &move)
{
    if (move.kind == MoveKind::Check) {
        m_checks->setFocus();
        m_checks->setCurrent(move.check.value, m_checks->rows().columnCount() - 1);
        m_checks->openChoices(m_checks->currentIndex());
        return;
    }
    m_causes->setFocus();
    m_causes->setCurrent(move.cause.value, static_cast<int>(CauseColumn::State));
}

} // namespace ts
