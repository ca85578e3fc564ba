#pragma once

#include "views/frame/long_work.h"
#include "views/workplace.h"

#include <QWidget>

class QSplitter;
class QStackedWidget;

namespace ts {

class ClockBox;
class LeavingBar;
class HelpCard;
class NoticeBar;
class PhotoDesk;
class RackPane;
class SaidLine;
class Strip;
class UnitPane;

/// All that is seen of an open workbook: strip, rack, the unit in hand, the places beside the units, and what the program says.
class Workspace : public QWidget {
    Q_OBJECT
public:
    /// `again` opens the same workbook a second time, for long work in a thread of its own.
    Workspace(Desk &desk, Style &style, LongWork::OpenDesk again = {}, QWidget *parent = nullptr);
    ~Workspace() override;

    [[nodiscard]] Workplace &work() { return m_work; }
    [[nodiscard]] UnitPane *unitPane() const { return m_unitPane; }
    [[nodiscard]] RackPane *rackPane() const { return m_rackPane; }
    [[nodiscard]] Strip *strip() const { return m_strip; }
    [[nodiscard]] ClockBox *clock() const;
    [[nodiscard]] NoticeBar *notice() const { return m_notice; }
    [[nodiscard]] SaidLine *said() const { return m_said; }
    [[nodiscard]] LongWork *longWork() const { return m_longWork; }
    [[nodiscard]] PhotoDesk *photos() const { return m_photos; }
    [[nodiscard]] PlaceKey place() const { return m_place; }

    void showPlace(PlaceKey place);
    void takeIn(); ///< opens the page that takes a unit in
    void commitEdits();
    /// Whether the window may close at once; else it is asked what to note before, and `close` is called after the answer.
    [[nodiscard]] bool mayClose(std::function<void()> close);
    void explain(); ///< says what the page or place that is shown is for

    /// Sizes of the panes, to be remembered between two starts.
    [[nodiscard]] QByteArray layoutState() const;
    void restoreLayout(const QByteArray &state);

private:
    [[nodiscard]] QWidget *placeWidget(PlaceKey place);
    void build();

    Workplace m_work;
    Strip *m_strip;
    NoticeBar *m_notice;
    SaidLine *m_said;
    LeavingBar *m_leaving;
    LongWork *m_longWork;
    PhotoDesk *m_photos;
    RackPane *m_rackPane;
    UnitPane *m_unitPane;
    QSplitter *m_panes;
    QStackedWidget *m_stack;
    HelpCard *m_help;
    QHash<int, QWidget *> m_places;
    PlaceKey m_place = PlaceKey::Units;
};

} // namespace ts
