#pragma once

#include "model/records/taking_in.h"
#include "views/workplace.h"

class QLabel;
class QVBoxLayout;

namespace ts {

class Card;

/// What a unit brings with it by its category, plate and model: cautions, proofs and test points. Shown while it is taken in.
class TakeInBrings : public QWidget {
    Q_OBJECT
public:
    explicit TakeInBrings(Workplace &workplace, QWidget *parent = nullptr);
    void showFor(const Arrival &arrival);

private:
    Workplace &m_work;
    Card *m_mains;
    QLabel *m_mainsText;
    Card *m_cautions;
    QLabel *m_cautionText;
    Card *m_proofs;
    QLabel *m_proofText;
    QLabel *m_points;
};

} // namespace ts
