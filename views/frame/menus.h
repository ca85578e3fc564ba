#pragma once

#include <QObject>

class QAction;
class QMenu;
class QMenuBar;

namespace ts {

class MainWindow;
class Workspace;

/// The menu bar: every action of the window with its shortcut. Made anew with each workbook that is opened.
class Menus : public QObject {
    Q_OBJECT
public:
    /// `workspace` may be null: then only what needs no workbook is there.
    Menus(MainWindow &window, Workspace *workspace);

private:
    void makeWorkbook(QMenu *menu);
    void makeUnit(QMenu *menu);
    void makeBench(QMenu *menu);
    void makeMoney(QMenu *menu);
    void makePaper(QMenu *menu);
    void makeView(QMenu *menu);
    void makeHelp(QMenu *menu);
    void refreshUndo();

    MainWindow &m_window;
    Workspace *m_workspace;
    QAction *m_undo = nullptr;
    QAction *m_redo = nullptr;
};

} // namespace ts
