#pragma once

#include "views/workplace.h"

#include <functional>

class QLineEdit;

namespace ts {

class AnswersBar;
class RunningClock;

/// Offers to note where a unit was left off when it is put down, or the program is closed, with something loose or its clock running.
/// Only where something was recorded of it since it was taken in hand: looking through the rack asks nothing.
class LeavingBar : public QObject {
    Q_OBJECT
public:
    LeavingBar(Workplace &workplace, RunningClock &clock, QWidget *parent);
    [[nodiscard]] AnswersBar *bar() const { return m_bar; }

    /// Whether the window may close at once. Else it is asked once, and `close` is called after the answer.
    [[nodiscard]] bool mayClose(std::function<void()> close);

private:
    [[nodiscard]] bool worthAsking() const;
    void ask(const UnitFile &file, std::function<void()> after);
    void note(const Id<Unit> &unit);

    Workplace &m_work;
    RunningClock &m_clock;
    AnswersBar *m_bar;
    QLineEdit *m_next;
    bool m_touched = false; ///< something was recorded of the unit in hand
    bool m_noted = false;   ///< and where it was left off, too
    bool m_asked = false;   ///< while closing
};

} // namespace ts
