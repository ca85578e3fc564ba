#pragma once

#include "views/workplace.h"

#include <QWidget>

class QSplitter;
class QStackedWidget;

namespace ts {

class ClockBox;
class NoticeBar;
class RackPane;
class SaidLine;
class Strip;
class UnitPane;

/// All that is seen of an open workbook: strip, rack, the unit in hand, the places beside the units, and what the program says.
class Workspace : public QWidget {
    Q_OBJECT
public:
    Workspace(Desk &desk, Style &style, QWidget *parent = nullptr);
    ~Workspace() override;

    [[nodiscard]] Workplace &work() { return m_work; }
    [[nodiscard]] UnitPane *unitPane() const { return m_unitPane; }
    [[nodiscard]] RackPane *rackPane() const { return m_rackPane; }
    [[nodiscard]] Strip *strip() const { return m_strip; }
    [[nodiscard]] ClockBox *clock() const;
    [[nodiscard]] NoticeBar *notice() const { return m_notice; }
    [[nodiscard]] SaidLine *said() const { return m_said; }
    [[nodiscard]] PlaceKey place() const { return m_place; }

    void showPlace(PlaceKey place);
    void takeIn(); ///< opens the page that takes a unit in
    void commitEdits();

    /// Sizes of the panes, to be remembered between two starts.
    [[nodiscard]] QByteArray layoutState() const;
    void restoreLayout(const QByteArray &state);

private:
    [[nodiscard]] QWidget *placeWidget(PlaceKey place);

    Workplace m_work;
    Strip *m_strip;
    NoticeBar *m_notice;
    SaidLine *m_said;
    RackPane *m_rackPane;
    UnitPane *m_unitPane;
    QSplitter *m_panes;
    QStackedWidget *m_stack;
    QHash<int, QWidget *> m_places;
    PlaceKey m_place = PlaceKey::Units;
};

} // namespace ts
