#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLabel;

namespace ts {

class EditLine;
struct Standing;

/// Where the unit was left off, what comes next, what lies loose, and whether it must not be powered; each changed where it stands.
class LeftOffBox : public QFrame {
    Q_OBJECT
public:
    explicit LeftOffBox(Workplace &workplace, QWidget *parent = nullptr);
    void show(const Standing &standing);
    void commitEdits();
    [[nodiscard]] EditLine *next() const { return m_next; }

private:
    void change(const QString &sentence, QString LeftOff::*field, const QString &value);

    Workplace &m_work;
    QLabel *m_title;
    EditLine *m_where;
    EditLine *m_next;
    EditLine *m_loose;
    EditLine *m_noPower;
};

/// What lies loose, in words: "9 screws, tray A1, A3".
[[nodiscard]] QString looseWords(const UnitFile &file, const Standing &standing);
/// The change that says where a unit was left off; a new record where there is none.
[[nodiscard]] Change leftOffChange(const UnitFile &file, Maker maker, const QString &sentence, QString LeftOff::*field, const QString &value);

} // namespace ts
