#pragma once

#include "model/sums/point_rows.h"
#include "views/widgets/card.h"

namespace ts {

class LimitPicture;
class Style;

/// One test point: its newest reading against what is wanted, drawn and in a sentence with the chance of being within.
class LimitCard : public Card {
    Q_OBJECT
public:
    explicit LimitCard(const Style &style, QWidget *parent = nullptr);
    void show(const PointRow *point, const BenchFile &bench);
    [[nodiscard]] QString sentence() const;

private:
    LimitPicture *m_picture;
    QLabel *m_figures;
    QLabel *m_sentence;
    QLabel *m_budget; ///< where the uncertainty comes from
};

/// What is to be said of a place: how likely it is really within, what would settle it, or what is missing to say so.
[[nodiscard]] QString limitSentence(const PointRow &point, const BenchFile &bench);

} // namespace ts
