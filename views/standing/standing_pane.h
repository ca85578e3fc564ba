#pragma once

#include "views/workplace.h"

#include <QFrame>

namespace ts {

/// "As it stands": where the unit was left off, what is open, and what it cost so far.
class StandingPane : public QFrame {
    Q_OBJECT
public:
    explicit StandingPane(Workplace &workplace, QWidget *parent = nullptr);

private:
    void refresh();

    Workplace &m_work;
};

} // namespace ts
