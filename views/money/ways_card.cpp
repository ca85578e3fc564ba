#include "views/money/ways_card.h"

#include "views/money/figures_list.h"
#include "views/money/money_in_hand.h"
#include "views/money/money_words.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/word_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ts {

WaysCard::WaysCard(Workplace &workplace, QWidget *parent) : Card(tr("From here, not counting what is already spent"), parent), m_work(workplace)
{
    m_due = styledLabel("strong", {}, this);
    m_due->setWordWrap(true);
    m_list = new FiguresList(tr("Ways out from here"), {tr("Way out"), tr("1 in 10"), tr("Middle"), tr("9 in 10"), tr("Hours"), tr("Per hour")}, true, this);
    m_why = styledLabel("plain", {}, this);
    m_why->setWordWrap(true);
    m_because = new QLineEdit(this);
    m_because->setAccessibleName(tr("Why it was decided so"));
    m_because->setPlaceholderText(tr("Because… (left empty: the sentence above)"));
    m_decide = primaryButton(tr("Decide"), this);
    m_decided = styledLabel("quiet", {}, this);
    m_decided->setWordWrap(true);
    auto *row = new QHBoxLayout;
    row->addWidget(m_because, 1);
    row->addWidget(m_decide);
    body()->addWidget(m_due);
    body()->addWidget(m_list);
    body()->addWidget(m_why);
    body()->addLayout(row);
    body()->addWidget(m_decided);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &WaysCard::showChoice);
    connect(m_list, &QTreeWidget::itemActivated, m_because, qOverload<>(&QWidget::setFocus));
    connect(m_because, &QLineEdit::returnPressed, this, &WaysCard::decideNow);
    connect(m_decide, &QPushButton::clicked, this, &WaysCard::decideNow);
}

void WaysCard::focusWays()
{
    m_list->setFocus();
}

void WaysCard::refresh()
{
    const UnitMoney *money = m_work.money().answer();
    setHidden(!money || money->ways.ways.isEmpty());
    if (!money || money->ways.ways.isEmpty())
        return;
    if (m_of != m_work.file().unit.id) {
        m_of = m_work.file().unit.id;
        m_because->clear();
        m_list->clear();
    }
    setRemark(m_work.money().isTrial() ? tr("as you type, not recorded") : QString());
    const WaysOut &ways = money->ways;
    m_due->setVisible(ways.due.has_value());
    if (ways.due)
        m_due->setText(tr("Worth a look: %1.").arg(shown::asked(*ways.due)));
    showWays(ways);
    m_why->setText(QStringList{ways.why, ways.whenItChanges}.join(QLatin1Char(' ')).trimmed());
    showDecided();
    showChoice();
}

void WaysCard::showWays(const WaysOut &ways)
{
    const Ink &ink = m_work.style().ink();
    m_list->begin();
    const bool nothingChosen = m_list->currentKey().isEmpty();
    for (const WayFigures &way : ways.ways) {
        const QString name = shown::way(way.way);
        if (!way.open) {
            auto *row = m_list->addRow(toWord(way.way), {tr("%1: %2").arg(name, way.why)});
            row->setFirstColumnSpanned(true);
            row->setForeground(0, ink.quiet);
            row->setToolTip(0, way.why.toHtmlEscaped());
            continue;
        }
        const bool free = way.minutes == 0;
        auto *row = m_list->addRow(toWord(way.way), {name, shown::moneyRound(way.low), shown::moneyRound(way.middle), shown::moneyRound(way.high),
                                                     free ? tr("none") : shown::duration(way.minutes), way.perHour ? shown::moneyRound(*way.perHour) : QStringLiteral("–")});
        const bool leads = ways.leads == way.way;
        for (int column = 0; column < 6; ++column) {
            row->setToolTip(column, way.why.toHtmlEscaped());
            if (leads && (column == 0 || column == 2))
                row->setFont(column, m_work.style().text(1, QFont::DemiBold));
            if (leads)
                row->setBackground(column, ink.withinPaper);
        }
        if (leads)
            row->setData(0, Qt::AccessibleTextRole, tr("%1, leads").arg(name));
    }
    m_list->end();
    if (m_list->currentKey().isEmpty() && nothingChosen && ways.leads)
        m_list->makeCurrent(toWord(*ways.leads));
}

std::optional<WayOut> WaysCard::chosen() const
{
    const auto way = parseWord<WayOut>(m_list->currentKey(), QStringLiteral("way out"));
    return way ? std::optional(*way) : std::nullopt;
}

void WaysCard::showChoice()
{
    const UnitMoney *money = m_work.money().answer();
    const auto way = chosen();
    const WayFigures *figures = money && way ? money->ways.of(*way) : nullptr;
    m_decide->setText(way ? tr("Decide: %1").arg(shown::word(*way)) : tr("Decide"));
    m_decide->setAccessibleName(m_decide->text());
    m_decide->setEnabled(figures && figures->open && !m_work.money().isTrial());
    m_decide->setToolTip(figures && !figures->open ? figures->why.toHtmlEscaped() : tr("Kept in the log with these figures").toHtmlEscaped());
}

void WaysCard::showDecided()
{
    const QList<Decision> &made = m_work.file().all<Decision>();
    m_decided->setHidden(made.isEmpty());
    if (!made.isEmpty())
        m_decided->setText(tr("Decided %1: %2. %3").arg(shown::dayAndTime(made.last().at), shown::word(made.last().way), made.last().reason));
}

void WaysCard::decideNow()
{
    const UnitMoney *money = m_work.money().answer();
    const auto way = chosen();
    const WayFigures *figures = money && way ? money->ways.of(*way) : nullptr;
    if (!figures || !m_work.money().question() || m_work.money().question()->file.unit.id != m_work.file().unit.id)
        return;
    if (!m_work.money().isFresh() || m_work.money().isTrial())
        return m_work.refuse(tr("The figures are being worked out anew; decide when they stand."));
    if (!figures->open)
        return m_work.refuse(figures->why);
    Maker maker = m_work.maker();
    if (m_work.record(decide(*m_work.money().question(), money->ways, *way, m_because->text(), money->sheet.hours.minutes(), maker)))
        m_because->clear();
}

} // namespace ts
