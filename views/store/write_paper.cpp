#include "views/store/write_paper.h"

#include "model/keeping/outgoing_label.h"
#include "model/keeping/waiting_parts.h"
#include "model/records/tag_text.h"
#include "views/widgets/ask.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QPainter>
#include <QPrinter>
#include <QStandardPaths>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

/// A file of one of the two forms that papers have; empty where the person thought better of it.
QString askedFile(QWidget *parent, const QString &title, const QString &name)
{
    QString file = ask::newFile(parent, title, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation) + u'/' + name + u".pdf"_s,
                                tr("PDF (*.pdf);;Web page (*.html)"));
    const QString suffix = QFileInfo(file).suffix().toLower();
    if (!file.isEmpty() && suffix != u"pdf" && suffix != u"html")
        file += u".pdf"_s;
    return file;
}

} // namespace

void writeOrderList(Workplace &work, QWidget *parent, const Unit *unit)
{
    const QString name = unit ? tr("%1 order list").arg(tagText(unit->tag)) : tr("Order list of all units");
    const QString file = askedFile(parent, tr("Write the order list"), name);
    if (file.isEmpty())
        return;
    const auto paper = handOverOrder(work.desk(), unit, work.bench(), work.now().toLocalTime(),
                                     {.format = QFileInfo(file).suffix().toLower(), .size = benchPageSize(work.bench()), .file = file});
    if (!paper)
        return work.refuse(paper.trouble());
    work.say(tr("Wrote %1: order list %2, edition %3.").arg(QFileInfo(file).fileName()).arg(paper->number).arg(paper->edition));
}

void writeLabels(Workplace &work, QWidget *parent, bool bags, int boxes)
{
    if (!work.hasUnit())
        return;
    const auto labels = labelsOf(work.file(), work.bench(), {.bags = bags, .boxes = boxes}, work.now().toLocalTime());
    if (!labels)
        return work.refuse(labels.trouble());
    const QString tag = tagText(work.file().unit.tag);
    const QString file = askedFile(parent, bags ? tr("Write the bag labels") : tr("Write the tag label"), bags ? tr("%1 bag labels").arg(tag) : tr("%1 label").arg(tag));
    if (file.isEmpty())
        return;
    const auto paper = handOverLabels(work.desk(), work.file().unit, *labels, {.format = QFileInfo(file).suffix().toLower(), .file = file});
    if (!paper)
        return work.refuse(paper.trouble());
    work.say(tr("Wrote %1.").arg(QFileInfo(file).fileName()));
}

void printLabel(Workplace &work, QWidget *parent)
{
    if (!work.hasUnit())
        return;
    const auto labels = labelsOf(work.file(), work.bench(), {}, work.now().toLocalTime());
    if (!labels)
        return work.refuse(labels.trouble());
    QPrinter printer(QPrinter::HighResolution);
    printer.setDocName(labels->title);
    printer.setFullPage(true); // the label has its own margins
    printer.setPageSize(QPageSize(labels->millimetres, QPageSize::Millimeter, {}, QPageSize::ExactMatch));
    printer.setPageMargins(QMarginsF(0, 0, 0, 0));
    if (!ask::printer(parent, tr("Print the label"), printer))
        return;
    const auto paper = handOverLabels(work.desk(), work.file().unit, *labels, {.format = u"pdf"_s, .file = {}});
    if (!paper)
        return work.refuse(paper.trouble());
    QPainter painter;
    if (!painter.begin(&printer))
        return work.refuse(tr("The printer could not be reached; the label is kept as edition %1.").arg(paper->edition));
    painter.scale(printer.resolution() / 96.0, printer.resolution() / 96.0);
    for (qsizetype i = 0; i < labels->labels.size(); ++i) {
        if (i > 0)
            printer.newPage();
        paintLabel(painter, labels->labels.at(i), labels->millimetres);
    }
    work.say(tr("Printed the label of %1.").arg(tagText(work.file().unit.tag)));
}

} // namespace ts
