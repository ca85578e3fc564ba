#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLabel;
class QPushButton;
class QTimer;

namespace ts {

class AnswersBar;
class RunningClock;

/// The stopwatch that turns bench time into hours: which unit it runs for, since when, and the button that starts and stops it.
class ClockBox : public QFrame {
    Q_OBJECT
public:
    explicit ClockBox(Workplace &workplace, QWidget *parent = nullptr);
    void toggle(); ///< stops the clock of the unit in hand; else starts it, and stops any other
    [[nodiscard]] RunningClock &clock() const { return *m_clock; }
    /// Where it is asked what counts of the time that nobody was there; whoever lays out the window gives it its place.
    [[nodiscard]] AnswersBar *question() const { return m_question; }

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
    void showEvent(QShowEvent *event) override;

private:
    void refresh();
    void tick();
    void pace();
    void ask();

    Workplace &m_work;
    RunningClock *m_clock;
    AnswersBar *m_question;
    QLabel *m_dot;
    QPushButton *m_time;
    QPushButton *m_button;
    QTimer *m_timer;
};

} // namespace ts
