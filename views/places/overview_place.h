#pragma once

#include "views/places/place.h"

class QLabel;
class QTreeWidget;

QT_BEGIN_NAMESPACE
class QChartView;
QT_END_NAMESPACE

namespace ts {

class Card;

/// How the bench does as a whole: units, money tied up and hours by stage, as a chart and as its table.
class OverviewPlace : public Place {
    Q_OBJECT
public:
    explicit OverviewPlace(Workplace &workplace, QWidget *parent = nullptr);
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;

private:
    struct Row {
        int units = 0;
        Money spent;
        qint64 minutes = 0;
        qint64 oldestDays = 0;
    };
    void draw(const QMap<Stage, Row> &rows);

    QLabel *m_sum;
    Card *m_chartCard;
    QChartView *m_chart;
    QTreeWidget *m_table;
};

} // namespace ts
