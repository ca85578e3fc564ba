#pragma once

#include "model/desk/desk.h"

#include <QMainWindow>

class QLabel;
class QLineEdit;
class QListView;
class QTextBrowser;

namespace ts {

class RackModel;

/// The rack on the left, the unit's log with the line to jot into, how it stands on the right.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(Desk &desk);
    ~MainWindow() override;
    void showUnit(const Id<Unit> &unit);

private:
    void build();
    void buildMenu();
    void refresh();
    void previewLine();
    void recordLine();
    void say(const QString &sentence);

    Desk &m_desk;
    RackModel *m_rack = nullptr;
    QListView *m_rackView = nullptr;
    QTextBrowser *m_log = nullptr;
    QTextBrowser *m_standing = nullptr;
    QLineEdit *m_line = nullptr;
    QLabel *m_preview = nullptr;
    UnitFile m_file;
    BenchFile m_bench;
};

} // namespace ts
