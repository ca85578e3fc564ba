#include "views/fault/next_card.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/pill.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace ts {

namespace {

constexpr int most = 3; // moves shown: what comes after is rarely looked at

} // namespace

NextCard::NextCard(QWidget *parent) : Card(tr("Check next"), parent)
{
    body()->addWidget(wrappedLabel("quiet", tr("Ranked by minutes saved on the way to the repair"), this));
    m_moves = new QVBoxLayout;
    m_moves->setSpacing(gap::small);
    body()->addLayout(m_moves);
    m_below = wrappedLabel("faint", {}, this);
    body()->addWidget(m_below);
    body()->addStretch(1);
}

void NextCard::clear()
{
    m_shown.clear();
    while (QLayoutItem *item = m_moves->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
}

void NextCard::showWaiting()
{
    clear();
    m_below->setText(tr("Being worked out…"));
}

void NextCard::showNothing(const QString &why)
{
    clear();
    m_below->setText(why);
}

void NextCard::show(const CheckNext &next, bool answers)
{
    clear();
    QList<NextMove> steps;
    QList<NextMove> moves;
    for (const NextMove &move : next.moves)
        (move.kind == MoveKind::Safety ? steps : moves) << move;
    if (!steps.isEmpty())
        m_moves->addWidget(safetyCard(steps, answers));
    for (qsizetype i = 0; i < std::min<qsizetype>(most, moves.size()); ++i)
        m_moves->addWidget(moveCard(moves.at(i), i == 0 && steps.isEmpty()));
    QStringList below = next.basis;
    if (next.expectedMinutes > 0)
        below.prepend(tr("Going by this: %1 to a working unit on average; straight repairs: %2.")
                          .arg(shown::duration(std::llround(next.expectedMinutes)), shown::duration(std::llround(next.repairsOnlyMinutes))));
    if (!next.exact)
        below << tr("No way takes less than %1 on average.").arg(shown::duration(std::llround(next.atLeastMinutes)));
    m_below->setText(below.join(QLatin1Char(' ')));
}

QWidget *NextCard::moveCard(const NextMove &move, bool first)
{
    auto *card = new QFrame(this);
    card->setObjectName(QStringLiteral("card"));
    if (first)
        card->setProperty("tone", QStringLiteral("current"));
    auto *column = new QVBoxLayout(card);
    column->setContentsMargins(gap::normal, gap::small, gap::normal, gap::small);
    column->setSpacing(gap::tight);
    auto *head = new QHBoxLayout;
    head->addWidget(wrappedLabel("strong", move.text, card), 1);
    QString pill;
    if (move.savesMinutes && *move.savesMinutes >= 0.5)
        pill = tr("saves %1 min").arg(shown::count(std::llround(*move.savesMinutes)));
    else if (move.minutes > 0)
        pill = tr("%1 min").arg(shown::count(std::llround(move.minutes)));
    if (!pill.isEmpty())
        head->addWidget(new Pill(pill, first ? Tone::Hint : Tone::Neutral, card), 0, Qt::AlignTop);
    column->addLayout(head);
    if (!move.leavesText.isEmpty())
        column->addWidget(wrappedLabel("quiet", move.leavesText, card));
    auto *go = wordButton(move.kind == MoveKind::Check ? tr("Say how it came out") : tr("Go to the cause"), card);
    go->setProperty("flush", true); // its words begin where those above it do
    go->setAccessibleName(tr("%1: %2").arg(go->text(), move.text));
    connect(go, &QPushButton::clicked, this, [this, move] { Q_EMIT chosen(move); });
    column->addWidget(go, 0, Qt::AlignLeft);
    m_shown << move.text;
    return card;
}

// Before a unit is powered for the first time; what can hurt comes before what saves minutes.
QWidget *NextCard::safetyCard(const QList<NextMove> &steps, bool answers)
{
    const NextMove &step = steps.first();
    auto *card = new QFrame(this);
    card->setObjectName(QStringLiteral("card"));
    card->setProperty("tone", QStringLiteral("outside"));
    auto *column = new QVBoxLayout(card);
    column->setContentsMargins(gap::normal, gap::small, gap::normal, gap::small);
    column->setSpacing(gap::tight);
    column->addWidget(wrappedLabel("warning", steps.size() > 1 ? tr("Before anything is measured under power, %n steps:", nullptr, static_cast<int>(steps.size())) : tr("Before anything is measured under power:"), card));
    column->addWidget(wrappedLabel("strong", step.text, card));
    column->addWidget(wrappedLabel("quiet", tr("Unplugged, discharged, and never alone. Local codes and licensed practice come first."), card));
    if (answers) {
        auto *row = new QHBoxLayout;
        for (const bool inOrder : {true, false}) {
            auto *say = wordButton(inOrder ? tr("In order") : tr("Not in order: stop"), card);
            say->setProperty("flush", true);
            say->setAccessibleName(tr("%1: %2").arg(say->text(), step.text));
            connect(say, &QPushButton::clicked, this, [this, text = step.text, inOrder] { Q_EMIT safetyAnswered(text, inOrder); });
            row->addWidget(say);
            row->addSpacing(gap::normal);
        }
        row->addStretch(1);
        column->addLayout(row);
    }
    m_shown << step.text;
    return card;
}

} // namespace ts
