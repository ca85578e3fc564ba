#pragma once

#include "model/records/unit.h"
#include "model/values/money.h"

namespace ts {

/// What the rack shows of one unit.
struct RackRow {
    Id<Unit> id;
    int tag = 0;
    QString name;
    Category category = Category::Other;
    UnitKind kind = UnitKind::ToSell;
    Stage stage = Stage::Shelved;
    QDateTime stageSince;
    QString heldBecause;
    QDate heldUntil;
    std::optional<Outcome> outcome;
    QString sourceId;
    Money spent;        ///< in the bench's currency: money out less money back on purchases, and parts ordered, here or fitted
    qint64 minutes = 0; ///< hours to date, see model/sums/hours.h
    QString symptom;    ///< the newest open symptom
    bool doNotPower = false;

    // What its tag says beside; filled by Desk::rackUnits alone.
    QDateTime taken; ///< when it was recorded
    QString mains;
    std::optional<ProtectionClass> protectionClass;
    QString claim;
    QString next;          ///< of where it was left off
    int openSymptoms = 0;
    int loose = 0;         ///< teardown items that are off
    QString soak;          ///< the soak that runs
    QDateTime soakSince;
    QDate due;             ///< of the awaited part that is due first
    bool partsHere = false; ///< parts have come that are not fitted, and no other is awaited
    int photos = 0;
    int sheets = 0;        ///< restoration sheets made
    QString channel;       ///< where it is offered
    std::optional<Money> asked;
    std::optional<Money> soldFor; ///< in the bench's currency
};

/// Which part of the rack, in what order: what is worked on first (bench, held, proving, ready, offered, shelved, inbound,
/// scouted, closed), newest move first within a stage.
struct RackQuery {
    int offset = 0;
    int limit = -1; ///< all
    std::optional<Stage> stage;
};

/// In what order the units of a stage hang on the rack. A part that has come counts as a move. Equal ones hang by tag, newest first.
enum class RackSort { MovedLast, WaitingLongest, ByTag, ByName, DueFirst };

/// Where a unit hangs.
struct RackPlace {
    Id<Unit> id;
    Stage stage = Stage::Shelved;
    bool operator==(const RackPlace &) const = default;
};

/// One hit of a search over everything.
struct Found {
    QString kind; ///< the record kind's table name
    QUuid id;
    Id<Unit> unit; ///< whose it is; null for a record of the bench
    int tag = 0;
    QString unitName;
    QString text; ///< the matching record's searched text, first 200 characters
};

/// One line of the journal: who did what, when.
struct JournalLine {
    qint64 number = 0;
    QDateTime at;
    QString who;
    QString sentence;
    bool undone = false;
};

} // namespace ts
