#pragma once

#include "model/records/batch.h"
#include "views/workplace.h"

#include <QWidget>

class QLabel;
class QLineEdit;
class QPushButton;
class QTimer;

namespace ts {

class Card;
class GridView;
struct GridRow;

/// What lies on the shelf: found by what it is rated for, with the attributes and the batches of the part in hand.
class ShelfPane : public QWidget {
    Q_OBJECT
public:
    explicit ShelfPane(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    void focusFirst();
    void commitEdits();

private:
    void show();
    void showPart();
    [[nodiscard]] const Part *current() const;
    std::optional<QUuid> commitPart(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> commitRating(const GridRow &row, const QString &typed);
    std::optional<QUuid> commitBatch(const GridRow &row, int column, const QString &typed);
    void removePart(const QUuid &key);
    void removeBatch(const QUuid &key);

    Workplace &m_work;
    QList<Part> m_parts;
    QList<Batch> m_batches;
    QHash<Id<Unit>, int> m_donors;
    QLineEdit *m_find;
    QLabel *m_understood;
    QPushButton *m_short;
    QTimer *m_pause;
    GridView *m_list;
    Card *m_card;
    GridView *m_rating;
    GridView *m_batchTable;
};

} // namespace ts
