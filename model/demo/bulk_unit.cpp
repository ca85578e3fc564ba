#include "model/demo/bulk_unit.h"

#include <cmath>

namespace ts {

namespace {

/// About how a bench's rack is spread after some years: most are closed. Our own guess.
constexpr std::array stageShares{std::pair{Stage::Closed, 70}, std::pair{Stage::Shelved, 9}, std::pair{Stage::Offered, 6}, std::pair{Stage::Held, 5}, std::pair{Stage::Ready, 3},
                                 std::pair{Stage::Bench, 3},   std::pair{Stage::Proving, 2}, std::pair{Stage::Inbound, 1}, std::pair{Stage::Scouted, 1}};

} // namespace

void BulkUnit::step()
{
    const QDateTime next = m_clock.now().addSecs(m_dice.whole(60, 9000));
    if (next < m_today)
        m_clock.set(next);
}

Money BulkUnit::pounds(double low, double high)
{
    return {static_cast<qint64>(std::lround(m_dice.real(low, high) * 100)), m_bench.currency};
}

void BulkUnit::write(Change &change, const QDateTime &start, const QDateTime &today)
{
    m_change = &change;
    m_today = today;
    m_symptoms.clear();
    m_clock.set(start);
    takeIn();
    moves();
    money();
    if (m_unit.stage == Stage::Scouted || m_unit.stage == Stage::Inbound)
        return;
    findFaults();
    measure();
    if (m_unit.stage == Stage::Shelved)
        return;
    work();
    buyParts();
    if (m_unit.stage >= Stage::Proving)
        proveAndSell();
}

void BulkUnit::takeIn()
{
    m_unit = m_maker.fresh<Unit>();
    m_unit.category = m_words.category();
    m_unit.maker = m_words.maker();
    m_unit.makerModel = m_words.makerModel(m_unit.category);
    m_unit.name = QStringLiteral("%1 %2 %3").arg(m_unit.maker, m_unit.makerModel, m_words.noun(m_unit.category));
    m_unit.kind = m_dice.whole(0, 9) == 0 ? UnitKind::Owners : UnitKind::ToSell;
    int draw = m_dice.whole(0, 99);
    for (const auto &[stage, share] : stageShares)
        if ((draw -= share) < 0) {
            m_unit.stage = stage;
            break;
        }
    m_unit.serial = QString::number(m_dice.whole(100000, 9999999));
    m_unit.year = m_dice.whole(1962, 1998);
    m_unit.yearBasis = QStringLiteral("date codes");
    m_unit.mains = QStringLiteral("230 V 50 Hz");
    m_unit.protectionClass = m_dice.whole(0, 2) == 0 ? ProtectionClass::I : ProtectionClass::II;
    m_unit.claim = m_words.symptom(m_unit.category);
    m_unit.place = m_words.place();
    m_unit.looks = m_dice.whole(0, 1) == 0 ? QStringLiteral("good") : QStringLiteral("fair");
    if (m_unit.kind == UnitKind::Owners)
        m_unit.owner = any(m_bench.people).id;
    else if (m_dice.whole(0, 19) == 0)
        m_unit.lot = any(m_bench.lots).id;
    if (m_unit.stage == Stage::Held) {
        m_unit.heldBecause = QStringLiteral("waiting for ") + m_words.piece(m_unit.category);
        m_unit.heldUntil = m_today.date().addDays(m_dice.whole(-5, 20));
    }
    if (m_unit.stage == Stage::Closed)
        m_unit.outcome = m_unit.kind == UnitKind::Owners ? Outcome::ReturnedToOwner
                                                         : (m_dice.whole(0, 9) < 8 ? Outcome::Sold : (m_dice.whole(0, 1) == 0 ? Outcome::BrokenForParts : Outcome::Scrapped));
    m_unit.stageSince = m_unit.at;
    m_change->add(m_unit);
}

void BulkUnit::moves()
{
    Stage from = Stage::Scouted;
    for (int next = 1; next <= static_cast<int>(m_unit.stage); ++next) {
        const auto to = static_cast<Stage>(next);
        if (to != m_unit.stage && (to == Stage::Held || to == Stage::Ready))
            continue;
        StageMove move = fresh<StageMove>();
        move.fromStage = from;
        move.toStage = to;
        move.outcome = to == Stage::Closed ? m_unit.outcome : std::nullopt;
        move.because = to == Stage::Held ? m_unit.heldBecause : QString();
        m_change->add(move);
        from = to;
    }
}

void BulkUnit::findFaults()
{
    const bool done = m_unit.stage >= Stage::Proving;
    for (int i = m_dice.whole(1, 3); i > 0; --i) {
        Symptom symptom = fresh<Symptom>();
        symptom.text = m_words.symptom(m_unit.category);
        symptom.conditions = m_dice.whole(0, 1) == 0 ? QStringLiteral("cold and after 20 minutes") : QString();
        symptom.state = done ? SymptomState::Cleared : SymptomState::Open;
        if (done)
            symptom.clearedAt = symptom.at.addSecs(86400);
        m_change->add(symptom);
        m_symptoms << symptom;
        QList<Cause> causes;
        const int count = m_dice.whole(2, 3);
        for (int c = 0; c < count; ++c) {
            Cause cause = fresh<Cause>();
            cause.symptom = symptom.id;
            cause.text = m_words.cause(m_unit.category);
            cause.weight = std::round(m_dice.real(0.1, 0.6) * 20) / 20;
            cause.fixMinutes = m_dice.whole(1, 12) * 5;
            cause.fixCost = pounds(0, 12);
            cause.fixOdds = 0.9;
            cause.state = !done ? CauseState::Open : (c == 0 ? CauseState::Confirmed : CauseState::RuledOut);
            m_change->add(cause);
            causes << cause;
        }
        Check check = fresh<Check>();
        check.symptom = symptom.id;
        check.text = QStringLiteral("look at the ") + m_words.piece(m_unit.category);
        check.minutes = m_dice.whole(2, 20);
        check.cameOut = static_cast<CameOut>(m_dice.whole(0, 3));
        m_change->add(check);
        Bearing bearing = fresh<Bearing>();
        bearing.check = check.id;
        bearing.cause = any(causes).id;
        m_change->add(bearing);
    }
}

void BulkUnit::measure()
{
    struct Point {
        const char *name;
        const char *wanted;
        double middle;
        const char *unit;
    };
    static constexpr std::array points{Point{"motor supply", "12 V 5%", 12, "V"},       Point{"logic supply", "5 V 5%", 5, "V"},     Point{"line out L", "387 mV 2dB", 387, "mV"},
                                       Point{"line out R", "387 mV 2dB", 387, "mV"},    Point{"speed, tone", "3150 Hz 1%", 3150, "Hz"}, Point{"ripple", "<= 0.4 V", 0.25, "V"},
                                       Point{"take-up torque", "35..65 gf.cm", 48, "gf.cm"}, Point{"insulation", ">= 2 MΩ", 150, "MΩ"}};
    const size_t first = static_cast<size_t>(m_dice.whole(0, static_cast<int>(points.size()) - 1));
    for (size_t i = 0; i < 4; ++i) {
        const Point &at = points[(first + i) % points.size()];
        TestPoint point = fresh<TestPoint>();
        point.name = QString::fromUtf8(at.name);
        point.wanted = Limit::parse(QString::fromUtf8(at.wanted)).value();
        point.conditions = QStringLiteral("warm");
        point.source = QStringLiteral("service sheet");
        point.position = static_cast<int>(i) + 1;
        m_change->add(point);
        for (const Phase phase : {Phase::AsFound, Phase::AsItLeaves}) {
            if (phase == Phase::AsItLeaves && m_unit.stage < Stage::Proving)
                continue;
            const double spread = phase == Phase::AsFound ? 0.12 : 0.02;
            Reading reading = fresh<Reading>();
            reading.point = point.id;
            reading.name = point.name;
            reading.value = Quantity(std::round(at.middle * m_dice.real(1 - spread, 1 + spread) * 100) / 100, Measure::parse(QString::fromUtf8(at.unit)).value());
            reading.wanted = point.wanted;
            reading.uncertainty = at.middle * 0.003;
            reading.phase = phase;
            const Meter &meter = any(m_bench.meters);
            reading.meter = meter.id;
            reading.meterName = meter.name;
            m_change->add(reading);
        }
    }
}

} // namespace ts
