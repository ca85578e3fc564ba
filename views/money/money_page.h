#pragma once

#include "views/unit/page.h"

class QLabel;
class QTableView;

namespace ts {

class BidCard;
class Card;
class ComparablesCard;
class CostModel;
class ForecastCard;
class PlanFields;
class SharesBar;
class TwoColumns;
class WaysCard;
struct CostSheet;
struct Resale;

/// The money of a unit: cost against resale, what it should fetch, the forecast, the ways out; the highest bid of a scouted one.
class MoneyPage : public Page {
    Q_OBJECT
public:
    explicit MoneyPage(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

protected:
    void refresh() override;

private:
    void buildTable();
    void buildPlan();
    void layOut(TwoColumns *inside);
    void showSheet(const UnitFile &asIf, const Resale &resale, const CostSheet &sheet);
    void showAnswer();
    void typedInTable(int row, const QString &text);
    void fitTable();

    CostModel *m_costs;
    QTableView *m_table;
    QLabel *m_remarks;
    Card *m_planCard;
    PlanFields *m_plan;
    BidCard *m_bid;
    ForecastCard *m_forecast;
    WaysCard *m_ways;
    ComparablesCard *m_comparables;
    Card *m_sharesCard;
    SharesBar *m_shares;
};

} // namespace ts
