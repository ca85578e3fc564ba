#pragma once

#include "model/faults/fault_offer.h"
#include "views/widgets/card.h"
#include "views/workplace.h"

class QLayout;

namespace ts {

class FiguresList;
class PlanFields;
struct ScoutedBid;

/// The highest sensible bid for a scouted unit, on one card: three figures side by side, what they are worked out from, to be typed
/// here, the likely faults, and what it rests on most.
class BidCard : public Card {
    Q_OBJECT
public:
    explicit BidCard(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    void commitEdits();
    void focusFirst();

private:
    struct Figure {
        QLabel *label;
        QLabel *sum;
    };
    Figure figure(QLayout *row, const QString &label);
    void showBid(const ScoutedBid &bid);
    void showFaults();
    void offer(const QString &text, const FaultOffer &offer, const Id<Symptom> &of);

    Workplace &m_work;
    QWidget *m_figures;
    Figure m_bid;
    Figure m_withoutHours;
    Figure m_envelope;
    QLabel *m_why;
    PlanFields *m_fields;
    FiguresList *m_faults;
    QLabel *m_ask;
    QWidget *m_offers;
    FiguresList *m_rests;
    QLabel *m_remarks;
    QStringList m_offered; ///< the words of the offers shown, so that they are made anew only when they change
};

} // namespace ts
