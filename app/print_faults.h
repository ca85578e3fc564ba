#pragma once

#include "model/records/unit_file.h"

#include <QTextStream>

namespace ts {

/// What is known of the faults of a unit: each open symptom's causes with their likelihoods, and what to check next.
void printFaults(QTextStream &out, const UnitFile &file, const BenchFile &bench);

} // namespace ts
