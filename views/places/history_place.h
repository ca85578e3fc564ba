#pragma once

#include "views/places/place.h"

class QButtonGroup;
class QPushButton;
class QStandardItemModel;
class QTreeView;

namespace ts {

/// The journal: who did what, when, for the unit in hand or the whole workbook; what can be taken back is at the top.
class HistoryPlace : public Place {
    Q_OBJECT
public:
    explicit HistoryPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;

private:
    Id<Unit> wantedUnit() const;

    QButtonGroup *m_whose;
    QPushButton *m_undo;
    QPushButton *m_redo;
    QPushButton *m_more;
    QTreeView *m_view;
    QStandardItemModel *m_lines;
    int m_limit;
};

} // namespace ts
