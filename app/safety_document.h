#pragma once

#include "model/records/unit_file.h"

#include <QJsonObject>
#include <QTextStream>

namespace ts {

/// first_power {verdict, steps [{step, text, asks, stops_at, came_out, value, unit, wanted_low, wanted_high, uncertainty, saw, held_against, meter, at,
/// initials}]} and electrical_safety {rule_set, protection_class, verdict, tests [{test, text, …}]}; first_power and electrical_safety are
/// null for what takes no mains.
void insertSafety(QJsonObject &document, const UnitFile &file, const BenchFile &bench);

/// The same for a terminal; nothing where neither was begun.
void printSafety(QTextStream &out, const UnitFile &file, const BenchFile &bench);

} // namespace ts
