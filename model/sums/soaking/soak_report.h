#pragma once

#include "model/records/unit_file.h"
#include "model/sums/soaking/gaps.h"
#include "model/sums/verdict.h"

namespace ts {

/// How a quantity behaved over the hours.
enum class SoakVerdict { Steady, Drifting, Out };

template <>
struct Words<SoakVerdict> {
    static constexpr std::array list{std::pair{SoakVerdict::Steady, "steady"}, std::pair{SoakVerdict::Drifting, "drifting"},
                                     std::pair{SoakVerdict::Out, "out"}};
};

/// A slope with the interval that holds it with 95 %, in the unit of the series, an hour.
struct Drift {
    double perHour = 0;
    double low = 0;
    double high = 0;
    bool robust = false; ///< by Theil-Sen, because outliers show; else by least squares
    int outliers = 0;    ///< readings more than five robust standard deviations off the line
    double lag1 = 0;     ///< of what is left beside the line; near 1 the interval is narrower than it ought to be
    double scatter = 0;  ///< standard deviation of what is left, robust where the slope is
};

/// The readings of one name in a soak.
struct SoakSeries {
    QString name;
    Measure measure;
    Limit wanted;
    QList<double> hours;  ///< since the soak's start
    QList<double> values; ///< in measure
    int overRange = 0;    ///< readings without a figure, which are not among the values
    double lowest = 0;
    double highest = 0;
    std::optional<Drift> drift;         ///< of three or more readings
    std::optional<SoakVerdict> verdict; ///< nothing where there are too few to say
    Verdict worst = Verdict::NoLimit;   ///< of its readings against the limit
};

/// A soak with what its readings say.
struct SoakReport {
    QList<SoakSeries> series; ///< in order of first reading
    qsizetype readings = 0;
    QList<SoakGap> gaps;
    int minutes = 0;                    ///< that it ran, without what was answered as not powered
    std::optional<SoakVerdict> verdict; ///< the worst of its series
    qsizetype telling = -1;             ///< the series that it is of, or the first with readings; −1: none
    QStringList words;                  ///< for people: the drift of each series, gaps, what limits the statement
};

/// The drift of values over hours. Outliers are looked for beside the Theil-Sen line, beyond 5 × 1.4826 × the median deviation;
/// where there are any, slope and interval are Theil and Sen's (Sen 1968, normal approximation of Kendall's statistic), else
/// those of least squares with the t law. Refuses fewer than three points and times that are all the same.
[[nodiscard]] Expected<Drift> driftOf(const QList<double> &hours, const QList<double> &values);

/// Everything about a soak. Out where a reading lies outside the limit, drifting where the interval of the slope leaves out 0 and
/// the change over the time measured is more than twice the scatter, else steady.
[[nodiscard]] SoakReport soakReport(const UnitFile &file, const Soak &soak, const QDateTime &now);

/// Running soaks whose next reading is due at `now`, longest overdue first.
[[nodiscard]] QList<Soak> dueSoaks(const UnitFile &file, const QDateTime &now);

} // namespace ts
