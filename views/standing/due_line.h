#pragma once

#include "views/workplace.h"

#include <QAbstractButton>

class QTimer;

namespace ts {

/// "Worth a look: a new part; finish and sell brings £80 from here." Seen while the ways out should be looked at again, and gone when a
/// decision is recorded. Pressed, it goes to the Money page.
class DueLine : public QAbstractButton {
    Q_OBJECT
public:
    explicit DueLine(Workplace &workplace, QWidget *parent = nullptr);
    void refresh(); ///< looks whether the question is due, now

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    void enterEvent(QEnterEvent *event) override;
    void leaveEvent(QEvent *event) override;

private:
    [[nodiscard]] QRect textRect(int width) const;

    Workplace &m_work;
    QTimer *m_eachMinute;
};

} // namespace ts
