#pragma once

#include <QColor>

class QApplication;

namespace ts {

/// The one place for colours: warm paper, ink, copper for what is current, and a pair for each verdict.
struct Ink {
    QColor paper{0xf5, 0xf3, 0xee};
    QColor raised{0xfb, 0xfa, 0xf7};
    QColor sheet{0xff, 0xfd, 0xf9};
    QColor rack{0xef, 0xeb, 0xe2};
    QColor line{0xdc, 0xd7, 0xcc};
    QColor ink{0x23, 0x27, 0x2b};
    QColor quiet{0x62, 0x6a, 0x70};
    QColor copper{0xa8, 0x50, 0x2a};
    QColor within{0x21, 0x63, 0x3a};
    QColor outside{0x9b, 0x2a, 0x22};
    QColor tooClose{0x86, 0x60, 0x0d};
};

[[nodiscard]] const Ink &ink();

/// Palette, font and style sheet for the whole program.
void applyStyle(QApplication &application);

} // namespace ts
