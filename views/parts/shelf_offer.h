#pragma once

#include "model/records/need.h"
#include "views/widgets/card.h"
#include "views/workplace.h"

namespace ts {

class GridView;

/// What of the shelf would fit the need that is in hand, and the offer to take it.
class ShelfOffer : public Card {
    Q_OBJECT
public:
    explicit ShelfOffer(Workplace &workplace, QWidget *parent = nullptr);
    /// Shows it for a need; nullptr, or one that is here or fitted: it is hidden.
    void showFor(const Need *need);
    [[nodiscard]] GridView *table() const { return m_table; }

private:
    void take(const QUuid &part);
    bool read();

    Workplace &m_work;
    GridView *m_table;
    std::optional<Need> m_need;
    QList<Part> m_parts;
    QList<Batch> m_batches;
    bool m_stale = true;
};

} // namespace ts
