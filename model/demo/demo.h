#pragma once

#include "model/desk/desk.h"

namespace ts {

/// Plays the demo workbook's story into an empty workbook: each line of it is jotted, drawn or recorded at its own instant, through
/// the same parts as when a person does it. `clock` is the one the desk's ids are made with; it is set forward from 28
/// September to 25 November 2026. With an IdMaker of one seed the same workbook comes out each time. A line that is not
/// understood as the story says is refused by its file and text, and so is a stop asked for through `progress`.
Expected<void> playDemo(Desk &desk, SetClock &clock, const Progress &progress = {});

/// Fills a workbook with that many invented units of all kinds and stages, about 50 records each, for measuring; the same for
/// the same seed. Built straight as records, in changes of some hundred units.
Expected<void> makeBulk(Desk &desk, SetClock &clock, int units, quint32 seed, const Progress &progress = {});

} // namespace ts
