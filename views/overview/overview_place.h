#pragma once

#include "views/overview/overview_pictures.h"
#include "views/places/place.h"

class QLabel;
class QStackedWidget;
class QTreeWidget;

QT_BEGIN_NAMESPACE
class QChartView;
QT_END_NAMESPACE

namespace ts {

class Card;
class PageTabs;

/// How the bench does as a whole: money tied up, earned per hour, hours, causes, days to the sale, profit by month; each as a chart and as
/// its table.
class OverviewPlace : public Place {
    Q_OBJECT
public:
    explicit OverviewPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;

private:
    void show(const Overviews &overviews);
    void showPicture();
    void draw(const OverviewPicture &picture);
    void list(const OverviewPicture &picture);

    QLabel *m_sum;
    PageTabs *m_tabs;
    Card *m_chartCard;
    QLabel *m_says;
    QStackedWidget *m_drawn; ///< the chart, or why there is none
    QChartView *m_chart;
    QLabel *m_empty;
    QTreeWidget *m_table;
    QList<OverviewPicture> m_pictures;
    int m_generation = 0; ///< late answers of an earlier reading are dropped
};

} // namespace ts
