#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLabel;

namespace ts {

class UnitField;

/// Above the line while entries are to be moved: to which unit.
class MoveBar : public QFrame {
    Q_OBJECT
public:
    explicit MoveBar(Workplace &workplace, QWidget *parent = nullptr);

    /// Asks where so many entries are to go.
    void ask(int entries);
    [[nodiscard]] UnitField *field() const { return m_field; }

Q_SIGNALS:
    void chosen(const ts::Id<ts::Unit> &unit);
    void closed();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QLabel *m_label;
    UnitField *m_field;
};

} // namespace ts
