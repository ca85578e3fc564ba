#pragma once

#include "model/records/batch.h"
#include "model/records/bearing.h"
#include "model/records/cause.h"
#include "model/records/channel.h"
#include "model/records/check.h"
#include "model/records/clock_span.h"
#include "model/records/comparable.h"
#include "model/records/contact.h"
#include "model/records/decision.h"
#include "model/records/fee_rule.h"
#include "model/records/known_cause.h"
#include "model/records/known_check.h"
#include "model/records/known_mark.h"
#include "model/records/known_paper.h"
#include "model/records/known_part.h"
#include "model/records/known_proof.h"
#include "model/records/known_teardown.h"
#include "model/records/left_off.h"
#include "model/records/lot.h"
#include "model/records/meter.h"
#include "model/records/meter_range.h"
#include "model/records/model_notes.h"
#include "model/records/need.h"
#include "model/records/note.h"
#include "model/records/paper.h"
#include "model/records/part.h"
#include "model/records/photo.h"
#include "model/records/photo_pin.h"
#include "model/records/plan.h"
#include "model/records/proof.h"
#include "model/records/reading.h"
#include "model/records/rung.h"
#include "model/records/setting.h"
#include "model/records/soak.h"
#include "model/records/source_record.h"
#include "model/records/spend.h"
#include "model/records/stage_move.h"
#include "model/records/step.h"
#include "model/records/symptom.h"
#include "model/records/teardown_item.h"
#include "model/records/test_point.h"
#include "model/records/unit.h"

#include <tuple>

/// Every record kind, once, in an order in which references point backwards. A new kind is a line here.
#define TS_RECORDS(X) \
    X(Contact) \
    X(Lot) \
    X(Channel) \
    X(Unit) \
    X(StageMove) \
    X(SourceRecord) \
    X(Symptom) \
    X(Cause) \
    X(Check) \
    X(Bearing) \
    X(ModelNotes) \
    X(KnownCause) \
    X(KnownCheck) \
    X(KnownMark) \
    X(KnownTeardown) \
    X(KnownPart) \
    X(KnownProof) \
    X(KnownPaper) \
    X(TestPoint) \
    X(Meter) \
    X(MeterRange) \
    X(Soak) \
    X(Reading) \
    X(Step) \
    X(ClockSpan) \
    X(Photo) \
    X(TeardownItem) \
    X(PhotoPin) \
    X(Part) \
    X(Batch) \
    X(Need) \
    X(Spend) \
    X(FeeRule) \
    X(Comparable) \
    X(Plan) \
    X(Proof) \
    X(Rung) \
    X(Paper) \
    X(LeftOff) \
    X(Decision) \
    X(Note) \
    X(Setting)

namespace ts {

/// The descriptions of all kinds, in the order above.
[[nodiscard]] const QList<const Kind *> &allKinds();
/// The kind of a table's name, or nullptr.
[[nodiscard]] const Kind *kindNamed(QStringView table);

} // namespace ts
