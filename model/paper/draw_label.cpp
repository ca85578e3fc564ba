#include "model/paper/tag_label.h"

#include "model/paper/ink.h"
#include "model/paper/paper_files.h"
#include "model/paper/paper_font.h"
#include "model/paper/plain_words.h"
#include "model/paper/tag_code.h"
#include "model/paper/template_filler.h"
#include "model/paper/write_pdf.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double unitsPerMm = 96 / 25.4;
// The dots of label printers (203 per inch): a module of a whole number of them is printed without rounding. Below two dots of the
// finest printers no telephone reads it.
constexpr double dotMm = 0.125;
constexpr double leastModuleMm = 0.25;

double moduleFor(double room, double modules)
{
    return std::max(leastModuleMm, std::floor(room / modules / dotMm) * dotMm) * unitsPerMm;
}

/// Draws a code into a rectangle, its quiet zone inside it.
void paintCode(QPainter &painter, const TagCode &code, const QRectF &room, bool square)
{
    const double modules = code.width + 2 * code.quiet;
    const double module = moduleFor(std::min(room.width(), square ? room.height() : room.width()) / unitsPerMm, modules);
    const QPointF origin(room.left() + std::max(0.0, (room.width() - module * modules) / 2) + code.quiet * module, square ? room.top() + code.quiet * module : room.top());
    for (const QRectF &each : code.dark)
        painter.fillRect(QRectF(origin.x() + each.x() * module, origin.y() + each.y() * (square ? module : room.height()), each.width() * module,
                                each.height() * (square ? module : room.height())),
                         Qt::black);
}

QString fitted(const QString &text, const QFont &font, double width)
{
    return QFontMetricsF(font).elidedText(text, Qt::ElideRight, width);
}

/// The largest font at which the text is no wider.
QFont fontFor(const QString &text, double width, double height, int weight)
{
    QFont font = paperFont(std::max(4, static_cast<int>(height)), weight);
    while (font.pixelSize() > 4 && QFontMetricsF(font).horizontalAdvance(text) > width)
        font.setPixelSize(font.pixelSize() - 1);
    return font;
}

/// Draws a line of text at most so high and answers the top of what comes below.
double paintLine(QPainter &painter, const QString &text, const QFont &font, double x, double y, double width)
{
    const QFontMetricsF metrics(font);
    painter.setFont(ts::fontFor(text, font));
    painter.drawText(QPointF(x, y + metrics.ascent()), fitted(text, font, width));
    return y + metrics.height();
}

QString svgNumber(double value)
{
    return QString::number(value, 'f', 3);
}

QList<Filling> barsOf(const Expected<TagCode> &code)
{
    QList<Filling> bars;
    if (code)
        for (const QRectF &each : code->dark)
            bars << Filling().put("x", svgNumber(each.x())).put("y", svgNumber(each.y())).put("w", svgNumber(each.width())).put("h", svgNumber(each.height()));
    return bars;
}

QString viewBox(const Expected<TagCode> &code, bool square)
{
    if (!code)
        return u"0 0 1 1"_s;
    const double quiet = code->quiet;
    return u"%1 %2 %3 %4"_s.arg(svgNumber(-quiet), square ? svgNumber(-quiet) : u"0"_s, svgNumber(code->width + 2 * quiet), square ? svgNumber(code->height + 2 * quiet) : u"1"_s);
}

} // namespace

void paintLabel(QPainter &painter, const LabelFacts &label, const QSizeF &millimetres)
{
    const double width = millimetres.width() * unitsPerMm, height = millimetres.height() * unitsPerMm;
    const double margin = 2 * unitsPerMm;
    const bool wide = width >= height;
    const auto qr = qrCode(label.tag);
    const auto bars = code128(label.tag);
    painter.save();
    painter.setPen(Qt::black);
    painter.fillRect(QRectF(0, 0, width, height), Qt::white);

    // The square code stands at the right of a wide label and at the foot of a tall one; its own quiet zone is its margin.
    const double side = std::min({wide ? height : width, wide ? width * 0.36 : height * 0.3, 40 * unitsPerMm});
    const QRectF square = wide ? QRectF(width - side, (height - side) / 2, side, side) : QRectF((width - side) / 2, height - side, side, side);
    if (qr)
        paintCode(painter, *qr, square, true);
    const double right = wide ? square.left() : width - margin;
    const double foot = wide ? height - margin : square.top();
    const double barsHigh = std::clamp(foot * 0.2, 3.5 * unitsPerMm, 14 * unitsPerMm);
    if (bars)
        paintCode(painter, *bars, QRectF(0, foot - barsHigh, right, barsHigh), false);

    const double inner = right - margin;
    const double bottom = foot - barsHigh - 1 * unitsPerMm;
    const double numberHigh = std::min((bottom - margin) * (wide ? 0.5 : 0.3), 34 * unitsPerMm);
    const QFont number = fontFor(label.tag, label.beside.isEmpty() ? inner : inner * 0.66, numberHigh, 800);
    const QFontMetricsF numberMetrics(number);
    painter.setFont(number);
    const double capTop = margin * 0.6;
    painter.drawText(QPointF(margin, capTop + numberMetrics.capHeight()), label.tag);
    double y = capTop + numberMetrics.capHeight() + 1.2 * unitsPerMm;
    const double text = std::clamp(std::min((bottom - y) / (3.2 + 1.3 * double(label.lines.size())), inner / 18), 2.2 * unitsPerMm, 4.5 * unitsPerMm);
    if (!label.beside.isEmpty()) {
        const double from = margin + numberMetrics.horizontalAdvance(label.tag) + 2 * unitsPerMm;
        const QFont beside = fontFor(label.beside, right - from, std::min(numberMetrics.capHeight(), text * 1.6), 600);
        painter.setFont(beside);
        painter.drawText(QPointF(from, capTop + numberMetrics.capHeight()), label.beside);
    }
    if (!label.doNotPower.isEmpty()) {
        // The reason is what keeps hands away: it goes on in more lines before anything else gets room.
        const QString words = u"DO NOT POWER: "_s + label.doNotPower;
        const double room = inner - 2 * unitsPerMm;
        const QFont flag = fontFor(words, room, text * 1.25, 700);
        const QFont least = flag.pixelSize() < text * 0.9 ? paperFont(std::max(5, static_cast<int>(text * 0.9)), 700) : flag;
        const double most = std::max(QFontMetricsF(least).height(), bottom - y - 0.8 * unitsPerMm);
        const double high = std::min(most, QFontMetricsF(least).boundingRect(QRectF(0, 0, room, 1000), Qt::TextWordWrap, words).height());
        painter.fillRect(QRectF(margin, y, inner, high + 0.8 * unitsPerMm), Qt::black);
        painter.setPen(Qt::white);
        painter.setFont(ts::fontFor(words, least));
        painter.drawText(QRectF(margin + unitsPerMm, y + 0.4 * unitsPerMm, room, high), Qt::TextWordWrap, words);
        painter.setPen(Qt::black);
        y += high + 1.4 * unitsPerMm;
    }
    const QFont nameFont = paperFont(std::max(5, static_cast<int>(text)), 600);
    if (y + QFontMetricsF(nameFont).height() <= bottom + 0.5 * unitsPerMm)
        y = paintLine(painter, label.name, nameFont, margin, y, inner);
    const QFont small = paperFont(std::max(5, static_cast<int>(text * 0.85)), 400);
    for (const QString &line : label.lines) {
        if (y + QFontMetricsF(small).height() > bottom + 0.5 * unitsPerMm)
            break;
        y = paintLine(painter, line, small, margin, y, inner);
    }
    painter.restore();
}

Expected<QByteArray> labelsPdf(const Labels &labels)
{
    const auto did = u"Cannot make the labels"_s;
    if (auto can = canDraw(did); !can)
        return can.trouble();
    PdfPages pages{did, labels.title, labels.madeAt, PageSize::A4, static_cast<int>(labels.labels.size()),
                   [&labels](QPainter &painter, int number) { paintLabel(painter, labels.labels.at(number), labels.millimetres); }};
    pages.millimetres = labels.millimetres;
    return writePdf(pages);
}

QByteArray labelsHtml(const Labels &labels)
{
    Filling filling;
    for (const auto &[role, colour] : ink::roles)
        filling.texts.insert(u'@' + QLatin1String(role), QString::fromLatin1(colour));
    filling.put("title", labels.title).put("width", svgNumber(labels.millimetres.width())).put("height", svgNumber(labels.millimetres.height()));
    QList<Filling> list;
    for (const LabelFacts &label : labels.labels) {
        const auto qr = qrCode(label.tag);
        const auto bars = code128(label.tag);
        QList<Filling> lines;
        for (const QString &line : label.lines)
            lines << Filling().put("text", isolated(line));
        list << Filling()
                    .put("tag", label.tag)
                    .put("beside", label.beside)
                    .put("name", isolated(label.name))
                    .put("do_not_power", isolated(label.doNotPower))
                    .put("lines", lines)
                    .put("square", barsOf(qr))
                    .put("square_box", viewBox(qr, true))
                    .put("bars", barsOf(bars))
                    .put("bars_box", viewBox(bars, false));
    }
    filling.put("labels", list);
    return filled(paperFile(u"label.html"_s), filling).toUtf8();
}

} // namespace ts
