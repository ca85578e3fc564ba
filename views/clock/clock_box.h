#pragma once

#include "views/workplace.h"

#include <QFrame>

namespace ts {

/// The stopwatch that turns bench time into hours: which unit it runs for, since when, and the button that starts and stops it.
class ClockBox : public QFrame {
    Q_OBJECT
public:
    explicit ClockBox(Workplace &workplace, QWidget *parent = nullptr);
    void toggle(); ///< starts for the unit in hand, or stops

private:
    Workplace &m_work;
};

} // namespace ts
