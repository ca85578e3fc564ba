#pragma once

#include "views/workplace.h"

#include <QWidget>

class QHBoxLayout;
class QPushButton;

namespace ts {

/// The stages from scouted to closed, the unit's own marked; a click moves the unit there and asks only what that stage needs.
class StageRibbon : public QWidget {
    Q_OBJECT
public:
    explicit StageRibbon(Workplace &workplace, QWidget *parent = nullptr);

private:
    void refresh();
    void moveTo(Stage stage);

    Workplace &m_work;
    QList<QPushButton *> m_stages;
};

} // namespace ts
