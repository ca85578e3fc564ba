#pragma once

#include "model/sums/soak_course.h"
#include "views/widgets/card.h"

class QComboBox;

namespace ts {

class Pill;
class SoakChart;
class Style;

/// The soaks of a unit, one at a time: how long, how often, how the value drifts, and the chart of it.
class SoakCard : public Card {
    Q_OBJECT
public:
    explicit SoakCard(const Style &style, QWidget *parent = nullptr);
    /// Hides itself where there is none.
    void show(const UnitFile &file, const QDateTime &now);
    void choose(const QUuid &soak);
    [[nodiscard]] QString facts() const;
    [[nodiscard]] QString verdict() const;

private:
    void refresh();

    QComboBox *m_which;
    QLabel *m_facts;
    Pill *m_verdict;
    SoakChart *m_chart;
    UnitFile m_file; ///< shared copies of its lists
    QDateTime m_now;
};

/// "every 10 min for 2 h 00 m, 13 readings · drift −0.4 mA/h (95 %: −1.1 to 0.3) · limit up to 90 mA".
[[nodiscard]] QString soakFacts(const Soak &soak, const SoakCourse &course, const QDateTime &now);

} // namespace ts
