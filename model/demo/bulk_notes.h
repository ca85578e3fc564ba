#pragma once

#include "model/demo/bulk_words.h"
#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/model_notes.h"

namespace ts {

/// What is known of one model of a bulk workbook: causes with their checks, how it comes apart, a part, a proof, a paper.
void writeKnown(Change &change, const ModelNotes &notes, Maker &maker, BulkWords &words, Dice &dice);

} // namespace ts
