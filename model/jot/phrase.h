#pragma once

#include "model/values/name_key.h"

#include <QDate>
#include <QStringList>

#include <optional>

namespace ts {

/// A text for a sentence: on one line, without marks that turn the writing direction, cut at 200 characters with "…".
[[nodiscard]] QString shown(const QString &text);
/// The same in plain quotes.
[[nodiscard]] QString inQuotes(const QString &text);
/// With its first letter big where it is a small one: "line out L" gives "Line out L". "µV", "mV" and the like stay as they are.
[[nodiscard]] QString startingBig(const QString &text);
/// The words of a text in lower case: runs of letters and digits.
[[nodiscard]] QStringList wordsOf(QStringView text);
/// The text's pieces between white space, as typed.
[[nodiscard]] QStringList pieces(const QString &text);

/// What was found at the end of a text, and what stands before it.
template <class T>
struct Taken {
    T value{};
    QString rest;
};

/// A time at the end: "20m", "20 min", "1h20", "1 h 20 m", "1.5 h", "90min". Something must stand before it. In minutes.
[[nodiscard]] std::optional<Taken<int>> takeMinutes(const QString &text);
/// The same at the beginning: "3 h on a dummy load". Something must follow; `rest` is what does.
[[nodiscard]] std::optional<Taken<int>> takeMinutesFirst(const QString &text);
/// A share at the end: "40%", "12,5 %". In hundredths of the whole, 0 to 100; more than 100 is none.
[[nodiscard]] std::optional<Taken<double>> takePercent(const QString &text);
/// What follows "because". "As" and "since" are left alone: they mean too many things.
[[nodiscard]] std::optional<Taken<QString>> takeBecause(const QString &text);

/// "20 min", "1 h 20 min".
[[nodiscard]] QString minutesText(int minutes);

/// A calendar day as written: "28 Nov", "28th November 2026", "Nov 28", "2026-11-28", "28.11.", "28.11.2026", "today",
/// "tomorrow", "Friday". Without a year it is the next such day from `today`, today included. Nothing where it is no day.
[[nodiscard]] std::optional<QDate> dateOf(const QString &text, QDate today);
/// "28 Nov", with the year where it is not the present one.
[[nodiscard]] QString dateText(QDate date, QDate today);

} // namespace ts
