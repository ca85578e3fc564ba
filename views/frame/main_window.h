#pragma once

#include "views/frame/doors.h"
#include "views/style/ink.h"

#include <QMainWindow>

namespace ts {

class FirstStart;
class Memory;
class Style;
class Workspace;

/// The window: an open workbook, or the choice of one.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(Doors doors, Style &style, Memory &memory);
    ~MainWindow() override;

    /// Shows this workbook in place of what was shown; `book` is its file or address.
    void setDesk(std::unique_ptr<Desk> desk, const QString &book);
    /// Opens a workbook by its file or address; says why where it cannot.
    bool openBook(const QString &book);
    [[nodiscard]] Workspace *workspace() const { return m_workspace; }
    [[nodiscard]] Style &style() const { return m_style; }
    [[nodiscard]] Memory &memory() const { return m_memory; }
    void setScheme(Scheme scheme);
    void setTextPercent(int percent);
    void setLargeType(bool large);

    // What the menu and the first page ask for.
    void newDialog();
    void openDialog();
    void demoDialog();
    void closeBook();
    void backUp(); ///< makes a dated copy now, beside the work

protected:
    void closeEvent(QCloseEvent *event) override;

private:
    bool through(const Doors::Open &door, const QString &book);
    void refuse(const QString &sentence);
    void leaveBook();
    void backUpOnLeaving();
    [[nodiscard]] QString backupFolder() const;
    void showFirstStart();

    Doors m_doors;
    Style &m_style;
    Memory &m_memory;
    std::unique_ptr<Desk> m_desk;
    QString m_book;
    QString m_leftUnsaid; ///< what went wrong with the last workbook while it was left
    Workspace *m_workspace = nullptr;
    FirstStart *m_firstStart = nullptr;
};

} // namespace ts
