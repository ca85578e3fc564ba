#pragma once

#include "model/values/expected.h"

#include <QList>

namespace ts {

/// Numbers out of one line: separated by commas, semicolons or spaces, with decimal points. Refuses what is no number, naming it.
[[nodiscard]] Expected<QList<double>> numbersOf(const QString &text);

/// One column of a CSV file (comma, semicolon or tab; UTF-8; a header line if its first cell of the column is no number). With
/// several columns that of the given name, else the one called y or value. Refuses a file that cannot be read, is past 100 MB or
/// holds NUL bytes, a missing column, and a cell that is no number, naming its line.
[[nodiscard]] Expected<QList<double>> numbersInFile(const QString &path, const QString &column = {});

} // namespace ts
