#pragma once

#include "model/faults/check_next.h"
#include "views/widgets/card.h"

class QVBoxLayout;

namespace ts {

/// What to do next on a board, best first, each with what it is expected to save and what it would leave.
class NextCard : public Card {
    Q_OBJECT
public:
    explicit NextCard(QWidget *parent = nullptr);
    /// Of safety steps the first alone, with how many follow: what comes after it is no matter before it is done. `answers` says
    /// whether it can be said here that it is.
    void show(const CheckNext &next, bool answers);
    void showWaiting();                        ///< while a large board is being worked out
    void showNothing(const QString &why);      ///< there is nothing left to find, or nothing to go by
    [[nodiscard]] QStringList shown() const { return m_shown; } ///< the moves as they stand there

Q_SIGNALS:
    void chosen(const ts::NextMove &move); ///< somebody wants to do it
    void safetyAnswered(const QString &step, bool inOrder);

private:
    void clear();
    QWidget *moveCard(const NextMove &move, bool first);
    QWidget *safetyCard(const QList<NextMove> &steps, bool answers);

    QVBoxLayout *m_moves;
    QLabel *m_below;
    QStringList m_shown;
};

} // namespace ts
