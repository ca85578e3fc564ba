#pragma once

#include "model/values/expected.h"

#include <QDate>
#include <QString>

/// What is typed in a field, read as what it stands for. Each refusal is one sentence that names the text.
namespace ts::typed {

/// A whole number from `low` to `high`; `what` names it in the sentence: "number of pieces".
[[nodiscard]] Expected<int> whole(const QString &text, const QString &what, int low, int high);
/// Nothing where nothing is typed.
[[nodiscard]] Expected<std::optional<int>> wholeOrNone(const QString &text, const QString &what, int low, int high);
/// A share from 0 to 100 %, as 0 to 1; the sign may be left out. Nothing where nothing is typed.
[[nodiscard]] Expected<std::optional<double>> shareOrNone(const QString &text, const QString &what);
/// A calendar day in the locale's short form, or as the jot line takes one ("28 Nov", "Friday", "2026-11-28"). An invalid day where
/// nothing is typed.
[[nodiscard]] Expected<QDate> dayOrNone(const QString &text, QDate today);
/// Minutes: "20", "20m", "1h20". Nothing where nothing is typed.
[[nodiscard]] Expected<std::optional<int>> minutesOrNone(const QString &text);

/// The trouble said of the field it was typed in: "Price asked: “sixty” is no amount of money …".
[[nodiscard]] Trouble inField(const QString &field, const Trouble &trouble);
/// What was read, or its trouble with the name of the field.
template <class T>
[[nodiscard]] Expected<T> inField(const QString &field, Expected<T> read)
{
    return read ? std::move(read) : Expected<T>(inField(field, read.trouble()));
}

} // namespace ts::typed
