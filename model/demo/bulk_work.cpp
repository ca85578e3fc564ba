// The later half of a made-up unit: what was done, bought, proved and sold.
#include "model/demo/bulk_unit.h"

#include <cmath>

namespace ts {

void BulkUnit::work()
{
    const bool back = m_unit.stage >= Stage::Proving;
    QList<TeardownItem> off;
    static const QStringList what{QStringLiteral("lid"), QStringLiteral("bottom plate"), QStringLiteral("front panel"), QStringLiteral("mechanism")};
    for (int i = 0; i < m_dice.whole(2, 4); ++i) {
        TeardownItem item = fresh<TeardownItem>();
        item.position = i + 1;
        item.what = what.at(i);
        item.fastenerCount = m_dice.whole(2, 6);
        item.fasteners = QStringLiteral("%1 screws M3x8").arg(*item.fastenerCount);
        item.keptIn = QStringLiteral("tray A%1").arg(i + 1);
        item.state = back ? TeardownState::Back : TeardownState::Off;
        if (back)
            item.backAt = item.at.addSecs(90000);
        m_change->add(item);
        off << item;
    }
    for (int i = m_dice.whole(2, 4); i > 0; --i) {
        Step step = fresh<Step>();
        step.text = m_words.step(m_unit.category);
        step.kind = static_cast<StepKind>(m_dice.whole(0, 7));
        step.minutes = m_dice.whole(1, 9) * 5;
        if (!m_symptoms.isEmpty())
            step.symptom = any(m_symptoms).id;
        m_change->add(step);
    }
    for (int i = m_dice.whole(1, 3); i > 0; --i) {
        ClockSpan span = fresh<ClockSpan>();
        span.endedAt = span.at;
        span.startedAt = span.at.addSecs(-60 * m_dice.whole(15, 110));
        m_change->add(span);
    }
    for (int i = 0; i < 2; ++i) {
        Photo photo = fresh<Photo>();
        photo.sha256 = any(m_bench.photos);
        photo.phase = i == 0 ? Phase::AsFound : Phase::DuringWork;
        photo.caption = i == 0 ? QStringLiteral("As it arrived") : QStringLiteral("Inside before anything moved");
        photo.width = 320;
        photo.height = 240;
        photo.takenAt = photo.at;
        photo.originalName = QStringLiteral("shot-%1.jpg").arg(m_dice.whole(1000, 9999));
        photo.onSheet = i == 0;
        photo.position = i + 1;
        m_change->add(photo);
        if (i == 0)
            continue;
        PhotoPin pin = fresh<PhotoPin>();
        pin.photo = photo.id;
        pin.item = any(off).id;
        pin.x = m_dice.real(0.1, 0.9);
        pin.y = m_dice.real(0.1, 0.9);
        m_change->add(pin);
    }
    LeftOff left = fresh<LeftOff>();
    left.next = QStringLiteral("look at the ") + m_words.piece(m_unit.category);
    if (!back && m_dice.whole(0, 2) == 0)
        left.doNotPower = QStringLiteral("lid off, mains primary exposed");
    m_change->add(left);
    for (int i = m_dice.whole(1, 3); i > 0; --i) {
        Note note = fresh<Note>();
        note.text = m_words.note();
        m_change->add(note);
    }
}

void BulkUnit::buyParts()
{
    const bool fitted = m_unit.stage >= Stage::Proving;
    for (int i = m_dice.whole(1, 3); i > 0; --i) {
        Need need = fresh<Need>();
        const Part &part = any(m_bench.parts);
        need.part = part.id;
        need.text = part.name;
        need.price = pounds(0.2, 9);
        need.state = fitted ? NeedState::Fitted : static_cast<NeedState>(m_dice.whole(0, 2));
        need.stateSince = need.at;
        need.position = QStringLiteral("C%1").arg(m_dice.whole(1, 800));
        need.supplier = part.supplier;
        if (need.state == NeedState::Ordered)
            need.due = m_today.date().addDays(m_dice.whole(-3, 14));
        m_change->add(need);
    }
}

void BulkUnit::money()
{
    const auto spend = [this](const QString &text, SpendKind kind, const Money &amount) {
        Spend each = fresh<Spend>();
        each.text = text;
        each.kind = kind;
        each.amount = amount;
        each.paidOn = each.at.date();
        m_change->add(each);
    };
    if (m_unit.kind == UnitKind::ToSell && m_unit.stage != Stage::Scouted) {
        spend(QStringLiteral("Bought"), SpendKind::Purchase, pounds(5, 80));
        if (m_dice.whole(0, 2) > 0)
            spend(QStringLiteral("Carriage in"), SpendKind::CarriageIn, pounds(4, 18));
    }
    for (int i = m_dice.whole(2, 4); i > 0; --i) {
        Comparable each = fresh<Comparable>();
        each.maker = m_unit.maker;
        each.makerModel = m_unit.makerModel;
        each.category = m_unit.category;
        each.price = pounds(40, 220);
        each.soldOn = each.at.date().addDays(-m_dice.whole(5, 120));
        each.condition = QStringLiteral("working");
        each.working = true;
        each.source = QStringLiteral("ended sales");
        m_change->add(each);
    }
    Plan plan = fresh<Plan>();
    plan.minutes = m_dice.whole(4, 30) * 15;
    plan.parts = pounds(2, 20);
    plan.resaleLow = pounds(40, 60);
    plan.resaleLikely = pounds(60, 110);
    plan.resaleHigh = pounds(110, 180);
    plan.carriageOut = pounds(8, 18);
    plan.packing = pounds(1, 5);
    plan.channel = any(m_bench.channels).id;
    m_change->add(plan);
    if (m_dice.whole(0, 3) > 0)
        return;
    Decision decision = fresh<Decision>();
    decision.reason = QStringLiteral("the fault is found and cheap");
    decision.minutes = m_dice.whole(1, 4) * 60;
    m_change->add(decision);
}

void BulkUnit::proveAndSell()
{
    static const QStringList proofs{QStringLiteral("every key and control works"), QStringLiteral("two hours of play, steady"), QStringLiteral("both channels equal"),
                                    QStringLiteral("insulation, mains to touchable metal")};
    for (int i = 0; i < static_cast<int>(proofs.size()); ++i) {
        Proof proof = fresh<Proof>();
        proof.text = proofs.at(i);
        proof.kind = i == 3 ? ProofKind::ElectricalSafety : ProofKind::Function;
        proof.cameOut = m_dice.whole(0, 9) == 0 ? ProofOutcome::NotTested : ProofOutcome::Passed;
        proof.doneOn = proof.at.date();
        proof.initials = QStringLiteral("R. M.");
        proof.ruleSet = i == 3 ? QStringLiteral("bench rule set") : QString();
        m_change->add(proof);
    }
    Rung plate = fresh<Rung>();
    plate.step = PowerStep::Plate;
    plate.saw = QStringLiteral("230 V 50 Hz");
    plate.initials = QStringLiteral("R. M.");
    m_change->add(plate);
    if (m_dice.whole(0, 2) == 0) {
        Soak soak = fresh<Soak>();
        soak.name = QStringLiteral("running, cover on");
        soak.startedAt = soak.at;
        soak.endedAt = soak.at.addSecs(4 * 3600);
        soak.intervalMinutes = 60;
        m_change->add(soak);
    }
    if (m_unit.stage >= Stage::Offered) {
        Paper paper = fresh<Paper>();
        paper.madeAt = paper.at;
        paper.sha256 = m_bench.paper;
        paper.format = QStringLiteral("html");
        paper.title = QStringLiteral("Restoration sheet, ") + m_unit.name;
        m_change->add(paper);
    }
    if (m_unit.outcome != Outcome::Sold)
        return;
    for (const auto &[text, kind, flow, low, high] :
         {std::tuple{"sale", SpendKind::Sale, Flow::In, 60.0, 200.0}, std::tuple{"selling fee", SpendKind::SellingFee, Flow::Out, 6.0, 24.0},
          std::tuple{"carriage out", SpendKind::CarriageOut, Flow::Out, 8.0, 18.0}, std::tuple{"packing", SpendKind::Packing, Flow::Out, 1.0, 4.0}}) {
        Spend spend = fresh<Spend>();
        spend.text = QString::fromLatin1(text);
        spend.kind = kind;
        spend.flow = flow;
        spend.amount = pounds(low, high);
        spend.paidOn = spend.at.date();
        spend.channel = any(m_bench.channels).id;
        m_change->add(spend);
    }
}

} // namespace ts
