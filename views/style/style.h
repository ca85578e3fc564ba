#pragma once

#include "views/style/ink.h"

#include <QFont>
#include <QIcon>
#include <QObject>

class QApplication;

namespace ts {

/// The one place for how the screen looks: colours, type, distances, icons, and the style sheet made of them.
/// Made by the application before its first window; whoever paints gets it handed.
class Style : public QObject {
    Q_OBJECT
public:
    /// Looks at the application's palette and font as the system gave them.
    explicit Style(QApplication &application);

    [[nodiscard]] const Ink &ink() const { return m_ink; }
    [[nodiscard]] bool isDark() const { return m_dark; }
    [[nodiscard]] Scheme scheme() const { return m_scheme; }
    void setScheme(Scheme scheme);
    /// 100 is the size of the system's font; 80 to 200.
    [[nodiscard]] int textPercent() const { return m_textPercent; }
    void setTextPercent(int percent);
    /// For reading at arm's length: the log's line, the next test point and the clock are set twice as large.
    [[nodiscard]] bool largeType() const { return m_largeType; }
    void setLargeType(bool large);
    /// What the type of those three is multiplied by: 1 or 2. In the style sheet it is in @bench:1.05@.
    [[nodiscard]] double benchScale() const { return m_largeType ? 2.0 : 1.0; }

    // Type. Sizes are relative to the running text.
    [[nodiscard]] QFont text(double relative = 1.0, QFont::Weight weight = QFont::Normal) const;
    [[nodiscard]] QFont figures(double relative = 1.0) const; ///< fixed width, for readings and tags

    // Distances in pixels, growing with the text.
    [[nodiscard]] int space(double steps = 1.0) const; ///< one step is a quarter of a line
    [[nodiscard]] int radius() const { return 6; }

    /// An icon of the installed icon theme by its freedesktop name ("edit-undo"), in the scheme's own shade.
    [[nodiscard]] QIcon icon(const QString &name) const;

Q_SIGNALS:
    void changed(); ///< colours or sizes; everything that paints by itself should update

private:
    void apply();
    [[nodiscard]] QString sheet() const;

    QApplication &m_application;
    QFont m_system;
    bool m_systemIsDark = false;
    Scheme m_scheme = Scheme::FollowSystem;
    bool m_dark = false;
    int m_textPercent = 100;
    bool m_largeType = false;
    Ink m_ink;
};

/// Margins and distances of whole layouts, so that no view invents its own.
namespace gap {
inline constexpr int tight = 4;
inline constexpr int small = 8;
inline constexpr int normal = 12;
inline constexpr int wide = 18;
} // namespace gap

} // namespace ts
