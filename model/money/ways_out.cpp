#include "model/money/ways_out.h"

#include "model/money/turning_point.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

constexpr ThreePoint partsSpread{0.55, 1, 1.6}; // of the value of parts; a starting value of ours
constexpr int breakingMinutes = 120;            // a starting value of ours
constexpr int returningMinutes = 30;            // packing and sending (common practice, no source)

class Weighing {
public:
    Weighing(const MoneyQuestion &asked, const CostSheet &sheet, const ForecastBasis &basis, const MoneySettings &settings,
             const ForecastOptions &options)
        : m_asked(asked), m_sheet(sheet), m_basis(basis), m_settings(settings), m_options(options), m_plan(planOf(asked.file)),
          m_today(asked.now.toUTC().date())
    {
        m_made.currency = sheet.currency;
    }

    WaysOut made(const Forecast &finish)
    {
        if (m_asked.file.unit.kind != UnitKind::ToSell || m_asked.file.unit.stage == Stage::Closed ||
            m_asked.file.unit.stage == Stage::Scouted)
            return std::move(m_made);
        addFinish(finish);
        addAsItStands();
        addBreaking();
        addReturn();
        add(WayOut::Stop, Spread{}, Spread{}, QStringLiteral("Put away or scrapped: nothing more in or out."));
        rank();
        if (m_made.leads) {
            const TurningPoint turn = turningPoint(m_made, finish, m_basis.terms, m_settings);
            m_made.why = turn.why;
            m_made.whenItChanges = turn.whenItChanges;
        } else {
            m_made.why = QStringLiteral("Nothing says yet what it fetches: comparable sales or a plan are wanted.");
        }
        m_made.due = dueNow(m_asked.file, m_sheet.hours.minutes());
        if (m_made.due)
            m_made.dueBecause = askedText(*m_made.due);
        return std::move(m_made);
    }

private:
    [[nodiscard]] Money money(double minor) const { return {std::llround(minor), m_made.currency}; }

    void add(WayOut way, const Spread &net, const Spread &minutes, const QString &why)
    {
        WayFigures made;
        made.way = way;
        made.open = true;
        made.low = money(net.low);
        made.middle = money(net.middle);
        made.high = money(net.high);
        made.mean = money(net.mean);
        made.minutes = static_cast<int>(std::lround(minutes.middle));
        if (made.minutes > 0)
            made.perHour = made.middle.scaled(60, made.minutes, Rounding::HalfUp);
        made.afterHours = made.mean;
        if (m_settings.hourlyRate)
            made.afterHours = made.mean - m_settings.hourlyRate->scaled(std::llround(minutes.mean), 60, Rounding::HalfUp);
        made.why = why;
        m_made.ways << made;
    }
    void addClosed(WayOut way, const QString &why)
    {
        WayFigures made;
        made.way = way;
        made.why = why;
        m_made.ways << made;
    }

    void addFinish(const Forecast &finish)
    {
        if (!m_basis.resaleKnown)
            return addClosed(WayOut::FinishAndSell, QStringLiteral("Nothing says what it fetches."));
        add(WayOut::FinishAndSell, finish.net, finish.minutes,
            QStringLiteral("%1 % of %2 draws end repaired; it fetches %3 in the middle and takes %4 more minutes.")
                .arg(std::lround(finish.chanceRepaired * 100))
                .arg(finish.draws)
                .arg(money(finish.price.middle).display())
                .arg(std::lround(finish.minutes.middle)));
    }

    void addAsItStands()
    {
        if (!m_basis.resaleKnown)
            return addClosed(WayOut::SellAsItStands, QStringLiteral("Nothing says what it fetches."));
        ForecastTerms terms = m_basis.terms;
        const bool works = terms.symptoms.isEmpty() && m_asked.file.unit.stage >= Stage::Ready;
        if (works)
            return addClosed(WayOut::SellAsItStands, QStringLiteral("It is finished; that is the same as to sell it."));
        terms.symptoms.clear();
        terms.chance = 0;
        terms.minutesLeft = ThreePoint::sure(m_settings.sellingMinutes);
        terms.partsLeft = ThreePoint::sure(0);
        terms.waitingDays = 0;
        const Forecast stands = forecastOf(terms, m_options);
        add(WayOut::SellAsItStands, stands.net, stands.minutes,
            QStringLiteral("It fetches %1 in the middle as one that does not work, before fees and carriage.")
                .arg(money(stands.price.middle).display()));
    }

    void addBreaking()
    {
        const auto value =
            m_plan && m_plan->partsValue && m_plan->partsValue->currency() == m_made.currency ? m_plan->partsValue : std::nullopt;
        if (!value)
            return addClosed(WayOut::BreakForParts, QStringLiteral("The plan does not say what its parts are worth."));
        const auto minor = static_cast<double>(value->minor());
        const ThreePoint points{minor * partsSpread.low, minor, minor * partsSpread.high};
        const double minutes = m_plan->breakingMinutes.value_or(breakingMinutes);
        add(WayOut::BreakForParts, {points.quantile(0.1), points.quantile(0.5), points.quantile(0.9), points.mean()},
            {minutes, minutes, minutes, minutes},
            m_plan->breakingMinutes
                ? QStringLiteral("By the plan, its parts fetch or save %1.").arg(value->display())
                : QStringLiteral(
                      "By the plan, its parts fetch or save %1; two hours are taken to get them out (a starting value).")
                      .arg(value->display()));
    }

    void addReturn()
    {
        if (!m_plan || !m_plan->returnUntil.isValid())
            return addClosed(WayOut::ReturnToSeller, QStringLiteral("No day is recorded until which the seller takes it back."));
        if (m_plan->returnUntil < m_today)
            return addClosed(WayOut::ReturnToSeller,
                             QStringLiteral("The seller took it back until %1.").arg(m_plan->returnUntil.toString(Qt::ISODate)));
        const auto ours = [&](const std::optional<Money> &sum) {
            return sum && sum->currency() == m_made.currency ? sum : std::optional<Money>();
        };
        const Money refund =
            ours(m_plan->returnRefund).value_or(m_sheet.toDate(CostKey::BoughtFor).value_or(Money(0, m_made.currency)));
        const Money cost = ours(m_plan->returnCost).value_or(Money(0, m_made.currency));
        const auto net = static_cast<double>((refund - cost).minor());
        add(WayOut::ReturnToSeller, {net, net, net, net},
            {returningMinutes, returningMinutes, returningMinutes, returningMinutes},
            QStringLiteral("The seller gives %1 back until %2; sending it costs %3.")
                .arg(refund.display(), m_plan->returnUntil.toString(Qt::ISODate), cost.display()));
    }

    void rank()
    {
        if (!m_basis.resaleKnown)
            return;
        const WayFigures *best = nullptr;
        for (const WayFigures &way : m_made.ways)
            if (way.open && (!best || best->afterHours < way.afterHours))
                best = &way;
        if (best)
            m_made.leads = best->way;
    }

    const MoneyQuestion &m_asked;
    const CostSheet &m_sheet;
    const ForecastBasis &m_basis;
    const MoneySettings &m_settings;
    ForecastOptions m_options;
    const Plan *m_plan;
    QDate m_today;
    WaysOut m_made;
};

} // namespace

const WayFigures *WaysOut::of(WayOut way) const
{
    for (const WayFigures &each : ways)
        if (each.way == way)
            return &each;
    return nullptr;
}

WaysOut waysOut(const MoneyQuestion &asked, const CostSheet &sheet, const ForecastBasis &basis, const Forecast &finish,
                const MoneySettings &settings, const ForecastOptions &options)
{
    return Weighing(asked, sheet, basis, settings, options).made(finish);
}

std::optional<Asked> dueNow(const UnitFile &file, int minutes)
{
    const Stage stage = file.unit.stage;
    if (file.unit.kind != UnitKind::ToSell || stage < Stage::Shelved || stage > Stage::Proving)
        return std::nullopt;
    const Decision *last = nullptr;
    for (const Decision &each : file.all<Decision>())
        if (!each.removed)
            last = &each;
    // Coming to the bench is where it is decided what to do with a unit.
    for (const StageMove &move : file.all<StageMove>())
        if (!move.removed && move.toStage == Stage::Bench && move.fromStage < Stage::Bench && (!last || move.at > last->at))
            return Asked::Triage;
    if (!last) {
        const auto seen = file.all<Symptom>();
        return std::any_of(seen.begin(), seen.end(), [](const Symptom &each) { return !each.removed; })
                   ? std::optional(Asked::Triage)
                   : std::nullopt;
    }
    const auto since = [last](const auto &records) {
        return std::any_of(records.begin(), records.end(),
                           [last](const auto &each) { return !each.removed && each.at > last->at; });
    };
    if (since(file.all<Symptom>()) || since(file.all<Cause>()))
        return Asked::NewUnknown;
    if (since(file.all<Need>()))
        return Asked::NewPart;
    if (minutes / 60 > last->minutes / 60)
        return Asked::FullHour;
    return std::nullopt;
}

Change decide(const MoneyQuestion &asked, const WaysOut &ways, WayOut chosen, const QString &because, int minutes, Maker &maker)
{
    Decision decision = maker.fresh<Decision>();
    decision.unit = asked.file.unit.id;
    decision.way = chosen;
    decision.asked = ways.due.value_or(Asked::ByHand);
    decision.reason = because.trimmed().isEmpty() ? ways.why : because.trimmed();
    decision.minutes = minutes;
    QStringList lines;
    for (const WayFigures &way : ways.ways)
        if (way.open)
            lines << QStringLiteral("%1: %2, %3, %4 (1 in 10, middle, 9 in 10), %5, after hours %6")
                         .arg(wayText(way.way), way.low.display(), way.middle.display(), way.high.display(),
                              durationText(way.minutes), way.afterHours.display());
    decision.figures = lines.join(QLatin1Char('\n'));
    return Change(QStringLiteral("Decided: %1").arg(wayText(chosen).toLower())).add(decision);
}

QString wayText(WayOut way)
{
    QString text = toWord(way).replace(QLatin1Char('_'), QLatin1Char(' '));
    return text.replace(0, 1, text.at(0).toUpper());
}

QString askedText(Asked asked)
{
    switch (asked) {
    case Asked::Triage:
        return QStringLiteral("It is seen what is wrong, or it came to the bench, and nothing is decided since.");
    case Asked::FullHour:
        return QStringLiteral("Another full hour is worked.");
    case Asked::NewPart:
        return QStringLiteral("A part was added since it was decided.");
    case Asked::NewUnknown:
        return QStringLiteral("A symptom or a cause was added since it was decided.");
    case Asked::ByHand:
        break;
    }
    return QStringLiteral("Asked by hand.");
}

} // namespace ts
