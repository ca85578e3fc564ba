#include "model/money/forecast_rests.h"

#include <algorithm>

namespace ts {

namespace {

constexpr double chanceStep = 0.15;
constexpr double low = 0.1;
constexpr double high = 0.9;
constexpr double least = 1; // a minor unit: what moves less does not matter

class Resting {
public:
    Resting(const ForecastTerms &terms, const Forecast &forecast, double perMinute, const ForecastOptions &options)
        : m_terms(terms), m_forecast(forecast), m_perMinute(perMinute), m_options(options)
    {
    }

    QList<ForecastRest> made()
    {
        price();
        hours();
        parts();
        causes();
        chance();
        std::stable_sort(m_made.begin(), m_made.end(),
                         [](const ForecastRest &a, const ForecastRest &b) { return a.swing() > b.swing(); });
        return std::move(m_made);
    }

private:
    [[nodiscard]] double worth(const Forecast &forecast) const
    {
        return forecast.profit.mean - forecast.minutes.mean * m_perMinute;
    }
    [[nodiscard]] double worthOf(const ForecastTerms &terms) const { return worth(forecastOf(terms, m_options)); }

    void add(ForecastRest rest)
    {
        rest.worth = worth(m_forecast);
        if (rest.swing() >= least)
            m_made << rest;
    }
    void add(Rest what, double worse, double better, const ForecastTerms &ifWorse, const ForecastTerms &ifBetter)
    {
        add({what, {}, {}, worse, better, 0, worthOf(ifWorse), worthOf(ifBetter)});
    }

    void price()
    {
        ForecastTerms worse = m_terms;
        ForecastTerms better = m_terms;
        worse.resale = DrawTable(m_terms.resale.at(low));
        better.resale = DrawTable(m_terms.resale.at(high));
        add(Rest::Price, m_terms.resale.at(low), m_terms.resale.at(high), worse, better);
    }

    /// Both ends of what `rest` and each cause's `part` may be.
    template <class OfRest, class OfCause>
    void ends(Rest what, const Spread &spread, OfRest rest, OfCause part)
    {
        ForecastTerms worse = m_terms;
        ForecastTerms better = m_terms;
        const auto set = [&](ForecastTerms &terms, double chance) {
            rest(terms) = ThreePoint::sure(rest(terms).quantile(chance));
            for (OpenSymptom &symptom : terms.symptoms)
                for (CauseWeight &cause : symptom.causes)
                    part(cause) = ThreePoint::sure(part(cause).quantile(chance));
        };
        set(worse, high);
        set(better, low);
        add(what, spread.high, spread.low, worse, better);
    }

    void hours()
    {
        ends(
            Rest::Hours, m_forecast.minutes, [](ForecastTerms &terms) -> ThreePoint & { return terms.minutesLeft; },
            [](CauseWeight &cause) -> ThreePoint & { return cause.minutes; });
    }
    void parts()
    {
        ends(
            Rest::Parts, m_forecast.parts, [](ForecastTerms &terms) -> ThreePoint & { return terms.partsLeft; },
            [](CauseWeight &cause) -> ThreePoint & { return cause.cost; });
    }

    // The draws have told the causes apart already: what is between the worst and the best of a symptom.
    void causes()
    {
        for (const OpenSymptom &symptom : m_terms.symptoms) {
            const CauseOutcome *worst = nullptr;
            const CauseOutcome *best = nullptr;
            double mean = 0;
            double whole = 0;
            const auto value = [&](const CauseOutcome &cause) { return cause.meanNet - cause.meanMinutes * m_perMinute; };
            for (const CauseOutcome &cause : m_forecast.causes) {
                if (cause.symptom != symptom.text || !(cause.likelihood > 0))
                    continue;
                mean += cause.likelihood * value(cause);
                whole += cause.likelihood;
                if (!worst || value(cause) < value(*worst))
                    worst = &cause;
                if (!best || value(cause) > value(*best))
                    best = &cause;
            }
            if (worst == best || !(whole > 0))
                continue;
            const double now = worth(m_forecast);
            add({Rest::Cause, worst->text, best->text, worst->likelihood, best->likelihood, 0,
                 now + value(*worst) - mean / whole, now + value(*best) - mean / whole});
        }
    }

    void chance()
    {
        ForecastTerms worse = m_terms;
        ForecastTerms better = m_terms;
        worse.chance = std::max(0.0, m_terms.chance - chanceStep);
        better.chance = std::min(1.0, m_terms.chance + chanceStep);
        add(Rest::Chance, worse.chance, better.chance, worse, better);
    }

    const ForecastTerms &m_terms;
    const Forecast &m_forecast;
    double m_perMinute;
    ForecastOptions m_options;
    QList<ForecastRest> m_made;
};

} // namespace

QList<ForecastRest> forecastRests(const ForecastTerms &terms, const Forecast &forecast, double perMinute,
                                  const ForecastOptions &options)
{
    return Resting(terms, forecast, perMinute, options).made();
}

} // namespace ts
