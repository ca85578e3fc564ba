#pragma once

#include "views/workplace.h"

#include <QFrame>

class QButtonGroup;
class QHBoxLayout;

namespace ts {

/// The strip under the menu: take a unit in, the places, find anything, and the running clock.
class Strip : public QFrame {
    Q_OBJECT
public:
    explicit Strip(Workplace &workplace, QWidget *parent = nullptr);
    void showPlace(PlaceKey place);
    void focusFind();
    [[nodiscard]] static QString placeName(PlaceKey place);

Q_SIGNALS:
    void takeInWanted();
    void findWanted();

private:
    Workplace &m_work;
    QButtonGroup *m_places;
};

} // namespace ts
