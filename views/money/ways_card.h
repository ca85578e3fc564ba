#pragma once

#include "model/records/decision.h"
#include "views/widgets/card.h"
#include "views/workplace.h"

class QLineEdit;
class QPushButton;

namespace ts {

class FiguresList;
struct WaysOut;

/// From here on: the ways out side by side, why one leads and when that would change; the choice is recorded with its figures.
class WaysCard : public Card {
    Q_OBJECT
public:
    explicit WaysCard(Workplace &workplace, QWidget *parent = nullptr);
    void refresh(); ///< from the answer of the money in hand
    void focusWays();

private:
    void showWays(const WaysOut &ways);
    void showChoice();
    void showDecided();
    void decideNow();
    [[nodiscard]] std::optional<WayOut> chosen() const;

    Workplace &m_work;
    QLabel *m_due;
    FiguresList *m_list;
    QLabel *m_why;
    QLineEdit *m_because;
    QPushButton *m_decide;
    QLabel *m_decided;
    Id<Unit> m_of; ///< whose ways are shown
};

} // namespace ts
