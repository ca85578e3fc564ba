#pragma once

#include "model/records/unit_file.h"

#include <QJsonObject>

namespace ts {

/// Adds symptoms, causes with their likelihoods, checks, and what to check next (best first, over all open symptoms).
void insertFaultFinding(QJsonObject &document, const UnitFile &file, const BenchFile &bench);

} // namespace ts
