#pragma once

// A real window over a real workbook, for tests that drive it as a person would.
#include "tests/workbooks.h"
#include "views/frame/main_window.h"
#include "views/frame/workspace.h"
#include "views/settings/memory.h"
#include "views/style/style.h"
#include "views/unit/unit_pane.h"

#include <QApplication>
#include <QPushButton>
#include <QTemporaryDir>
#include <QtTest>

namespace ts::testing {

/// The workspace of an open desk, shown, with a style of its own.
class WindowUnderTest {
public:
    /// `memory`: what this computer remembers, if anything. `again` opens the same workbook a second time, for work beside the window.
    explicit WindowUnderTest(Desk &desk, Memory *memory = nullptr, LongWork::OpenDesk again = {})
        : m_style(*qobject_cast<QApplication *>(QCoreApplication::instance())), m_workspace(desk, m_style, std::move(again))
    {
        m_workspace.work().setMemory(memory);
        m_workspace.resize(1440, 900);
        m_workspace.show();
        [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&m_workspace);
    }
    [[nodiscard]] Workspace &workspace() { return m_workspace; }
    [[nodiscard]] Workplace &work() { return m_workspace.work(); }
    [[nodiscard]] Style &style() { return m_style; }
    /// A page of the unit, opened and of its own class.
    template <class P>
    [[nodiscard]] P *open(PageKey key)
    {
        m_workspace.unitPane()->showPage(key);
        return qobject_cast<P *>(m_workspace.unitPane()->page(key));
    }

private:
    Style m_style;
    Workspace m_workspace;
};

/// A unit with this name on the bench, in hand of nobody yet.
inline Unit benchUnit(Desk &desk, const QString &name, Category category = Category::CassetteDeck)
{
    Unit unit = desk.maker().fresh<Unit>();
    unit.name = name;
    unit.category = category;
    unit.stage = Stage::Bench;
    unit.stageSince = unit.at;
    const auto applied = desk.apply(Change(QStringLiteral("Unit")).add(unit));
    return applied ? desk.get(unit.id).value() : unit;
}

/// The button below `root` that is seen and has these words on it, or nullptr.
inline QPushButton *buttonWith(const QWidget &root, const QString &words)
{
    for (QPushButton *each : root.findChildren<QPushButton *>())
        if (each->text().contains(words) && each->isVisible())
            return each;
    return nullptr;
}

/// Every widget below `root` that the keyboard reaches and that is seen, without an accessible name; empty where all is well.
inline QStringList unnamedControls(const QWidget &root)
{
    QStringList unnamed;
    for (const QWidget *widget : root.findChildren<QWidget *>()) {
        // Parts of a control speak through it: the viewport of a list, the field of a spin box.
        if (!(widget->focusPolicy() & Qt::TabFocus) || !widget->isVisible() || widget->objectName().startsWith(QLatin1String("qt_")))
            continue;
        if (widget->accessibleName().isEmpty())
            unnamed << QString::fromLatin1(widget->metaObject()->className()) + QLatin1Char(' ') + widget->objectName();
    }
    return unnamed;
}

} // namespace ts::testing
