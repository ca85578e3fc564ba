#include "model/money/scouted_bid.h"

#include "model/faults/check_next.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

constexpr double chanceStep = 0.15; // how far off a chance may well be (a starting value of ours)
constexpr double deadShare = 0.3;   // of the middle, as one that does not work (common practice, no source)

class Bidding {
public:
    Bidding(const MoneyQuestion &asked, const OwnRecord &record, const MoneySettings &settings)
        : m_asked(asked), m_record(record), m_settings(settings), m_plan(planOf(asked.file))
    {
        m_made.currency = settings.currency;
    }

    Expected<ScoutedBid> made(const Resale &resale, const Resale &asItStands)
    {
        const QString did = QStringLiteral("There is no highest bid yet");
        if (!takePrice(resale))
            return Trouble{did, QStringLiteral("nothing says what it fetches"), QStringLiteral("add sold comparables or a plan")};
        if (!takeHours())
            return Trouble{did, QStringLiteral("nothing says how long it takes"),
                           QStringLiteral("give a plan with minutes, or causes with their fixes")};
        takeSale();
        takeChance();
        takeCosts();
        takeSalvage(asItStands);
        terms().gain = m_settings.wantedGain;
        if (m_settings.hourlyRate)
            terms().rate = *m_settings.hourlyRate;
        else
            m_made.remarks << QStringLiteral("No rate for your hours is set, so they count as nothing.");
        if (m_settings.marginTax) {
            terms().taxNumerator = m_settings.marginTax->millionths();
            terms().taxDenominator = 1'000'000 + m_settings.marginTax->millionths();
        }
        const auto bid = highestBid(terms());
        if (!bid)
            return bid.trouble();
        m_made.bid = *bid;
        if (auto found = addInfluences(resale); !found)
            return found.trouble();
        say();
        return std::move(m_made);
    }

private:
    BidTerms &terms() { return m_made.terms; }
    [[nodiscard]] Money money(double minor) const { return {std::llround(minor), m_made.currency}; }
    [[nodiscard]] std::optional<Money> ours(const std::optional<Money> &sum) const
    {
        return sum && (sum->currency().isNull() || sum->currency() == m_made.currency)
                   ? std::optional(Money(sum->minor(), m_made.currency))
                   : std::nullopt;
    }

    bool takePrice(const Resale &resale)
    {
        m_made.terms.price = Money(0, m_made.currency);
        if (resale.middle) {
            terms().price = *resale.middle;
            m_priceWhy = resale.why;
            return true;
        }
        if (m_plan && ours(m_plan->resaleLikely)) {
            terms().price = *ours(m_plan->resaleLikely);
            m_priceWhy = QStringLiteral("The plan's guess; there are no sold comparables.");
            m_made.remarks << m_priceWhy;
            return true;
        }
        return false;
    }

    /// Mean minutes and cost of the fixes, by the causes' likelihoods.
    struct Fixes {
        double minutes = 0;
        double cost = 0;
        int symptoms = 0;
    };
    [[nodiscard]] Fixes fixes() const
    {
        Fixes made;
        for (const FaultBoard &board : boardsOf(m_asked.file, m_asked.bench)) {
            if (board.cleared || board.blank())
                continue;
            ++made.symptoms;
            for (const BoardCause &cause : board.causes) {
                made.minutes += cause.now * cause.fixMinutes.value_or(
                                                static_cast<int>(cause.somethingElse ? usualElseMinutes : usualFixMinutes));
                made.cost += cause.now * static_cast<double>(ours(cause.fixCost).value_or(Money()).minor());
            }
        }
        return made;
    }

    bool takeHours()
    {
        m_fixes = fixes();
        double minutes = 0;
        if (m_plan && m_plan->minutes) {
            minutes = *m_plan->minutes;
            m_hoursWhy = QStringLiteral("The plan's %1").arg(durationText(*m_plan->minutes));
        } else if (m_fixes.symptoms > 0) {
            minutes = m_fixes.minutes;
            m_hoursWhy = QStringLiteral("The fixes of the likely causes, %1 in the mean")
                             .arg(durationText(static_cast<int>(std::lround(minutes))));
        } else {
            return false;
        }
        if (m_record.hours.used) {
            minutes *= m_record.hours.factor;
            m_hoursWhy += QStringLiteral(", times %1 by your own record").arg(m_record.hours.factor, 0, 'f', 2);
        }
        minutes += m_settings.sellingMinutes;
        m_hoursWhy += QStringLiteral(", and %1 minutes of selling.").arg(m_settings.sellingMinutes);
        terms().hours = minutes / 60;
        return true;
    }

    void takeSale()
    {
        if (const Channel *channel = channelFor(m_asked.file, m_asked.bench))
            terms().rules = rulesOn(m_asked.bench, channel->id, m_asked.now.toUTC().date());
        else
            m_made.remarks << QStringLiteral("No channel is set, so no selling fee is counted.");
        const Money none(0, m_made.currency);
        terms().carriagePaid = m_plan ? ours(m_plan->carriageCharged).value_or(none) : none;
        terms().carriage = m_plan ? ours(m_plan->carriageOut).value_or(none) : none;
        terms().packing = m_plan ? ours(m_plan->packing).value_or(none) : none;
        terms().returns = returnsAllowance(terms());
    }

    /// The share that comes back × what one costs that does: carriage both ways, packing, the drop in price.
    [[nodiscard]] Money returnsAllowance(const BidTerms &terms) const
    {
        const double loss =
            2 * static_cast<double>(terms.carriage.minor()) + static_cast<double>(terms.packing.minor()) +
            static_cast<double>(terms.price.minor()) * static_cast<double>(m_settings.returnsDrop.millionths()) / 1e6;
        return money(m_record.returned.share * loss);
    }

    void takeChance()
    {
        const double chance = m_plan && m_plan->chance ? std::clamp(*m_plan->chance, 0.0, 1.0) : m_record.repaired.share;
        terms().chance = std::llround(chance * 1e6);
        m_chanceWhy = m_plan && m_plan->chance ? QStringLiteral("As the plan says.") : m_record.repaired.why;
    }

    void takeCosts()
    {
        const Money none(0, m_made.currency);
        const auto planned = m_plan ? ours(m_plan->parts) : std::nullopt;
        const Money parts = planned.value_or(money(m_fixes.cost));
        m_partsWhy =
            planned ? QStringLiteral("As the plan says.") : QStringLiteral("The fixes of the likely causes, in the mean.");
        if (!planned && m_fixes.symptoms == 0)
            m_made.remarks << QStringLiteral("Nothing says what parts it wants; none are counted.");
        const auto carriageIn = m_plan ? ours(m_plan->carriageIn) : std::nullopt;
        if (!carriageIn)
            m_made.remarks << QStringLiteral("The plan does not say what it costs to get it here; nothing is counted.");
        Money overhead = none;
        if (m_settings.overheadRate)
            overhead = m_settings.overheadRate->scaled(std::llround(terms().hours * 3600), 3600, Rounding::HalfUp);
        terms().costs = parts + carriageIn.value_or(none) + overhead;
        terms().envelopeParts = parts;
        m_parts = parts;
    }

    void takeSalvage(const Resale &asItStands)
    {
        const Money price =
            asItStands.middle ? *asItStands.middle : money(deadShare * static_cast<double>(terms().price.minor()));
        if (!asItStands.middle)
            m_made.remarks << QStringLiteral(
                "As it stands it is taken to fetch 30 % of a working one (common practice, no sale tells).");
        const auto fees = feesOf(terms().rules, {price, terms().carriagePaid, {}});
        Money net = price + terms().carriagePaid - terms().carriage - terms().packing;
        if (fees)
            net = net - fees->total;
        m_salvageWhy =
            QStringLiteral("As it stands it fetches %1, %2 after fees and carriage.").arg(price.display(), net.display());
        if (const auto parts = m_plan ? ours(m_plan->partsValue) : std::nullopt; parts && net < *parts) {
            net = *parts;
            m_salvageWhy = QStringLiteral("Its parts, as the plan says.");
        }
        terms().salvage = net;
    }

    Expected<void> add(BidInfluence influence, BidTerms worse, BidTerms better)
    {
        for (BidTerms *each : {&worse, &better})
            each->returns = returnsAllowance(*each);
        const auto low = highestBid(worse);
        const auto high = highestBid(better);
        if (!low)
            return low.trouble();
        if (!high)
            return high.trouble();
        influence.bidWorse = low->bid;
        influence.bidBetter = high->bid;
        m_made.influences << influence;
        return {};
    }

    Expected<void> addInfluences(const Resale &resale)
    {
        const BidTerms &now = m_made.terms;
        BidTerms worse = now;
        BidTerms better = now;
        const auto planned = [&](const std::optional<Money> &sum, double otherwise) {
            return ours(sum).value_or(money(otherwise * static_cast<double>(now.price.minor())));
        };
        worse.price =
            resale.quarter && !resale.guessing ? *resale.quarter : planned(m_plan ? m_plan->resaleLow : std::nullopt, 0.8);
        better.price = resale.threeQuarters && !resale.guessing ? *resale.threeQuarters
                                                                : planned(m_plan ? m_plan->resaleHigh : std::nullopt, 1.2);
        worse.price = std::min(worse.price, now.price);
        better.price = std::max(better.price, now.price);
        if (auto done = add({QStringLiteral("what it fetches"),
                             now.price.display(),
                             worse.price.display(),
                             better.price.display(),
                             {},
                             {},
                             m_priceWhy},
                            worse, better);
            !done)
            return done;

        const auto percent = [](qint64 millionths) {
            return QStringLiteral("%1 %").arg(std::llround(static_cast<double>(millionths) / 1e4));
        };
        worse = better = now;
        worse.chance = std::max<qint64>(0, now.chance - std::llround(chanceStep * 1e6));
        better.chance = std::min<qint64>(1'000'000, now.chance + std::llround(chanceStep * 1e6));
        if (auto done = add({QStringLiteral("the chance of repair"),
                             percent(now.chance),
                             percent(worse.chance),
                             percent(better.chance),
                             {},
                             {},
                             m_chanceWhy},
                            worse, better);
            !done)
            return done;

        const auto hours = [](double value) { return durationText(static_cast<int>(std::lround(value * 60))); };
        worse = better = now;
        worse.hours =
            m_plan && m_plan->minutesHigh ? *m_plan->minutesHigh / 60.0 + m_settings.sellingMinutes / 60.0 : now.hours * 1.5;
        better.hours =
            m_plan && m_plan->minutesLow ? *m_plan->minutesLow / 60.0 + m_settings.sellingMinutes / 60.0 : now.hours * 0.75;
        if (auto done =
                add({QStringLiteral("your hours"), hours(now.hours), hours(worse.hours), hours(better.hours), {}, {}, m_hoursWhy},
                    worse, better);
            !done)
            return done;

        worse = better = now;
        const auto partsAt = [&](const std::optional<Money> &sum, qint64 tenths) {
            return ours(sum).value_or(m_parts.scaled(tenths, 10, Rounding::HalfUp));
        };
        const Money high = partsAt(m_plan ? m_plan->partsHigh : std::nullopt, 20);
        const Money low = partsAt(m_plan ? m_plan->partsLow : std::nullopt, 5);
        worse.costs = now.costs + (high - m_parts);
        better.costs = now.costs + (low - m_parts);
        if (auto done = add({QStringLiteral("parts"), m_parts.display(), high.display(), low.display(), {}, {}, m_partsWhy},
                            worse, better);
            !done)
            return done;

        worse = better = now;
        worse.salvage = now.salvage.scaled(1, 2, Rounding::HalfUp);
        better.salvage = now.salvage.scaled(3, 2, Rounding::HalfUp);
        if (better.salvage < worse.salvage)
            std::swap(worse.salvage, better.salvage);
        if (auto done = add({QStringLiteral("what it is worth unrepaired"),
                             now.salvage.display(),
                             worse.salvage.display(),
                             better.salvage.display(),
                             {},
                             {},
                             m_salvageWhy},
                            worse, better);
            !done)
            return done;
        std::stable_sort(m_made.influences.begin(), m_made.influences.end(),
                         [](const BidInfluence &a, const BidInfluence &b) { return b.swing() < a.swing(); });
        return {};
    }

    void say()
    {
        const HighestBid &bid = m_made.bid;
        m_made.why =
            bid.bid.minor() > 0
                ? QStringLiteral(
                      "Bid no more than %1. With your hours for nothing it would be %2; the back of the envelope says %3.")
                      .arg(bid.bid.display(), bid.withoutHours.display(), bid.backOfEnvelope.display())
                : QStringLiteral("Leave it: it comes to %1 with your hours in. With them for nothing it would be %2; the back of "
                                 "the envelope says %3.")
                      .arg(bid.bid.display(), bid.withoutHours.display(), bid.backOfEnvelope.display());
        const BidInfluence &most = m_made.influences.first();
        m_made.restsOn = QStringLiteral("It rests most on %1: %2 to %3 moves it from %4 to %5.")
                             .arg(most.what, most.worse, most.better, most.bidWorse.display(), most.bidBetter.display());
    }

    const MoneyQuestion &m_asked;
    const OwnRecord &m_record;
    const MoneySettings &m_settings;
    const Plan *m_plan;
    ScoutedBid m_made;
    Fixes m_fixes;
    Money m_parts;
    QString m_priceWhy;
    QString m_hoursWhy;
    QString m_chanceWhy;
    QString m_partsWhy;
    QString m_salvageWhy;
};

} // namespace

Expected<ScoutedBid> scoutedBid(const MoneyQuestion &asked, const Resale &resale, const Resale &asItStands,
                                const OwnRecord &record, const MoneySettings &settings)
{
    return Bidding(asked, record, settings).made(resale, asItStands);
}

} // namespace ts
