#pragma once

#include "model/records/unit.h"

#include <QString>

/// The stages and outcomes in the words of the user's language.
namespace ts::shown {

[[nodiscard]] QString stage(Stage stage);       ///< "Bench"
[[nodiscard]] QString onStage(Stage stage);     ///< as a heading over units: "On the bench"
[[nodiscard]] QString outcome(Outcome outcome); ///< "broken for parts"

} // namespace ts::shown
