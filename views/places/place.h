#pragma once

#include "views/workplace.h"

#include <QWidget>

namespace ts {

/// A place beside the units. It shows what is recorded when it is opened, and again when the workbook changes while it is seen.
class Place : public QWidget {
    Q_OBJECT
public:
    explicit Place(Workplace &workplace, QWidget *parent = nullptr);
    virtual void focusFirst() { setFocus(); }
    [[nodiscard]] virtual QString help() const { return {}; } ///< what F1 says of it
    virtual void commitEdits() {}

protected:
    [[nodiscard]] Workplace &work() const { return m_work; }
    virtual void refresh() = 0;
    void showEvent(QShowEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override; ///< Esc goes back to the units

private:
    Workplace &m_work;
    bool m_stale = true;
    bool m_waiting = false;
};

} // namespace ts
