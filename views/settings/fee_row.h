#pragma once

#include "views/workplace.h"

#include <QObject>

class QComboBox;
class QGridLayout;
class QLineEdit;

namespace ts {

/// One fee rule as a row of fields: what for, percent, of what, fixed part, tier, at most, and the days between which it holds.
class FeeRow : public QObject {
    Q_OBJECT
public:
    FeeRow(Workplace &workplace, const FeeRule &rule, QGridLayout *grid, int row);
    static void addHeadings(QGridLayout *grid, int row, QWidget *parent);
    void commit();

private:
    [[nodiscard]] Expected<FeeRule> typed() const;

    Workplace &m_work;
    FeeRule m_rule;
    QLineEdit *m_name;
    QLineEdit *m_percent;
    QComboBox *m_base;
    QLineEdit *m_fixed;
    QLineEdit *m_from;
    QLineEdit *m_to;
    QLineEdit *m_cap;
    QLineEdit *m_since;
    QLineEdit *m_until;
};

} // namespace ts
