#pragma once

#include "views/workplace.h"

#include <QLineEdit>

namespace ts {

/// A field for a tag, typed, scanned, or completed from a unit's name; Enter chooses. What is no unit is refused.
class UnitField : public QLineEdit {
    Q_OBJECT
public:
    /// `label` says what the unit is wanted for; it is the accessible name.
    UnitField(Workplace &workplace, const QString &label, QWidget *parent = nullptr);

Q_SIGNALS:
    void chosen(const ts::Id<ts::Unit> &unit);

protected:
    void focusInEvent(QFocusEvent *event) override;

private:
    void choose();

    Workplace &m_work;
};

} // namespace ts
