#pragma once

#include "views/unit/page.h"

class QLabel;
class QPushButton;
class QStackedWidget;

namespace ts {

class Card;
class EmptyPlace;
class FirstPowerView;
class GridView;
class PageTabs;
class SafetyView;
struct GridRow;

/// What is tried before the unit is handed over: its acceptance list with how each line came out. Beside it the ladder of first power and
/// the electrical safety test.
class ProvingPage : public Page {
    Q_OBJECT
public:
    explicit ProvingPage(Workplace &workplace, QWidget *parent = nullptr);

    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;
    [[nodiscard]] GridView *table() const { return m_table; }
    enum class Part { Acceptance, FirstPower, Safety };
    void showPart(Part part);
    [[nodiscard]] FirstPowerView *firstPower() const { return m_firstPower; }
    [[nodiscard]] SafetyView *safety() const { return m_safety; }
    [[nodiscard]] QString keysLine() const; ///< under the table, as it is shown
    [[nodiscard]] QString inTheWayText() const; ///< what keeps the unit from being ready, as it is shown; empty where nothing does

protected:
    void refresh() override;

private:
    [[nodiscard]] QWidget *makeList();
    [[nodiscard]] static QString keysText(); ///< which keys say what
    std::optional<QUuid> commit(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> add(const QString &kind, const QString &typed);
    std::optional<QUuid> setOutcome(const Proof &before, const QString &word);
    void afterLetter(const QUuid &row, const QString &word);
    void bringIn();
    void remove(const QUuid &key);

    PageTabs *m_parts;
    QStackedWidget *m_shown; ///< in the order of Part
    FirstPowerView *m_firstPower;
    SafetyView *m_safety;
    QStackedWidget *m_whole; ///< the list, or what to do where there is none
    EmptyPlace *m_none;
    GridView *m_table;
    QLabel *m_total;
    QLabel *m_keys; ///< the keys, or what the last one did and where the place is since
    QPushButton *m_bring;
    Card *m_way;
    QLabel *m_wayText;
    Card *m_care;
    Id<Unit> m_of;
};

} // namespace ts
