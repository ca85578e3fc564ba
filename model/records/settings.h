#pragma once

#include <QString>

namespace ts::settings {

// The names of the settings that the program knows. Values are texts.
inline const auto benchName = QStringLiteral("bench_name");       ///< as printed on papers
inline const auto benchAddress = QStringLiteral("bench_address"); ///< lines
inline const auto worker = QStringLiteral("worker");              ///< initials on papers: "R. M."
inline const auto country = QStringLiteral("country");           ///< where the bench is, ISO 3166-1 alpha-3; for open repair data
inline const auto currency = QStringLiteral("currency");          ///< ISO 4217
inline const auto hourlyRate = QStringLiteral("hourly_rate");     ///< money
inline const auto overheadRate = QStringLiteral("overhead_rate"); ///< money per hour
inline const auto mains = QStringLiteral("mains");                ///< the bench's own: "230 V 50 Hz"
inline const auto channel = QStringLiteral("channel");            ///< name of the channel that break-even is worked out for
inline const auto resaleHalfLife = QStringLiteral("resale_half_life"); ///< days after which a comparable sale counts half
inline const auto looksStep = QStringLiteral("looks_step"); ///< percent of the price for a grade of looks
inline const auto returnsRate = QStringLiteral("returns_rate"); ///< percent of sales that come back
inline const auto returnsDrop = QStringLiteral("returns_drop"); ///< percent of the price that a unit that came back loses
inline const auto wantedGain = QStringLiteral("wanted_gain");   ///< money that a unit should leave beside the hours
inline const auto marginTax = QStringLiteral("margin_tax");     ///< percent on the margin of second-hand goods; unset: none
inline const auto daysToSell = QStringLiteral("days_to_sell");  ///< days from offered to sold
inline const auto benchHours = QStringLiteral("bench_hours");   ///< hours a week at the bench
inline const auto sellingMinutes = QStringLiteral("selling_minutes"); ///< minutes to offer, pack and send a unit
inline const auto capitalRate = QStringLiteral("capital_rate");       ///< percent a year that money tied up costs
inline const auto safetyRules = QStringLiteral("safety_rules");   ///< by which rule set units are tested: a word of SafetyRules
inline const auto terms = QStringLiteral("terms");                ///< printed on the restoration sheet
inline const auto faultTables = QStringLiteral("fault_tables");   ///< the owner's tables of usual causes, JSON (model/faults/starting_table.h)
inline const auto labelSize = QStringLiteral("label_size");        ///< width by height in mm: "89x36"
inline const auto bagLabelSize = QStringLiteral("bag_label_size"); ///< of the labels for small bags
inline const auto paperSize = QStringLiteral("paper_size");       ///< A4 or Letter

} // namespace ts::settings
