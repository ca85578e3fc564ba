#include "model/money/turning_point.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

class Looking {
public:
    Looking(const WaysOut &ways, const Forecast &finish, const ForecastTerms &terms, const MoneySettings &settings)
        : m_ways(ways), m_finish(finish), m_terms(terms),
          m_perMinute(settings.hourlyRate ? static_cast<double>(settings.hourlyRate->minor()) / 60 : 0),
          m_rate(settings.hourlyRate)
    {
        for (const WayFigures &each : ways.ways)
            if (each.open && each.way != *ways.leads && (!m_next || m_next->afterHours < each.afterHours))
                m_next = &each;
    }

    TurningPoint made()
    {
        const WayFigures &best = *m_ways.of(*m_ways.leads);
        TurningPoint turn;
        QStringList words{QStringLiteral("%1 leads").arg(wayText(best.way))};
        if (m_next) {
            words.last() += QStringLiteral(" by %1 over “%2”")
                                .arg((best.afterHours - m_next->afterHours).display(), wayText(m_next->way).toLower());
            const int more = best.minutes - m_next->minutes;
            words << (more >= 0 ? QStringLiteral("for %1 more").arg(durationText(more))
                                : QStringLiteral("and takes %1 less").arg(durationText(-more)));
        }
        words << (m_rate ? QStringLiteral("your hours counted at %1").arg(m_rate->display())
                         : QStringLiteral("your hours not counted, no rate is set"));
        turn.why = words.join(QStringLiteral(", ")) + QStringLiteral(". What is spent already is left out.");
        turn.whenItChanges = best.way == WayOut::FinishAndSell ? whenFinishingEnds() : whenFinishingWouldLead();
        return turn;
    }

private:
    [[nodiscard]] Money money(double minor) const { return {std::llround(minor), m_ways.currency}; }
    [[nodiscard]] double against() const { return m_next ? static_cast<double>(m_next->afterHours.minor()) : 0; }

    /// What finishing comes to after hours if this cause is at work: its own net, and its own minutes in place of the mean ones
    /// of its symptom.
    [[nodiscard]] double valueIf(const CauseOutcome &cause) const
    {
        double usual = 0;
        double whole = 0;
        for (const CauseOutcome &each : m_finish.causes)
            if (each.symptom == cause.symptom) {
                usual += each.likelihood * each.meanMinutes;
                whole += each.likelihood;
            }
        const double minutes = m_finish.minutes.mean + cause.meanMinutes - (whole > 0 ? usual / whole : 0);
        return cause.meanNet - minutes * m_perMinute;
    }

    [[nodiscard]] QString whenFinishingEnds() const
    {
        const CauseOutcome *worst = nullptr;
        double least = 0;
        for (const CauseOutcome &cause : m_finish.causes) {
            if (cause.likelihood <= 0 || cause.likelihood > 0.99)
                continue;
            const double value = valueIf(cause);
            if (!worst || value < least) {
                worst = &cause;
                least = value;
            }
        }
        if (worst) {
            const QString named =
                QStringLiteral("“%1” is the cause (%2 %)").arg(worst->text).arg(std::lround(worst->likelihood * 100));
            if (least < against())
                return QStringLiteral("It stops leading if %1.").arg(named);
            return QStringLiteral("It stops leading if %1 and its fix costs over %2.")
                .arg(named, money(worst->meanCost + least - against()).display());
        }
        const double lead = static_cast<double>(m_ways.of(WayOut::FinishAndSell)->afterHours.minor()) - against();
        const QString price = leastPrice().display();
        if (m_perMinute > 0)
            return QStringLiteral("It stops leading if it takes over %1 more, or fetches under %2.")
                .arg(durationText(static_cast<int>(m_finish.minutes.mean + lead / m_perMinute)), price);
        return QStringLiteral("It stops leading if it fetches under %1.").arg(price);
    }

    [[nodiscard]] QString whenFinishingWouldLead() const
    {
        const WayFigures *finish = m_ways.of(WayOut::FinishAndSell);
        if (!finish || !finish->open)
            return {};
        return QStringLiteral("Finishing would lead if it fetched over %1 (%2 in the middle now).")
            .arg(leastPrice(static_cast<double>(m_ways.of(*m_ways.leads)->afterHours.minor())).display(),
                 money(m_finish.price.middle).display());
    }

    [[nodiscard]] Money leastPrice() const { return leastPrice(against()); }
    /// The price at which finishing comes to what the other way does, all else at its mean. Fees rise with the price, so it is
    /// looked for by halving.
    [[nodiscard]] Money leastPrice(double other) const
    {
        const double rest = m_terms.carriageOut + m_terms.packing + m_finish.parts.mean + m_finish.meanOverhead +
                            m_finish.meanReturns + m_finish.meanTax + m_finish.minutes.mean * m_perMinute;
        const auto charged = static_cast<qint64>(m_terms.carriageCharged);
        const auto covers = [&](qint64 price) {
            return static_cast<double>(price + charged - m_terms.fees.total(price, charged)) - rest >= other;
        };
        qint64 below = 0;
        qint64 enough = 1;
        while (!covers(enough) && enough < 1'000'000'000'000)
            enough *= 2;
        while (enough - below > 1) {
            const qint64 middle = below + (enough - below) / 2;
            (covers(middle) ? enough : below) = middle;
        }
        return {enough, m_ways.currency};
    }

    const WaysOut &m_ways;
    const Forecast &m_finish;
    const ForecastTerms &m_terms;
    double m_perMinute;
    std::optional<Money> m_rate;
    const WayFigures *m_next = nullptr;
};

} // namespace

TurningPoint turningPoint(const WaysOut &ways, const Forecast &finish, const ForecastTerms &terms, const MoneySettings &settings)
{
    return Looking(ways, finish, terms, settings).made();
}

} // namespace ts
