#pragma once

#include "model/money/forecast_rests.h"
#include "model/worth/money_asked.h"
#include "views/widgets/background.h"

#include <optional>

namespace ts {

class Workplace;

/// The money of the unit in hand, worked out beside the window: forecast, ways out, highest bid. Whoever shows it asks here, so that
/// all show the same figures. One a window; the Workplace has it.
class MoneyInHand : public QObject {
    Q_OBJECT
public:
    explicit MoneyInHand(Workplace &workplace);

    /// Has it worked out from what is recorded, where it is not yet; answered() follows in time. A plan that was tried is left.
    void want();
    /// The same with a plan that is only being typed. Nothing is recorded.
    void wantWith(const Plan &plan);

    /// The latest answer of the unit in hand, or nullptr; until answered() comes it may be older than what is recorded.
    [[nodiscard]] const UnitMoney *answer() const { return m_answer ? &m_answer->money : nullptr; }
    [[nodiscard]] QList<ForecastRest> rests() const { return m_answer ? m_answer->rests : QList<ForecastRest>(); }
    /// What the answer was worked out from.
    [[nodiscard]] const MoneyQuestion *question() const { return m_answer ? &m_answer->question : nullptr; }
    [[nodiscard]] bool isTrial() const { return m_trial; } ///< the answer is of a plan that is being typed
    [[nodiscard]] bool isFresh() const { return m_fresh; } ///< the answer is of what is recorded now
    /// Comparables of like units, as far as they are read.
    [[nodiscard]] QList<Comparable> others() const { return m_around ? m_around->others : QList<Comparable>(); }

Q_SIGNALS:
    void answered();

private:
    struct Answer {
        MoneyQuestion question;
        UnitMoney money;
        QList<ForecastRest> rests;
    };
    void changed(const QString &kind, const QUuid &unit);
    void forget();
    void ask(const UnitFile &file, bool trial);
    void take(quint64 generation, const Expected<Answer> &answer, bool trial);

    Workplace &m_work;
    Background m_beside;
    std::optional<Answer> m_answer;
    std::optional<MoneyAround> m_around; ///< of the unit in hand's model and category
    quint64 m_generation = 0;            ///< of the latest question: an answer to an earlier one is dropped
    bool m_asking = false;               ///< the latest question is of what is recorded now, and not answered
    bool m_trial = false;
    bool m_fresh = false;
};

} // namespace ts
