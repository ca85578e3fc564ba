#pragma once

// A grid driven by keys, as at the bench.
#include "views/widgets/grid_view.h"

#include <QApplication>
#include <QLineEdit>
#include <QtTest>

namespace ts::testing {

/// Types into whatever has the keyboard, one key after the other.
inline void type(const QString &text)
{
    for (const QChar c : text)
        QTest::keyClick(QApplication::focusWidget(), c.toLatin1() ? c.toLatin1() : 'u');
}

inline void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier)
{
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
}

/// Gives the grid the keyboard, with that cell current.
inline void stand(GridView *grid, int row, int column)
{
    grid->setFocus();
    grid->setCurrentIndex(grid->rows().index(row, column));
}

/// The row whose first cell reads so, or -1.
inline int rowReading(const GridView *grid, const QString &text, int column = 0)
{
    for (int row = 0; row < grid->rows().rowCount(); ++row)
        if (grid->rows().index(row, column).data().toString() == text)
            return row;
    return -1;
}

inline QString reads(const GridView *grid, int row, int column)
{
    return row < 0 ? QStringLiteral("no such row") : grid->rows().index(row, column).data().toString();
}

/// The field in which somebody types, or nullptr.
inline QLineEdit *openField()
{
    return qobject_cast<QLineEdit *>(QApplication::focusWidget());
}

} // namespace ts::testing
