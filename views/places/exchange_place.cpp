#include "views/places/exchange_place.h"

#include "model/exchange/exchange_kinds.h"
#include "model/exchange/export_file.h"
#include "views/style/style.h"
#include "views/widgets/ask.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QComboBox>
#include <QDir>
#include <QFileInfo>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace ts {

namespace {

QString kindText(const QString &kind)
{
    if (kind == QLatin1String("units"))
        return ExchangePlace::tr("Units, a table as CSV");
    if (kind == QLatin1String("comparables"))
        return ExchangePlace::tr("Comparable sales, a table as CSV");
    if (kind == QLatin1String("parts"))
        return ExchangePlace::tr("Parts, a table as CSV");
    if (kind == QLatin1String("open-repair-data"))
        return ExchangePlace::tr("Repair records in the Open Repair Data Standard, CSV");
    if (kind == QLatin1String("json"))
        return ExchangePlace::tr("The whole workbook without its photos, JSON");
    if (kind == QLatin1String("csv"))
        return ExchangePlace::tr("Units, a table as CSV");
    if (kind == QLatin1String("xlsx"))
        return ExchangePlace::tr("The year's books and the cost sheets, for a spreadsheet (xlsx)");
    return kind;
}

QString fileEnding(const QString &kind)
{
    return kind == QLatin1String("json") || kind == QLatin1String("xlsx") ? kind : QStringLiteral("csv");
}

} // namespace

ExchangePlace::ExchangePlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    auto *in = new Card(tr("Take a list in"), this);
    m_inKind = new QComboBox(in);
    m_inKind->setAccessibleName(tr("What the file holds"));
    for (const QString &kind : importKinds())
        if (canImport(kind))
            m_inKind->addItem(kindText(kind), kind);
    m_file = new QLineEdit(in);
    m_file->setAccessibleName(tr("File to take in"));
    m_file->setPlaceholderText(tr("Choose a file, or drop it here"));
    auto *choose = button(tr("Choose…"), in);
    m_look = button(tr("Only look"), in);
    m_take = primaryButton(tr("Take in"), in);
    auto *grid = new QGridLayout;
    auto *kindLabel = styledLabel("quiet", tr("It &holds"), in);
    kindLabel->setBuddy(m_inKind);
    auto *fileLabel = styledLabel("quiet", tr("&File"), in);
    fileLabel->setBuddy(m_file);
    grid->addWidget(kindLabel, 0, 0);
    grid->addWidget(m_inKind, 0, 1, 1, 2);
    grid->addWidget(fileLabel, 1, 0);
    grid->addWidget(m_file, 1, 1);
    grid->addWidget(choose, 1, 2);
    grid->setColumnStretch(1, 1);
    auto *does = new QHBoxLayout;
    auto *undoable = styledLabel("quiet", tr("A list goes in whole or not at all, and one Undo takes it back."), in);
    undoable->setWordWrap(true);
    does->addWidget(undoable, 1);
    does->addWidget(m_look);
    does->addWidget(m_take);
    in->body()->addLayout(grid);
    in->body()->addLayout(does);

    auto *out = new Card(tr("Write a list out"), this);
    m_outKind = new QComboBox(out);
    m_outKind->setAccessibleName(tr("What is written"));
    for (const QString &kind : exportKinds())
        if (canExport(kind))
            m_outKind->addItem(kindText(kind), kind);
    auto *write = button(tr("Write…"), out);
    auto *outRow = new QHBoxLayout;
    outRow->addWidget(m_outKind, 1);
    outRow->addWidget(write);
    out->body()->addLayout(outRow);

    m_sentence = styledLabel("strong", {}, this);
    m_sentence->setWordWrap(true);
    m_lines = new QPlainTextEdit(this);
    m_lines->setReadOnly(true);
    m_lines->setTabChangesFocus(true);
    m_lines->setAccessibleName(tr("What came of it, by line"));
    m_lines->hide();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addWidget(styledLabel("heading", tr("Lists in and out"), this));
    column->addWidget(in);
    column->addWidget(out);
    column->addWidget(m_sentence);
    column->addWidget(m_lines, 1);
    column->addStretch(0);

    connect(choose, &QPushButton::clicked, this, &ExchangePlace::chooseFile);
    connect(m_look, &QPushButton::clicked, this, [this] { takeIn(true); });
    connect(m_take, &QPushButton::clicked, this, [this] { takeIn(false); });
    connect(write, &QPushButton::clicked, this, &ExchangePlace::writeOut);
    const auto enable = [this] {
        m_look->setEnabled(!m_file->text().trimmed().isEmpty());
        m_take->setEnabled(m_look->isEnabled());
    };
    connect(m_file, &QLineEdit::textChanged, this, enable);
    enable();
}

void ExchangePlace::focusFirst()
{
    m_inKind->setFocus();
}

QString ExchangePlace::help() const
{
    return tr("Take in a table of units or of comparable sales, repair records in the Open Repair Data Standard, or a workbook written out as JSON. “Only look” reads the file "
              "and says by line what it would do; nothing is changed.");
}

void ExchangePlace::setFile(const QString &file)
{
    m_file->setText(file);
}

void ExchangePlace::refresh() {}

void ExchangePlace::chooseFile()
{
    const QString file = ask::existingFile(this, tr("Take a list in"), QDir::homePath(), tr("Lists (*.csv *.json);;All files (*)"));
    if (!file.isEmpty())
        m_file->setText(file);
}

void ExchangePlace::takeIn(bool dryRun)
{
    const QString file = m_file->text().trimmed();
    const QString kind = m_inKind->currentData().toString();
    const QString what = (dryRun ? tr("Reading %1") : tr("Taking in %1")).arg(QFileInfo(file).fileName());
    show({}, {});
    // The report comes from the other thread by way of a copy; the desk there is its own.
    work().startWork(what, [this, file, kind, dryRun](Desk &desk, const Progress &progress) -> Expected<QString> {
        const auto report = importFile(desk, file, kind, {.dryRun = dryRun, .map = {}}, progress);
        if (!report)
            return report.trouble();
        QMetaObject::invokeMethod(
            this, [this, found = *report] { show(found.sentence, found.problems + found.warnings); }, Qt::QueuedConnection);
        return report->refused() ? QString() : report->sentence;
    });
}

void ExchangePlace::writeOut()
{
    const QString kind = m_outKind->currentData().toString();
    const QString ending = fileEnding(kind);
    const QString file = ask::newFile(this, tr("Write a list out"), QDir::home().filePath(tr("turnscrew") + QLatin1Char('.') + ending), QStringLiteral("*.") + ending);
    if (file.isEmpty())
        return;
    show({}, {});
    work().startWork(tr("Writing %1").arg(QFileInfo(file).fileName()), [kind, file](Desk &desk, const Progress &) -> Expected<QString> {
        const auto report = exportFile(desk, kind, file);
        return report ? Expected<QString>(report->sentence) : report.trouble();
    });
}

void ExchangePlace::show(const QString &sentence, const QStringList &lines)
{
    m_sentence->setText(sentence);
    m_lines->setPlainText(lines.join(QLatin1Char('\n')));
    m_lines->setHidden(lines.isEmpty());
}

} // namespace ts
