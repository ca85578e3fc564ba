#pragma once

#include "views/workplace.h"

#include <QWidget>

namespace ts {

/// Takes a unit in: one short page, name and category enough.
class TakeInPage : public QWidget {
    Q_OBJECT
public:
    explicit TakeInPage(Workplace &workplace, QWidget *parent = nullptr);
    void begin(); ///< empties the page and takes the keyboard

Q_SIGNALS:
    void done(); ///< taken in, or left without

private:
    Workplace &m_work;
};

} // namespace ts
