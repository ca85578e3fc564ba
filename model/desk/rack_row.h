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
};

/// Which part of the rack, in what order: what is worked on first (bench, held, proving, ready, offered, shelved, inbound,
/// scouted, closed), newest move first within a stage.
struct RackQuery {
    int offset = 0;
    int limit = -1; ///< all
    std::optional<Stage> stage;
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
