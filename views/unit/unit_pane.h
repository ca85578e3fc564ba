#pragma once

#include "views/unit/page.h"

class QSplitter;
class QStackedWidget;

namespace ts {

class PageTabs;
class StageRibbon;
class UnitHead;

/// The unit in hand: its head, its eight pages and its details, and "As it stands" beside those that leave room for it.
class UnitPane : public QWidget {
    Q_OBJECT
public:
    explicit UnitPane(Workplace &workplace, QWidget *parent = nullptr);

    void showPage(PageKey key);
    /// Opens the unit's details, or goes back from them to the page before.
    void toggleDetails();
    /// Moves the unit to a stage, or asks what the stage needs (unit/stage_panel.h).
    void askStage(Stage stage);
    [[nodiscard]] PageKey currentPage() const;
    [[nodiscard]] Page *page(PageKey key) const { return m_pages.at(static_cast<int>(key)); }
    [[nodiscard]] QSplitter *panes() const { return m_panes; } ///< page and "As it stands", to be remembered
    [[nodiscard]] static QString pageName(PageKey key);

Q_SIGNALS:
    void takeInWanted();

private:
    void refreshHead();
    void pageShown(int index);

    Workplace &m_work;
    QStackedWidget *m_whole; ///< the unit, or what to do where there is none
    UnitHead *m_head;
    PageTabs *m_tabs;
    QStackedWidget *m_stack;
    QWidget *m_standing;
    QSplitter *m_panes;
    QList<Page *> m_pages;
};

} // namespace ts
