#pragma once

// One page of a unit on the bench, opened in a real window over a fresh workbook.
#include "tests/window_under_test.h"
#include "views/widgets/notice_bar.h"

#include <QPushButton>

namespace ts::testing {

template <class P>
struct PageUnderTest {
    OpenDesk desk;
    Unit unit;
    std::unique_ptr<WindowUnderTest> window;
    P *page = nullptr;

    PageUnderTest(const QString &book, PageKey key)
    {
        wantOk(desk.create(book));
        unit = benchUnit(*desk, QStringLiteral("Pellworth KD-7"));
        window = std::make_unique<WindowUnderTest>(*desk);
        window->work().takeInHand(unit.id);
        page = window->open<P>(key);
    }
    [[nodiscard]] const UnitFile &file() const { return window->work().file(); }
    template <class R>
    [[nodiscard]] const QList<R> &all() const
    {
        return file().template all<R>();
    }
    [[nodiscard]] QString notice() const { return window->workspace().notice()->text(); }

    /// The button of that word that can be seen; what was just put up is shown by the event loop.
    [[nodiscard]] static QPushButton *button(QWidget *on, const QString &word)
    {
        QCoreApplication::processEvents();
        for (auto *each : on->findChildren<QPushButton *>())
            if (each->isVisible() && each->text() == word)
                return each;
        return nullptr;
    }
};

} // namespace ts::testing
