#pragma once

#include "views/workplace.h"

class QWidget;

namespace ts {

/// The widget of a place beside the units; whoever asks owns it.
[[nodiscard]] QWidget *makePlace(PlaceKey place, Workplace &workplace);

} // namespace ts
