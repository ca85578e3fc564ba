#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace ts {

/// What stands where nothing is yet: what belongs there, and the one action that fills it.
class EmptyPlace : public QWidget {
    Q_OBJECT
public:
    /// Without `action` there is no button.
    explicit EmptyPlace(const QString &says, const QString &action = {}, QWidget *parent = nullptr);
    void setText(const QString &says);

Q_SIGNALS:
    void actionWanted();
};

} // namespace ts
