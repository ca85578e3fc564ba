#pragma once

#include <QListView>

#include "views/log/log_entry.h"

namespace ts {

class LogDelegate;
class LogModel;
class Style;
class Thumbnails;

/// The list of the log. Opens at the newest; keeps its place while others record.
class LogView : public QListView {
    Q_OBJECT
public:
    LogView(LogModel &model, const Style &style, Thumbnails &thumbnails, QWidget *parent = nullptr);

    /// Shows rows in place of those before; what was looked at stays where it was, or the newest does where that was seen.
    void show(const QList<LogEntry> &rows);
    void scrollToNewest();
    /// Makes an entry the current one and brings it into view.
    void choose(int row);
    /// The rows that an action is for: those selected, else the current one; oldest first.
    [[nodiscard]] QList<LogEntry> chosen() const;
    /// Puts an editor into a row; null takes it away again.
    void setEditor(int row, QWidget *editor);

Q_SIGNALS:
    void editWanted(int row);
    void takeOutWanted();
    void photoWanted(const ts::LogEntry &entry, int photo);
    void menuWanted(const QPoint &at, int photo); ///< at in global coordinates; the photo of the current row that was pointed at, or -1

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void contextMenuEvent(QContextMenuEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void currentChanged(const QModelIndex &current, const QModelIndex &previous) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;

private:
    [[nodiscard]] int photoUnder(const QModelIndex &index, const QPoint &point) const;
    [[nodiscard]] bool seesNewest() const;
    void layOutKeeping(const std::function<void()> &change);

    LogModel &m_model;
    LogDelegate *m_delegate;
    QPersistentModelIndex m_edited;
};

} // namespace ts
