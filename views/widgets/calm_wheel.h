#pragma once

#include <QObject>

namespace ts {

/// Lets the wheel scroll the page under the pointer, and turn a choice or a figure over only where it has the keyboard: installed on
/// the program, it keeps a page that is scrolled from changing what it passes.
class CalmWheel : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;
};

} // namespace ts
