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
inline const auto terms = QStringLiteral("terms");                ///< printed on the restoration sheet
inline const auto paperSize = QStringLiteral("paper_size");       ///< A4 or Letter

} // namespace ts::settings
