#pragma once

#include "views/log/log_entry.h"
#include "views/unit/page.h"

class QMenu;

namespace ts {

class EntryForm;
class JotBar;
class LaneChips;
class LogChart;
class LogModel;
class LogView;
class MoveBar;

/// Everything that happened to the unit, by day, and the line to jot into.
class LogPage : public Page {
    Q_OBJECT
public:
    explicit LogPage(Workplace &workplace, QWidget *parent = nullptr);

    [[nodiscard]] bool showsStanding() const override { return true; }
    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;
    [[nodiscard]] QByteArray keptState() const override;
    void restoreState(const QByteArray &state) override;

    [[nodiscard]] LogView *list() const { return m_view; }
    [[nodiscard]] LogModel *model() const { return m_model; }
    [[nodiscard]] JotBar *jotBar() const { return m_jot; }
    [[nodiscard]] LaneChips *chips() const { return m_chips; }
    [[nodiscard]] LogChart *chart() const { return m_chart; }
    [[nodiscard]] MoveBar *moveBar() const { return m_move; }
    [[nodiscard]] EntryForm *form() const { return m_form; } ///< of the entry that is being edited, or null

    void edit(int row);
    void takeOut(); ///< the entries chosen
    void askWhereTo(); ///< for the entries chosen
    /// The actions on the entries chosen; `photo` is the one of a photo row that they are for, or -1.
    void fillMenu(QMenu &menu, int photo);

Q_SIGNALS:
    void photoWanted(const ts::Id<ts::Unit> &unit, const ts::Id<ts::Photo> &photo);

protected:
    void refresh() override;
    void keyPressEvent(QKeyEvent *event) override;
    void showEvent(QShowEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void showRows();
    void closeForm(bool backToList);
    [[nodiscard]] QList<Event> eventsOf(const QList<LogEntry> &entries, int photo) const;
    void takeOut(const QList<Event> &events);
    void moveTo(const Id<Unit> &unit);
    void lookAt(const LogEntry &entry, int photo);

    LaneChips *m_chips;
    LogChart *m_chart;
    LogModel *m_model;
    LogView *m_view;
    MoveBar *m_move;
    JotBar *m_jot;
    EntryForm *m_form = nullptr;
    QList<Event> m_moving;
    QUuid m_unit; ///< whose rows are shown
};

} // namespace ts
