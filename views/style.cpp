#include "views/style.h"

#include <QApplication>
#include <QFontDatabase>
#include <QPalette>

namespace ts {

const Ink &ink()
{
    static const Ink colours;
    return colours;
}

void applyStyle(QApplication &application)
{
    const Ink &c = ink();
    QApplication::setStyle(QStringLiteral("Fusion"));
    QPalette palette;
    palette.setColor(QPalette::Window, c.paper);
    palette.setColor(QPalette::WindowText, c.ink);
    palette.setColor(QPalette::Base, c.sheet);
    palette.setColor(QPalette::AlternateBase, c.raised);
    palette.setColor(QPalette::Text, c.ink);
    palette.setColor(QPalette::Button, c.raised);
    palette.setColor(QPalette::ButtonText, c.ink);
    palette.setColor(QPalette::PlaceholderText, c.quiet);
    palette.setColor(QPalette::Highlight, c.copper);
    palette.setColor(QPalette::HighlightedText, c.sheet);
    QApplication::setPalette(palette);
    if (QFontDatabase::families().contains(QStringLiteral("Inter")))
        QApplication::setFont(QFont(QStringLiteral("Inter"), QApplication::font().pointSize()));
    application.setStyleSheet(QStringLiteral("QListView { background: %1; border: none; } QListView::item { padding: 6px; border-bottom: 1px solid %2; }"
                                             "QListView::item:selected { background: %3; color: %4; border-left: 3px solid %5; }"
                                             "QTextBrowser { border: none; } QLineEdit { padding: 7px; border: 1px solid %2; border-radius: 6px; }"
                                             "QLineEdit:focus { border: 2px solid %5; }")
                                  .arg(c.rack.name(), c.line.name(), c.sheet.name(), c.ink.name(), c.copper.name()));
}

} // namespace ts
