#pragma once

#include <QPushButton>

namespace ts {

/// A button in the house's form; `primary` for the one thing to do. Its accessible name is its text.
[[nodiscard]] QPushButton *button(const QString &text, QWidget *parent = nullptr);
[[nodiscard]] QPushButton *primaryButton(const QString &text, QWidget *parent = nullptr);
/// A button that looks like a word, for small offers: "Undo", "Dismiss".
[[nodiscard]] QPushButton *wordButton(const QString &text, QWidget *parent = nullptr);

} // namespace ts
