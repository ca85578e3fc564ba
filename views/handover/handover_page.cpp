#include "views/handover/handover_page.h"

#include "model/keeping/outgoing_sheet.h"
#include "model/paper/restoration.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"
#include "views/handover/earlier_sheets.h"
#include "views/handover/note_lines.h"
#include "views/handover/sheet_photos.h"
#include "views/handover/sheet_preview.h"
#include "views/settings/setting_field.h"
#include "views/style/style.h"
#include "views/widgets/ask.h"
#include "views/widgets/buttons.h"
#include "views/widgets/flow_layout.h"

#include <QFileInfo>
#include <QLabel>
#include <QPageSize>
#include <QPainter>
#include <QPrinter>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>
#include <QStandardPaths>
#include <QVBoxLayout>

namespace ts {

namespace {

constexpr int pauseMs = 200;
constexpr qsizetype mostPhotoBytes = 64 * 1024 * 1024;

} // namespace

HandoverPage::HandoverPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent), m_bytes(mostPhotoBytes)
{
    m_preview = new SheetPreview(work().style(), this);
    auto *panes = new QSplitter(this);
    panes->addWidget(m_preview);
    panes->addWidget(makeSide());
    panes->setStretchFactor(0, 1);
    panes->setChildrenCollapsible(false);
    panes->setSizes({700, 360});
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(panes);
    m_pause.setSingleShot(true);
    connect(&m_pause, &QTimer::timeout, this, &HandoverPage::layOut);
}

QWidget *HandoverPage::makeSide()
{
    auto *pdf = primaryButton(tr("Write PDF…"));
    connect(pdf, &QPushButton::clicked, this, &HandoverPage::writePdf);
    auto *web = button(tr("Write web page…"));
    connect(web, &QPushButton::clicked, this, &HandoverPage::writeWebPage);
    auto *paper = button(tr("Print…"));
    connect(paper, &QPushButton::clicked, this, &HandoverPage::print);

    auto *inside = new QWidget;
    m_notices = new Card(tr("The sheet warns of this first"), inside);
    restyle(m_notices, "tone", QStringLiteral("outside"));
    m_noticeText = styledLabel("trouble", {}, m_notices);
    m_noticeText->setWordWrap(true);
    m_notices->body()->addWidget(m_noticeText);
    m_photos = new SheetPhotos(work(), inside);
    m_flaws = new NoteLines(work(), NoteKind::Flaw, tr("Flaws a buyer should know"), tr("another flaw: scratch on the lid, 40 mm"), inside);
    m_uses = new NoteLines(work(), NoteKind::Use, tr("Remarks on its use"), tr("another remark: let it warm up before recording"), inside);
    auto *notDone = new Card(tr("What was not done"), inside);
    notDone->setRemark(tr("worked out, always printed"));
    m_notDone = styledLabel("quiet", {}, notDone);
    m_notDone->setWordWrap(true);
    notDone->body()->addWidget(m_notDone);
    m_earlier = new EarlierSheets(work(), inside);
    auto *column = new QVBoxLayout(inside);
    column->setContentsMargins(gap::normal, gap::normal, gap::normal, gap::normal);
    column->setSpacing(gap::normal);
    for (QWidget *each : QWidgetList{m_notices, m_earlier, m_photos, m_flaws, m_uses, notDone, makeBench(inside)})
        column->addWidget(each);
    column->addStretch(1);
    auto *scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inside);

    auto *side = new QWidget;
    m_side = inside;
    m_sideScroll = scroll;
    auto *buttons = new FlowLayout(gap::tight);
    buttons->setContentsMargins(gap::normal, gap::normal, gap::normal, 0);
    for (QWidget *each : QWidgetList{pdf, web, paper})
        buttons->addWidget(each);
    auto *all = new QVBoxLayout(side);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addLayout(buttons);
    all->addWidget(scroll, 1);
    return side;
}

Card *HandoverPage::makeBench(QWidget *parent)
{
    auto *card = new Card(tr("Bench, terms and paper"), parent);
    const auto add = [&](const QString &name, const QString &label, SettingField::Form form) {
        auto *field = new SettingField(work(), name, label, form, card);
        card->body()->addWidget(field);
        m_settings << field;
        return field;
    };
    add(settings::benchName, tr("Name of the bench"), SettingField::Form::Line);
    add(settings::benchAddress, tr("Address"), SettingField::Form::Lines);
    add(settings::worker, tr("Who does the work"), SettingField::Form::Line);
    add(settings::terms, tr("Terms"), SettingField::Form::Lines);
    add(settings::paperSize, tr("Paper"), SettingField::Form::Choice)
        ->setChoices({{{}, tr("A4, unless chosen otherwise")}, {QStringLiteral("A4"), tr("A4")}, {QStringLiteral("Letter"), tr("Letter")}});
    return card;
}

void HandoverPage::focusFirst()
{
    m_preview->setFocus();
}

QString HandoverPage::help() const
{
    return tr("The sheet as the buyer gets it, from what was recorded; what was not done is worked out and always printed. Ctrl and the wheel come closer. Each sheet that is written or printed "
              "is numbered and kept in the workbook as it was, whatever happens to the unit afterwards.");
}

void HandoverPage::commitEdits()
{
    m_flaws->commitEdits();
    m_uses->commitEdits();
    for (SettingField *field : m_settings)
        if (field->isAncestorOf(focusWidget()))
            field->commit();
}

void HandoverPage::refresh()
{
    // What is chosen is never cut off, however large the text is.
    m_sideScroll->setMinimumWidth(qMax(300, m_side->minimumSizeHint().width() + m_sideScroll->verticalScrollBar()->sizeHint().width()));
    m_photos->refresh();
    m_flaws->refresh();
    m_uses->refresh();
    m_earlier->refresh();
    for (SettingField *field : m_settings)
        field->refresh();
    // A unit that was just opened is shown at once; changes of it when they pause.
    m_pause.start(m_laidOut == file().unit.id ? pauseMs : 0);
    m_laidOut = file().unit.id;
}

Expected<QByteArray> HandoverPage::bytesOf(const Photo &photo)
{
    if (const QByteArray *at = m_bytes.object(photo.sha256))
        return *at;
    auto bytes = work().desk().kept(photo.sha256);
    if (bytes)
        m_bytes.insert(photo.sha256, new QByteArray(*bytes), bytes->size());
    return bytes;
}

Expected<RestorationFacts> HandoverPage::facts()
{
    const auto photos = photosForSheet(file().all<Photo>(), [this](const Photo &photo) { return bytesOf(photo); });
    if (!photos)
        return photos.trouble();
    QList<Id<Photo>> byThemselves;
    for (const PaperPhoto &photo : *photos)
        if (!photo.record.onSheet)
            byThemselves << photo.record.id;
    m_photos->setByThemselves(byThemselves);
    return gatherRestoration(file(), bench(), *photos, work().now().toLocalTime());
}

void HandoverPage::layOut()
{
    if (!work().hasUnit())
        return;
    const auto gathered = facts();
    if (!gathered)
        return work().refuse(gathered.trouble());
    showLists(*gathered);
    m_preview->showSheet(*gathered, benchPageSize(bench()));
}

void HandoverPage::showLists(const RestorationFacts &gathered)
{
    m_noticeText->setText(gathered.notices.join(QLatin1Char('\n')));
    m_notices->setHidden(gathered.notices.isEmpty());
    m_notDone->setText(gathered.notDone.isEmpty() ? tr("Nothing is missing from the record.") : gathered.notDone.join(QLatin1Char('\n')));
}

void HandoverPage::writePdf()
{
    write(tr("Write the sheet as PDF"), QStringLiteral("pdf"), tr("PDF (*.pdf)"));
}

void HandoverPage::writeWebPage()
{
    write(tr("Write the sheet as a web page"), QStringLiteral("html"), tr("Web page (*.html)"));
}

void HandoverPage::write(const QString &title, const QString &format, const QString &filter)
{
    commitEdits();
    const QString name = tr("%1 restoration sheet").arg(tagText(file().unit.tag)) + QLatin1Char('.') + format;
    QString target = ask::newFile(this, title, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) + QLatin1Char('/') + name, filter);
    if (target.isEmpty())
        return;
    if (QFileInfo(target).suffix().compare(format, Qt::CaseInsensitive) != 0)
        target += QLatin1Char('.') + format;
    const auto gathered = facts();
    if (!gathered)
        return work().refuse(gathered.trouble());
    const auto paper = handOver(work().desk(), file().unit.id, *gathered, {.format = format, .size = benchPageSize(bench()), .file = target});
    if (!paper)
        return work().refuse(paper.trouble());
    work().say(tr("Wrote %1: restoration sheet %2, edition %3.").arg(QFileInfo(target).fileName()).arg(paper->number).arg(paper->edition));
}

void HandoverPage::print()
{
    commitEdits();
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(tr("%1 restoration sheet").arg(tagText(file().unit.tag)));
    printer.setPageSize(QPageSize(benchPageSize(bench()) == PageSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setFullPage(true); // the sheet has its own margins
    if (!ask::printer(this, tr("Print the sheet"), printer))
        return;
    auto gathered = facts();
    if (!gathered)
        return work().refuse(gathered.trouble());
    const auto paper = handOver(work().desk(), file().unit.id, *gathered, {.format = QStringLiteral("pdf"), .size = benchPageSize(bench())});
    if (!paper)
        return work().refuse(paper.trouble());
    gathered->number = paper->number;
    gathered->edition = paper->edition;
    paintOnto(printer, *gathered);
    work().say(tr("Printed restoration sheet %1, edition %2.").arg(paper->number).arg(paper->edition));
}

void HandoverPage::paintOnto(QPrinter &printer, const RestorationFacts &sheet)
{
    const PaperPages pages(sheet, benchPageSize(bench()));
    QPainter painter;
    if (!painter.begin(&printer))
        return work().refuse(tr("The printer did not begin; the workbook kept the sheet, and it can be opened and printed from there."));
    const double scale = printer.resolution() / 96.0; // paper is laid out in 96ths of an inch
    painter.scale(scale, scale);
    for (int page = 0; page < pages.count(); ++page) {
        if (page > 0 && !printer.newPage())
            return work().refuse(tr("The printer stopped at page %1; the workbook kept the sheet.").arg(page + 1));
        pages.paint(painter, page);
    }
}

} // namespace ts
