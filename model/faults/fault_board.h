#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// A possible cause as the board shows it.
struct BoardCause {
    Id<Cause> id; ///< null: the "something else" that nobody has recorded yet
    QString text;
    bool somethingElse = false; ///< whatever is not on the list
    CauseState state = CauseState::Open;
    bool weightTyped = false; ///< else it shares what the typed weights leave
    QString weightFrom;       ///< where a weight that was brought in comes from: "2 of your 5 closed units of this model; …"
    double before = 0;        ///< likelihood by the weights alone, 0 to 1; all of a board add up to 1
    double now = 0; ///< after the checks and what was settled by hand; all add up to 1 (all 0 where nothing is left; each
                    ///< confirmed one is 1)
    QString reason; ///< why it stands so, in words: "Ruled out: 3.3 µF, 0.4 Ω"
    std::optional<int> fixMinutes;
    std::optional<Money> fixCost;
    std::optional<double> fixOdds; ///< chance that the fix can be had, 0 to 1
};

/// What a check would show if a cause were the one.
struct BoardMark {
    Id<Bearing> id;      ///< null: no bearing on it
    double abnormal = 0; ///< chance that the check comes out abnormal if this is the cause
    [[nodiscard]] bool marked() const { return !id.isNull(); }
};

/// A check as the board shows it.
struct BoardCheck {
    Id<Check> id;
    QString text;
    std::optional<int> minutes;
    QString wanted; ///< what a good unit shows
    CameOut cameOut = CameOut::NotDone;
    QString result;
    QList<BoardMark> marks; ///< one for each cause of the board, in their order
};

/// Causes and checks of one symptom. Just one of the causes is taken to be at work.
struct FaultBoard {
    Id<Symptom> symptom; ///< null: what stands by itself
    QString text;        ///< the symptom's
    QDateTime seenAt;
    bool cleared = false;
    QList<BoardCause> causes; ///< likeliest first, settled ones last; "something else" is always among them
    QList<BoardCheck> checks; ///< in order of recording
    QList<Id<Cause>> confirmed;
    bool contradiction = false; ///< the outcomes leave no cause possible: the likelihoods leave the checks out
    QStringList remarks;        ///< what the figures rest on, one sentence each

    /// Nothing is left to find out.
    [[nodiscard]] bool closed() const { return cleared || !confirmed.isEmpty(); }
    /// Nobody has thought of a cause or a check yet.
    [[nodiscard]] bool blank() const { return checks.isEmpty() && causes.size() == 1 && causes.first().id.isNull(); }
    /// Small enough to be worked out while somebody types (at most 12 causes beside "something else", and 20 checks); a larger
    /// one belongs off the window's thread.
    [[nodiscard]] bool small() const { return causes.size() <= 13 && checks.size() <= 20; }
};

/// The board of one symptom, worked out by Bayes' rule: the typed weights, then for each check that came out normal or abnormal
/// its marks (unclear says nothing), then what was ruled out or confirmed by hand. A cause without a typed weight shares what the
/// others leave of 1; "something else" never starts below elseFloor unless its own weight says so.
[[nodiscard]] FaultBoard boardOf(const UnitFile &file, const BenchFile &bench, const Id<Symptom> &symptom);

/// The boards of a unit: open symptoms first, then cleared ones, each in order of recording, then what stands by itself where
/// there is any.
[[nodiscard]] QList<FaultBoard> boardsOf(const UnitFile &file, const BenchFile &bench);

/// Whether a cause's text is that of whatever is not on the list: "something else", case aside.
[[nodiscard]] bool isSomethingElse(QStringView text);
/// What it is called in records.
[[nodiscard]] QString somethingElse();

/// The share of 1 that "something else" starts with at the least. Judgement, no source.
inline constexpr double elseFloor = 0.1;
/// Chances of abnormal of a mark that says nothing else: if it is the cause, and if it is not. Judgement, no source.
inline constexpr double usuallyAbnormalIf = 0.95;
inline constexpr double usuallyAbnormalIfNot = 0.05;

} // namespace ts
