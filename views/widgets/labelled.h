#pragma once

#include <QString>

class QLayout;
class QWidget;

namespace ts {

/// A label over its field, close enough to be seen as one; the label is the field's buddy and its accessible name. `role` is the label's
/// in the style sheet.
[[nodiscard]] QWidget *labelled(const QString &label, QWidget *field, QWidget *parent, const char *role = "faint");
/// The same where the field stands in a row with something beside it.
[[nodiscard]] QWidget *labelled(const QString &label, QWidget *field, QLayout *row, QWidget *parent, const char *role = "faint");

} // namespace ts
