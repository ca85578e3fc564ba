#pragma once

#include "views/widgets/card.h"
#include "views/widgets/grid_row.h"
#include "views/workplace.h"

namespace ts {

class GridView;

/// The meters of the bench, and the ranges of the one at hand with their accuracy as the data sheet says it. How sure a reading is, and
/// what would settle a close call, is worked out from them.
class MeterList : public Card {
    Q_OBJECT
public:
    explicit MeterList(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    void commitEdits();
    [[nodiscard]] GridView *meters() const { return m_meters; }
    [[nodiscard]] GridView *ranges() const { return m_ranges; }

private:
    [[nodiscard]] std::optional<QUuid> commitMeter(const GridRow &row, int column, const QString &typed);
    [[nodiscard]] std::optional<QUuid> commitRange(const GridRow &row, int column, const QString &typed);
    void removeMeter(const QUuid &key);
    void removeRange(const QUuid &key);
    void showRanges();
    [[nodiscard]] const Meter *current() const;

    Workplace &m_work;
    GridView *m_meters;
    QLabel *m_of;
    GridView *m_ranges;
};

} // namespace ts
