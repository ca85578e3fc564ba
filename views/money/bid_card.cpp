#include "views/money/bid_card.h"

#include "model/faults/fault_board.h"
#include "model/faults/starting_table.h"
#include "views/money/figures_list.h"
#include "views/money/money_in_hand.h"
#include "views/money/plan_fields.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/flow_layout.h"
#include "views/widgets/locale_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ts {

namespace {

constexpr int offersShown = 8;
constexpr int faultsShown = 6;

} // namespace

BidCard::BidCard(Workplace &workplace, QWidget *parent) : Card(tr("Highest bid"), parent), m_work(workplace)
{
    m_figures = new QWidget(this);
    auto *row = new QHBoxLayout(m_figures);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::wide);
    m_bid = figure(row, tr("Your hours paid"));
    m_withoutHours = figure(row, tr("Your hours for nothing"));
    m_envelope = figure(row, tr("Back of the envelope"));
    row->addStretch(1);
    m_why = wrappedLabel("plain", {}, this);
    m_fields = new PlanFields(workplace, this);
    m_fields->addHeads({tr("hardly less"), tr("likely"), tr("hardly more")});
    m_fields->addRow(tr("It fetches, working"), {PlanField::ResaleLow, PlanField::Resale, PlanField::ResaleHigh});
    m_fields->addRow(tr("Your hours"), {PlanField::MinutesLow, PlanField::Minutes, PlanField::MinutesHigh});
    m_fields->addRow(tr("Parts"), {PlanField::PartsLow, PlanField::Parts, PlanField::PartsHigh});
    m_fields->addRow(tr("Chance of repair"), {PlanField::Chance}, tr("by your record and the category"));
    m_fields->addRow(tr("Carriage in"), {PlanField::CarriageIn});
    m_fields->addRow(tr("Carriage out"), {PlanField::CarriageOut});
    m_faults = new FiguresList(tr("Likely faults"), {tr("Likely fault"), tr("Chance"), tr("Hours"), tr("Cost")}, false, this);
    m_ask = wrappedLabel("quiet", {}, this);
    m_offers = new QWidget(this);
    m_offers->setLayout(new FlowLayout(gap::tight));
    m_rests = new FiguresList(tr("What the bid rests on"), {tr("It rests on"), tr("Worse"), tr("Bid"), tr("Better"), tr("Bid")}, false, this);
    m_remarks = wrappedLabel("faint", {}, this);
    for (QWidget *each : QWidgetList{m_figures, m_why, m_fields, m_faults, m_ask, m_offers, m_rests, m_remarks})
        body()->addWidget(each);
}

BidCard::Figure BidCard::figure(QLayout *row, const QString &label)
{
    auto *box = new QWidget(m_figures);
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    Figure made{styledLabel("faint", label, box), styledLabel("title", {}, box)};
    column->addWidget(made.label);
    column->addWidget(made.sum);
    row->addWidget(box);
    return made;
}

void BidCard::focusFirst()
{
    m_fields->field(PlanField::Resale)->setFocus();
}

void BidCard::commitEdits()
{
    m_fields->commitEdits();
}

void BidCard::refresh()
{
    const bool scouted = m_work.file().unit.stage == Stage::Scouted;
    setHidden(!scouted);
    if (!scouted)
        return;
    m_fields->refresh();
    showFaults();
    const UnitMoney *money = m_work.money().answer();
    const bool there = money && money->bid;
    setRemark(m_work.money().isTrial() ? tr("as you type, not recorded") : QString());
    m_figures->setVisible(there);
    m_rests->setVisible(there);
    m_remarks->setVisible(there);
    if (there)
        showBid(*money->bid);
    else
        m_why->setText(money ? money->bidMissing : tr("Being worked out…"));
}

void BidCard::showBid(const ScoutedBid &bid)
{
    const auto put = [](const Figure &figure, const Money &sum) {
        figure.sum->setText(shown::money(sum));
        figure.sum->setAccessibleName(QStringLiteral("%1: %2").arg(figure.label->text(), shown::money(sum)));
    };
    put(m_bid, bid.bid.bid);
    put(m_withoutHours, bid.bid.withoutHours);
    put(m_envelope, bid.bid.backOfEnvelope);
    QStringList why{bid.why, bid.restsOn};
    if (bid.terms.taxNumerator > 0)
        why << tr("The tax in the margin is in it, %1 of what the margin comes to.").arg(shown::percent(static_cast<double>(bid.terms.taxNumerator) / static_cast<double>(bid.terms.taxDenominator)));
    m_why->setText(why.join(QLatin1Char(' ')));
    m_rests->begin();
    for (const BidInfluence &each : bid.influences) {
        auto *row = m_rests->addRow(each.what, {tr("%1, %2").arg(each.what, each.likely), each.worse, shown::moneyRound(each.bidWorse), each.better, shown::moneyRound(each.bidBetter)});
        row->setToolTip(0, each.why.toHtmlEscaped());
    }
    m_rests->end();
    m_remarks->setText(bid.remarks.join(QLatin1Char(' ')));
}

// Causes of the symptoms that are noted; where none is, what units of its category are known for, to be taken with one press.
void BidCard::showFaults()
{
    m_faults->begin();
    const FaultBoard *blank = nullptr;
    bool noted = false;
    const QList<FaultBoard> boards = boardsOf(m_work.file(), m_work.bench());
    for (const FaultBoard &board : boards) {
        if (board.cleared || board.symptom.isNull())
            continue;
        noted = true;
        if (board.blank()) {
            blank = &board;
            continue;
        }
        int shownNow = 0;
        for (const BoardCause &cause : board.causes) {
            if (!(cause.now > 0) || shownNow++ == faultsShown)
                continue;
            auto *row = m_faults->addRow(board.text + QLatin1Char('\n') + cause.text, {cause.text, shown::percent(cause.now), cause.fixMinutes ? shown::duration(*cause.fixMinutes) : QString(),
                                                                                       cause.fixCost ? shown::money(*cause.fixCost) : QString()});
            row->setToolTip(0, board.text.toHtmlEscaped());
        }
    }
    m_faults->end();
    m_faults->setHidden(m_faults->topLevelItemCount() == 0);
    QList<FaultOffer> offers = offersOf(tableOf(m_work.bench(), m_work.file().unit.category));
    if (const auto claimed = offerFor(offers, m_work.file().unit.claim); claimed > 0)
        offers.move(claimed, 0);
    QStringList wanted;
    if (blank && offerFor(offers, blank->text) >= 0)
        wanted << blank->text;
    else if (!noted)
        for (const FaultOffer &each : offers.mid(0, offersShown))
            wanted << each.symptom;
    m_ask->setText(blank ? tr("Its usual causes:") : tr("What is it said to do? One press brings the usual causes:"));
    m_ask->setHidden(wanted.isEmpty());
    m_offers->setHidden(wanted.isEmpty());
    if (wanted == m_offered)
        return;
    m_offered = wanted;
    while (QLayoutItem *item = m_offers->layout()->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    for (const QString &symptom : wanted)
        offer(symptom, offers.at(offerFor(offers, symptom)), blank ? blank->symptom : Id<Symptom>());
}

void BidCard::offer(const QString &text, const FaultOffer &offer, const Id<Symptom> &of)
{
    auto *press = button(text, m_offers);
    press->setAccessibleName(tr("Bring in the usual causes of: %1").arg(text));
    connect(press, &QPushButton::clicked, this, [this, offer, of] {
        Maker maker = m_work.maker();
        UnitFile file = m_work.file();
        Change change(tr("Symptom: %1").arg(offer.symptom));
        Id<Symptom> symptom = of;
        if (symptom.isNull()) {
            Symptom seen = maker.fresh<Symptom>();
            seen.unit = file.unit.id;
            seen.text = offer.symptom;
            file.all<Symptom>() << seen;
            symptom = seen.id;
            change.add(seen);
        }
        const auto brought = bringIn(file, symptom, offer, maker);
        if (!brought)
            return m_work.refuse(brought.trouble());
        m_work.record(change.join(*brought));
    });
    m_offers->layout()->addWidget(press);
}

} // namespace ts
