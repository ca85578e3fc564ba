#pragma once

#include "model/jot/tried.h"
#include "views/workplace.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace ts {

class Card;
class Pill;
class PowerAids;
class TriedGrid;

/// The ladder before and at first power of the unit in hand, step by step.
class FirstPowerView : public QWidget {
    Q_OBJECT
public:
    explicit FirstPowerView(Workplace &workplace, QWidget *parent = nullptr);

    void refresh();
    void focusFirst(); ///< onto the first step that is open
    void reveal(PowerStep step);
    void commitEdits();
    [[nodiscard]] TriedGrid *table() const { return m_table; }
    [[nodiscard]] QPushButton *safeButton() const { return m_safe; }
    [[nodiscard]] QString flagText() const; ///< why it must not be powered, as it is shown; empty where nothing says so

private:
    bool record(const QUuid &row, Said said, const QString &typed);
    void lift();

    Workplace &m_work;
    TriedGrid *m_table;
    Pill *m_verdict;
    QLabel *m_count;
    Card *m_flag;
    QLabel *m_why;
    QPushButton *m_safe;
    QLabel *m_none;
    PowerAids *m_aids;
};

} // namespace ts
