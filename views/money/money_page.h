#pragma once

#include "views/unit/page.h"

class QLabel;
class QTableView;

namespace ts {

class Card;
class ComparablesCard;
class CostModel;
class SharesBar;

/// Cost against resale.
class MoneyPage : public Page {
    Q_OBJECT
public:
    explicit MoneyPage(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

protected:
    void refresh() override;

private:
    void fitTable();

    CostModel *m_costs;
    QTableView *m_table;
    QLabel *m_remarks;
    ComparablesCard *m_comparables;
    Card *m_sharesCard;
    SharesBar *m_shares;
};

} // namespace ts
