#pragma once

#include "views/workplace.h"

#include <QChart>
#include <QWidget>

class QChartView;
class QCategoryAxis;
class QLabel;
class QLineSeries;
class QPushButton;
class QValueAxis;

namespace ts {

/// Hours and money over time, slim, above the log; it can be folded away to its one line of sums.
class LogChart : public QWidget {
    Q_OBJECT
public:
    explicit LogChart(Workplace &workplace, QWidget *parent = nullptr);

    void refresh();
    [[nodiscard]] bool isFolded() const { return m_folded; }
    void setFolded(bool folded);
    /// Where nobody chose, it is folded in a page so low that the entries need the room.
    void fitInto(int height);
    [[nodiscard]] QByteArray state() const; ///< what was chosen, to be remembered
    void restore(const QByteArray &state);
    [[nodiscard]] QPushButton *foldButton() const { return m_fold; }
    /// What is drawn: step lines of the points (milliseconds since the epoch, hours or money).
    [[nodiscard]] QList<QPointF> hours() const { return m_hours; }
    [[nodiscard]] QList<QPointF> money() const { return m_money; }

private:
    void makeChart();
    void draw();
    void colour();

    Workplace &m_work;
    QPushButton *m_fold;
    QLabel *m_sums;
    QWidget *m_place;
    QChart *m_chart = nullptr; ///< made when it is first seen
    QLineSeries *m_hourLine = nullptr;
    QLineSeries *m_moneyLine = nullptr;
    QCategoryAxis *m_timeAxis = nullptr;
    QValueAxis *m_hourAxis = nullptr;
    QValueAxis *m_moneyAxis = nullptr;
    QList<QPointF> m_hours;
    QList<QPointF> m_money;
    bool m_folded = false;
    bool m_chosen = false;
    bool m_drawWaits = false;
};

} // namespace ts
