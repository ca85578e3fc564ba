#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLabel;
class QVBoxLayout;

namespace ts {

class DueLine;
class LeftOffBox;
class StandLine;
struct Standing;

/// "As it stands": where the unit was left off, what is open, and what it cost so far. Every line leads to the page where it is worked on.
class StandingPane : public QFrame {
    Q_OBJECT
public:
    explicit StandingPane(Workplace &workplace, QWidget *parent = nullptr);
    [[nodiscard]] LeftOffBox *leftOff() const { return m_leftOff; }
    void commitEdits();

protected:
    void showEvent(QShowEvent *event) override;

private:
    StandLine *line(QVBoxLayout *column, const QString &label, PageKey page);
    QLabel *group(QVBoxLayout *column, const QString &name);
    void refresh();
    void showOpen(const Standing &standing);
    void showHours();
    void showCauses();
    void showMoney();
    void showCautions(const Standing &standing);

    Workplace &m_work;
    bool m_stale = true;
    LeftOffBox *m_leftOff;
    DueLine *m_due;
    StandLine *m_symptoms;
    StandLine *m_outside;
    StandLine *m_tooClose;
    StandLine *m_awaited;
    StandLine *m_proofs;
    StandLine *m_hours;
    QLabel *m_causesName;
    QList<StandLine *> m_causes;
    QLabel *m_checkNext;
    QLabel *m_moneyName;
    StandLine *m_spent;
    StandLine *m_profit;
    StandLine *m_perHour;
    StandLine *m_breakEven;
    QLabel *m_cautionsName;
    QVBoxLayout *m_cautions;
    QList<QLabel *> m_cautionLines;
};

} // namespace ts
