#pragma once

#include "views/widgets/card.h"
#include "views/workplace.h"

namespace ts {

class FiguresList;

/// What could come of the unit: profit, earned per hour, hours and days, the chance of a loss, the causes still open, and what it
/// all rests on.
class ForecastCard : public Card {
    Q_OBJECT
public:
    explicit ForecastCard(Workplace &workplace, QWidget *parent = nullptr);
    void refresh(); ///< from the answer of the money in hand, or that it is being worked out

private:
    void showFigures();
    void showCauses();

    Workplace &m_work;
    QLabel *m_none;
    QWidget *m_all;
    FiguresList *m_figures;
    QLabel *m_chances;
    FiguresList *m_causes;
    QLabel *m_rests;
    QLabel *m_record;
};

} // namespace ts
