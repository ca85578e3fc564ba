#pragma once

#include "model/exchange/year_records.h"

class QIODevice;

namespace ts {

/// The year's movements of money as CSV (RFC 4180), each cell defused; answers how many.
[[nodiscard]] Expected<qint64> writeYearCsv(QIODevice &device, const YearBooks &books);

/// The year's books as a spreadsheet (Office Open XML, ISO/IEC 29500): movements, stock book and a cost sheet a row, with live formulas for
/// sums, margin and earnings, so that a figure can be changed and followed. What people typed is written as text and never as a formula.
[[nodiscard]] Expected<QByteArray> yearSpreadsheet(const YearBooks &books, const QList<UnitCosts> &costs, const QString &bench);

} // namespace ts
