#pragma once

#include "views/unit/page.h"

class QAction;
class QLabel;
class QPushButton;

namespace ts {

class GridView;
class ShelfOffer;
struct GridRow;

/// What the unit needs and got: needed, ordered, here, fitted, with what each comes to.
class PartsPage : public Page {
    Q_OBJECT
public:
    explicit PartsPage(Workplace &workplace, QWidget *parent = nullptr);

    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;
    [[nodiscard]] GridView *table() const { return m_table; }

protected:
    void refresh() override;

private:
    std::optional<QUuid> commit(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> add(const QString &typed);
    void step(const QUuid &key, int by);
    void remove(const QUuid &key);
    void refreshSteps();

    GridView *m_table;
    QLabel *m_total;
    QAction *m_on;
    QAction *m_back;
    QPushButton *m_onButton;
    ShelfOffer *m_shelf;
};

} // namespace ts
