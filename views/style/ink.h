#pragma once

#include <QColor>
#include <QString>

namespace ts {

enum class Scheme { FollowSystem, Light, Dark };

/// The colours of the screen, by role. Each text colour has a contrast of at least 4.5:1 on every ground that it is used on
/// (WCAG 2.1, 1.4.3), in both schemes.
struct Ink {
    QColor paper;  ///< behind everything
    QColor raised; ///< strip, heads, the line's bar
    QColor sheet;  ///< cards, tables, fields
    QColor rack;   ///< behind the tags
    QColor line;   ///< edges
    QColor strong; ///< edges of what can be pressed
    QColor ink;    ///< text
    QColor quiet;  ///< second lines
    QColor faint;  ///< headings of columns and groups
    QColor copper; ///< the one thing that is current or primary
    QColor onCopper;
    QColor copperPaper; ///< behind a current row
    QColor within, withinPaper;
    QColor outside, outsidePaper;
    QColor tooClose, tooClosePaper;
    QColor neutral, neutralPaper;
    QColor hint, hintPaper; ///< a suggestion: "saves 18 min"
    QColor bar;             ///< ground of a bar
    QColor passed;          ///< stages gone by

    bool operator==(const Ink &) const = default;
};

[[nodiscard]] Ink lightInk();
[[nodiscard]] Ink darkInk();
/// The colours by name, for the style sheet: "paper", "within_paper" …; an unknown name gives an invalid colour.
[[nodiscard]] QColor inkNamed(const Ink &ink, const QString &name);

} // namespace ts
