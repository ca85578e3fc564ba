#include "views/main_window.h"

#include "model/jot/jot.h"
#include "model/records/tag_text.h"
#include "views/rack_model.h"
#include "views/unit_text.h"

#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMenuBar>
#include <QScrollBar>
#include <QSplitter>
#include <QStatusBar>
#include <QTextBrowser>
#include <QTimer>
#include <QVBoxLayout>

namespace ts {

MainWindow::MainWindow(Desk &desk) : m_desk(desk)
{
    build();
    buildMenu();
    connect(&m_desk, &Desk::recorded, this, [this] { refresh(); });
    connect(&m_desk, &Desk::everythingChanged, this, &MainWindow::refresh);
    auto *poll = new QTimer(this);
    connect(poll, &QTimer::timeout, this, [this] {
        if (auto polled = m_desk.poll(); !polled)
            say(polled.trouble().sentence());
    });
    poll->start(700);
    m_rack->reload();
    m_rackView->setCurrentIndex(m_rack->index(0));
    m_line->setFocus();
}

MainWindow::~MainWindow() = default;

void MainWindow::build()
{
    setWindowTitle(tr("%1 · Turnscrew").arg(m_desk.name()));
    resize(1440, 900);
    m_rack = new RackModel(m_desk, this);
    m_rackView = new QListView;
    m_rackView->setModel(m_rack);
    m_rackView->setUniformItemSizes(true);
    m_rackView->setAccessibleName(tr("Rack of units"));
    m_log = new QTextBrowser;
    m_log->setObjectName(QStringLiteral("log"));
    m_log->setAccessibleName(tr("Log of the unit"));
    m_standing = new QTextBrowser;
    m_standing->setAccessibleName(tr("As it stands"));
    m_line = new QLineEdit;
    m_line->setAccessibleName(tr("Jot a line"));
    m_line->setPlaceholderText(tr("Jot a line: CN2.4 = 11.92 V want 12 V 5%"));
    m_preview = new QLabel;
    m_preview->setWordWrap(true);
    m_preview->setTextFormat(Qt::PlainText);
    m_preview->setAccessibleName(tr("What the line will record"));

    auto *centre = new QWidget;
    auto *column = new QVBoxLayout(centre);
    column->addWidget(m_log, 1);
    column->addWidget(m_line);
    column->addWidget(m_preview);
    auto *panes = new QSplitter;
    panes->addWidget(m_rackView);
    panes->addWidget(centre);
    panes->addWidget(m_standing);
    panes->setSizes({300, 840, 300});
    setCentralWidget(panes);

    connect(m_rackView->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &current) {
        if (current.isValid())
            showUnit(Id<Unit>{current.data(RackModel::UnitId).toUuid()});
    });
    connect(m_rack, &RackModel::troubled, this, &MainWindow::say);
    connect(m_line, &QLineEdit::textChanged, this, &MainWindow::previewLine);
    connect(m_line, &QLineEdit::returnPressed, this, &MainWindow::recordLine);
}

void MainWindow::buildMenu()
{
    auto *menu = menuBar()->addMenu(tr("&Workbook"));
    const auto step = [this](Expected<QString> (Desk::*take)(), const QString &said) {
        const auto sentence = (m_desk.*take)();
        say(sentence ? said + *sentence : sentence.trouble().sentence());
    };
    menu->addAction(tr("&Undo"), QKeySequence::Undo, this, [step] { step(&Desk::undo, tr("Undone: ")); });
    menu->addAction(tr("&Redo"), QKeySequence::Redo, this, [step] { step(&Desk::redo, tr("Done again: ")); });
    menu->addSeparator();
    menu->addAction(tr("&Close"), QKeySequence::Quit, this, &QWidget::close);
}

void MainWindow::showUnit(const Id<Unit> &unit)
{
    auto file = m_desk.unitFile(unit);
    auto bench = m_desk.benchFile();
    if (!file || !bench) {
        say(file ? bench.trouble().sentence() : file.trouble().sentence());
        return;
    }
    m_file = *std::move(file);
    m_bench = *std::move(bench);
    m_log->setHtml(logHtml(m_file, m_bench));
    m_log->verticalScrollBar()->setValue(m_log->verticalScrollBar()->maximum());
    m_standing->setHtml(standingHtml(m_file, m_bench, m_desk.maker().now()));
    previewLine();
}

void MainWindow::refresh()
{
    const QUuid shown = m_file.unit.id.value;
    m_rack->reload();
    const int row = m_rack->rowOf(shown);
    m_rackView->setCurrentIndex(m_rack->index(row < 0 ? 0 : row));
}

void MainWindow::previewLine()
{
    if (m_line->text().trimmed().isEmpty()) {
        m_preview->setText(tr("Goes into the log of %1 %2").arg(tagText(m_file.unit.tag), m_file.unit.name));
        return;
    }
    Maker maker = m_desk.maker();
    const auto jotted = jot(m_line->text(), m_file, m_bench, maker);
    m_preview->setText(jotted ? jotted->badge + QStringLiteral(" · ") + jotted->preview : jotted.trouble().sentence());
}

void MainWindow::recordLine()
{
    if (m_line->text().trimmed().isEmpty())
        return;
    Maker maker = m_desk.maker();
    const auto jotted = jot(m_line->text(), m_file, m_bench, maker);
    const auto applied = jotted ? m_desk.apply(jotted->change) : Expected<Change>(jotted.trouble());
    if (!applied) {
        say(applied.trouble().sentence());
        return;
    }
    m_line->clear();
    say(jotted->change.sentence());
}

void MainWindow::say(const QString &sentence)
{
    statusBar()->showMessage(sentence, 15000);
}

} // namespace ts
