#include "model/money/forecast_terms.h"

#include "model/faults/check_next.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

// Spreads about a likely figure where none was entered. Starting values of ours, no source.
constexpr ThreePoint planSpread{0.7, 1, 2};
constexpr ThreePoint fixSpread{0.6, 1, 2.2};
constexpr ThreePoint costSpread{0.8, 1, 1.5};
// What one that does not work fetches, as a share of the working one's middle, where no sale tells. Common practice, no source.
constexpr ThreePoint deadSpread{0.15, 0.3, 0.5};
constexpr double daysPerWeek = 7;

ThreePoint about(double likely, const ThreePoint &spread)
{
    return {likely * spread.low, likely * spread.likely, likely * spread.high};
}

/// Three points from what was entered, the ends by the spread where they were not; kept in order.
ThreePoint entered(double likely, std::optional<double> low, std::optional<double> high, const ThreePoint &spread)
{
    const double from = std::min(likely, low.value_or(likely * spread.low));
    return {from, likely, std::max(likely, high.value_or(likely * spread.high))};
}

template <class T>
std::optional<double> number(const std::optional<T> &value)
{
    return value ? std::optional<double>(static_cast<double>(*value)) : std::nullopt;
}

class Gathering {
public:
    Gathering(const MoneyQuestion &asked, const CostSheet &sheet, const OwnRecord &record, const MoneySettings &settings)
        : m_asked(asked), m_sheet(sheet), m_record(record), m_settings(settings), m_plan(planOf(asked.file))
    {
        m_made.terms.currency = sheet.currency;
    }

    ForecastBasis made(const Resale &resale, const Resale &asItStands)
    {
        takeCauses();
        takeMinutes();
        takeParts();
        takePrices(resale, asItStands);
        takeSale();
        takeDays();
        return std::move(m_made);
    }

private:
    void say(const QString &sentence) { m_made.sentences << sentence; }
    [[nodiscard]] double factor() const { return m_record.hours.used ? m_record.hours.factor : 1; }
    /// Minor units of a sum in the bench's currency; nothing of any other.
    [[nodiscard]] std::optional<double> minor(const std::optional<Money> &money) const
    {
        const bool ours = money && (money->currency().isNull() || money->currency() == m_sheet.currency);
        return ours ? std::optional(static_cast<double>(money->minor())) : std::nullopt;
    }

    [[nodiscard]] CauseWeight weightOf(const BoardCause &cause, double likelihood)
    {
        CauseWeight made;
        made.text = cause.text;
        made.likelihood = likelihood;
        const double usual = cause.somethingElse ? usualElseMinutes : usualFixMinutes;
        m_unknownFixes += !cause.fixMinutes && !cause.somethingElse;
        made.minutes = about(cause.fixMinutes ? *cause.fixMinutes : usual, fixSpread).times(factor());
        made.cost = about(minor(cause.fixCost).value_or(0), costSpread);
        made.odds = cause.fixOdds.value_or(1);
        return made;
    }

    void takeCauses()
    {
        for (const FaultBoard &board : boardsOf(m_asked.file, m_asked.bench)) {
            if (board.cleared || board.blank())
                continue;
            OpenSymptom open{board.text, {}};
            for (const BoardCause &cause : board.causes) {
                if (cause.state == CauseState::Confirmed) { // each is at work for sure; its parts are among the needs by now
                    CauseWeight sure = weightOf(cause, 1);
                    if (m_sheet.spent.toCome.minor() > 0)
                        sure.cost = ThreePoint::sure(0);
                    m_made.terms.symptoms << OpenSymptom{board.text, {sure}};
                } else if (board.confirmed.isEmpty() && cause.now > 0) {
                    open.causes << weightOf(cause, cause.now);
                }
            }
            if (!open.causes.isEmpty())
                m_made.terms.symptoms << open;
        }
        for (const OpenSymptom &symptom : m_made.terms.symptoms) {
            double whole = 0;
            double minutes = 0;
            for (const CauseWeight &cause : symptom.causes) {
                whole += cause.likelihood;
                minutes += cause.likelihood * cause.minutes.mean();
            }
            m_fixes += whole > 0 ? minutes / whole : 0;
        }
        if (!m_made.terms.symptoms.isEmpty())
            say(m_made.terms.symptoms.size() == 1
                    ? QStringLiteral("1 open symptom with its causes.")
                    : QStringLiteral("%1 open symptoms with their causes.").arg(m_made.terms.symptoms.size()));
        if (m_unknownFixes > 0)
            say(QStringLiteral("%1 without minutes for its fix: %2 taken (a starting value).")
                    .arg(m_unknownFixes == 1 ? QStringLiteral("1 cause") : QStringLiteral("%1 causes").arg(m_unknownFixes))
                    .arg(usualFixMinutes));
    }

    void takeMinutes()
    {
        const double worked = m_sheet.hours.minutes();
        const int selling = sellingMinutes();
        ThreePoint rest = ThreePoint::sure(0);
        const bool beforeProof = m_asked.file.unit.stage < Stage::Ready;
        if (m_plan && m_plan->minutes && beforeProof) {
            const ThreePoint plan =
                entered(*m_plan->minutes, number(m_plan->minutesLow), number(m_plan->minutesHigh), planSpread).times(factor());
            // What the plan has left beside the fixes; where those take more than it has left, they stand alone.
            const auto left = [&](double minutes) { return std::max(0.0, minutes - worked - m_fixes); };
            rest = {left(plan.low), left(plan.likely), left(plan.high)};
            say(QStringLiteral("The plan had %1 for it and %2 are worked; the fixes of open causes take %3 of what is to come.")
                    .arg(durationText(*m_plan->minutes), durationText(m_sheet.hours.minutes()),
                         durationText(static_cast<int>(std::lround(m_fixes)))));
        } else if (beforeProof && m_made.terms.symptoms.isEmpty()) {
            say(QStringLiteral("No plan and no open cause says how much work is left; only selling is counted."));
        }
        m_made.terms.minutesLeft = {rest.low + selling, rest.likely + selling, rest.high + selling};
        if (selling > 0)
            say(QStringLiteral("Selling takes %1 more minutes.").arg(selling));
        if (m_record.hours.count > 0)
            say(m_record.hours.why);
        m_made.terms.minutesToDate = worked;
        if (m_settings.overheadRate)
            m_made.terms.overheadPerMinute = static_cast<double>(m_settings.overheadRate->minor()) / 60;
    }

    /// Photographs and text are made by the time it is offered; packing is left.
    [[nodiscard]] int sellingMinutes() const
    {
        const Stage stage = m_asked.file.unit.stage;
        return stage == Stage::Closed ? 0 : stage == Stage::Offered ? m_settings.sellingMinutes / 2 : m_settings.sellingMinutes;
    }

    void takeParts()
    {
        const double needed = static_cast<double>(m_sheet.spent.toCome.minor());
        double planned = 0;
        ThreePoint rest = ThreePoint::sure(0);
        if (m_plan && minor(m_plan->parts) && m_asked.file.unit.stage < Stage::Bench) {
            // Before work begins the plan speaks; later the needs and the causes do.
            planned = *minor(m_plan->parts);
            const ThreePoint plan = entered(planned, minor(m_plan->partsLow), minor(m_plan->partsHigh), costSpread);
            const auto left = [&](double sum) { return std::max(0.0, sum - needed); };
            rest = {left(plan.low), left(plan.likely), left(plan.high)};
        }
        m_made.terms.partsLeft = {needed + rest.low, needed + rest.likely, needed + rest.high};
        if (m_sheet.spent.unpriced > 0)
            say(QStringLiteral("Parts without a price count as nothing (%1).").arg(m_sheet.spent.unpriced));
        m_made.terms.spent = static_cast<double>(m_sheet.toDate(CostKey::Spent).value_or(Money()).minor());
    }

    void takePrices(const Resale &resale, const Resale &asItStands)
    {
        const double factorOfPrice = m_record.price.used ? m_record.price.factor : 1;
        double middle = 0;
        if (resale.middle) {
            m_made.resaleKnown = true;
            middle = resale.sample.quantile(0.5);
            m_made.terms.resale = DrawTable::of(resale.sample, resale.width).times(factorOfPrice);
            say(resale.why);
        } else if (m_plan && minor(m_plan->resaleLikely)) {
            m_made.resaleKnown = true;
            middle = *minor(m_plan->resaleLikely);
            const ThreePoint plan = entered(middle, minor(m_plan->resaleLow), minor(m_plan->resaleHigh), {0.7, 1, 1.3});
            m_made.terms.resale = DrawTable::of(plan.times(factorOfPrice));
            say(QStringLiteral("What it fetches is the plan's guess; there are no sold comparables."));
        }
        middle *= factorOfPrice;
        if (m_made.resaleKnown && m_record.price.count > 0)
            say(m_record.price.why);
        if (asItStands.middle) {
            m_made.terms.asItStands = DrawTable::of(asItStands.sample, asItStands.width);
        } else if (m_made.resaleKnown) {
            m_made.terms.asItStands = DrawTable::of(about(middle, deadSpread));
            say(QStringLiteral("One that does not work is taken to fetch 15 to 50 %, likely 30 %, of a working one (common "
                               "practice, no sale tells)."));
        }
        takeChance();
    }

    /// Of repair. The odds of each fix say it once causes are known; until then the plan does, or the owner's record.
    void takeChance()
    {
        m_made.terms.chance = 1;
        if (!m_made.terms.symptoms.isEmpty())
            return;
        if (m_plan && m_plan->chance && m_asked.file.unit.stage < Stage::Proving) {
            m_made.terms.chance = std::clamp(*m_plan->chance, 0.0, 1.0);
        } else if (m_asked.file.unit.stage < Stage::Bench) {
            m_made.terms.chance = m_record.repaired.share;
            say(m_record.repaired.why);
        }
    }

    void takeSale()
    {
        ForecastTerms &terms = m_made.terms;
        QList<FeeRule> rules;
        if (const Channel *channel = channelFor(m_asked.file, m_asked.bench)) {
            rules = rulesOn(m_asked.bench, channel->id, m_asked.now.toUTC().date());
            say(QStringLiteral("Fees of %1: %2.").arg(channel->name, rules.isEmpty() ? QStringLiteral("none") : feeText(rules)));
        } else {
            say(QStringLiteral("No channel is set, so no selling fee is counted."));
        }
        const auto schedule = FeeSchedule::of(rules, {Money(0, m_sheet.currency)});
        if (schedule)
            terms.fees = *schedule;
        else
            say(schedule.trouble().sentence());
        if (m_plan) {
            terms.carriageCharged = minor(m_plan->carriageCharged).value_or(0);
            terms.carriageOut = minor(m_plan->carriageOut).value_or(0);
            terms.packing = minor(m_plan->packing).value_or(0);
        }
        terms.returnsRate = m_record.returned.share;
        terms.returnsDrop = static_cast<double>(m_settings.returnsDrop.millionths()) / 1e6;
        say(m_record.returned.why);
        if (m_settings.marginTax) {
            terms.marginTaxRate = m_settings.marginTax->millionths();
            terms.bought = static_cast<double>(m_sheet.toDate(CostKey::BoughtFor).value_or(Money()).minor());
            say(QStringLiteral("Tax of %1 % within the margin over what was paid for it.").arg(m_settings.marginTax->percent()));
        }
    }

    void takeDays()
    {
        ForecastTerms &terms = m_made.terms;
        const Unit &unit = m_asked.file.unit;
        const QDate today = m_asked.now.toUTC().date();
        QDate bought;
        for (const Spend &spend : m_asked.file.all<Spend>())
            if (!spend.removed && spend.kind == SpendKind::Purchase && spend.paidOn.isValid() &&
                (!bought.isValid() || spend.paidOn < bought))
                bought = spend.paidOn;
        if (bought.isValid())
            terms.daysHeld = std::max<double>(0, static_cast<double>(bought.daysTo(today)));
        if (m_settings.benchHours > 0)
            terms.minutesPerDay = m_settings.benchHours * 60 / daysPerWeek;
        if (unit.stage == Stage::Held && unit.heldUntil.isValid())
            terms.waitingDays = std::max<double>(0, static_cast<double>(today.daysTo(unit.heldUntil)));
        const int likely =
            m_plan && m_plan->daysToSell ? *m_plan->daysToSell : m_record.daysToSell.value_or(m_settings.daysToSell);
        // Some go at once, some stay long: from a tenth to four times (a starting value of ours).
        terms.daysToSell = about(likely, {0.1, 1, 4});
        terms.capitalPerDay = static_cast<double>(m_settings.capitalRate.millionths()) / 1e6 / 365;
    }

    const MoneyQuestion &m_asked;
    const CostSheet &m_sheet;
    const OwnRecord &m_record;
    const MoneySettings &m_settings;
    const Plan *m_plan;
    ForecastBasis m_made;
    double m_fixes = 0; ///< mean minutes that the fixes take
    int m_unknownFixes = 0;
};

} // namespace

const Plan *planOf(const UnitFile &file)
{
    const Plan *found = nullptr;
    for (const Plan &plan : file.all<Plan>())
        if (!plan.removed)
            found = &plan;
    return found;
}

ForecastBasis forecastBasis(const MoneyQuestion &asked, const CostSheet &sheet, const Resale &resale, const Resale &asItStands,
                            const OwnRecord &record, const MoneySettings &settings)
{
    return Gathering(asked, sheet, record, settings).made(resale, asItStands);
}

} // namespace ts
