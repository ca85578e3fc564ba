#pragma once

#include "model/sums/verdict.h"

#include <QLabel>

namespace ts {

/// How a pill is coloured; the word in it says the same.
enum class Tone { Neutral, Within, Outside, TooClose, Hint, Copper };

/// The name of a tone in the style sheet: "within".
[[nodiscard]] QString toneName(Tone tone);
[[nodiscard]] Tone toneOf(Verdict verdict);
class Style;
/// The colours of a tone, for what paints by itself.
struct ToneInk {
    QColor text;
    QColor ground;
};
[[nodiscard]] ToneInk toneInk(Tone tone, const Style &style);

/// A word on a coloured ground: "outside", "mains caution".
class Pill : public QLabel {
    Q_OBJECT
public:
    explicit Pill(const QString &word = {}, Tone tone = Tone::Neutral, QWidget *parent = nullptr);
    void show(const QString &word, Tone tone);
};

} // namespace ts
