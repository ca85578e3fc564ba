#include "model/paper/page_cuts.h"

#include <QAbstractTextDocumentLayout>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextLayout>
#include <QTextTable>

#include <algorithm>

namespace ts {

namespace {

constexpr qreal hair = 0.1; // rounding of the layout, far below what is seen

struct Span {
    qreal top = 0;
    qreal bottom = 0;
};

struct TableSpan {
    Span whole;
    Span head; ///< empty where the table has none
    QList<Span> rows;
};

/// What a document is made of, from top to bottom: its lines, and what of it should stay together.
struct Pieces {
    QList<Span> lines;
    QList<Span> together;
    QList<TableSpan> tables;
};

QList<Span> linesOf(const QTextBlock &block)
{
    QList<Span> lines;
    const QRectF place = block.document()->documentLayout()->blockBoundingRect(block);
    for (int i = 0; i < block.layout()->lineCount(); ++i) {
        const QRectF line = block.layout()->lineAt(i).rect();
        lines << Span{place.top() + line.top(), place.top() + line.bottom()};
    }
    return lines;
}

TableSpan tableSpan(const QTextTable &table)
{
    auto *layout = table.document()->documentLayout();
    const QRectF frame = layout->frameBoundingRect(const_cast<QTextTable *>(&table));
    TableSpan span;
    QList<qreal> tops;
    for (int row = 0; row < table.rows(); ++row) {
        qreal top = frame.bottom();
        for (int column = 0; column < table.columns(); ++column) {
            const QTextTableCell cell = table.cellAt(row, column);
            const qreal padding = cell.format().toTableCellFormat().topPadding();
            top = std::min(top, layout->blockBoundingRect(cell.firstCursorPosition().block()).top() - padding);
        }
        tops << top;
    }
    for (int row = 0; row < table.rows(); ++row)
        span.rows << Span{tops[row], row + 1 < table.rows() ? tops[row + 1] : frame.bottom()};
    span.whole = {tops.value(0), frame.bottom()};
    if (const int heads = table.format().headerRowCount(); heads > 0 && heads < table.rows())
        span.head = {tops[0], tops[heads]};
    return span;
}

void addTable(const QTextTable &table, qreal height, Pieces &pieces)
{
    const TableSpan span = tableSpan(table);
    for (const Span &row : span.rows)
        if (row.bottom - row.top <= height / 2)
            pieces.together << row;
    if (const int heads = table.format().headerRowCount(); heads > 0 && heads < table.rows()) {
        const Span &first = span.rows[heads];
        const bool small = first.bottom - first.top <= height / 2;
        const auto lines = linesOf(table.cellAt(heads, 0).firstCursorPosition().block());
        pieces.together << Span{span.head.top, small ? first.bottom : lines.isEmpty() ? span.head.bottom : lines.first().bottom};
    }
    pieces.tables << span;
}

Pieces piecesOf(const QTextDocument &document, qreal height)
{
    Pieces pieces;
    const QTextTable *latest = nullptr;
    std::optional<qreal> heading; ///< top of a heading that waits for its text
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        const QList<Span> lines = linesOf(block);
        QTextTable *table = QTextCursor(block).currentTable();
        // The empty block that stands behind every table has no place of its own.
        if (lines.isEmpty() || (!table && block.length() <= 1))
            continue;
        pieces.lines << lines;
        if (block.blockFormat().headingLevel() > 0) {
            if (!heading)
                heading = lines.first().top;
            continue;
        }
        if (table && table != latest)
            addTable(*table, height, pieces);
        latest = table;
        if (heading) {
            pieces.together << Span{*heading,
                                    table ? lines.first().bottom : lines.at(std::min<qsizetype>(1, lines.size() - 1)).bottom};
            heading.reset();
        }
        if (!table && lines.size() > 1) {
            pieces.together << Span{lines.at(0).top, lines.at(1).bottom};
            pieces.together << Span{lines.at(lines.size() - 2).top, lines.last().bottom};
        }
    }
    return pieces;
}

/// The spans in order, with those that share more than an edge made one.
QList<Span> merged(QList<Span> spans)
{
    std::sort(spans.begin(), spans.end(), [](const Span &a, const Span &b) { return a.top < b.top; });
    QList<Span> out;
    for (const Span &span : std::as_const(spans)) {
        if (!out.isEmpty() && span.top < out.last().bottom - hair)
            out.last().bottom = std::max(out.last().bottom, span.bottom);
        else
            out << span;
    }
    return out;
}

/// Where to cut what is taller than a sheet: the lowest top of a line that parts the fewest other lines.
qreal cutThrough(const QList<Span> &lines, qreal from, qreal to)
{
    qreal best = to;
    auto fewest = lines.size() + 1;
    for (const Span &line : lines) {
        if (line.top <= from + hair || line.top > to)
            continue;
        const auto parted = std::count_if(lines.cbegin(), lines.cend(), [&line](const Span &other) {
            return other.top < line.top - hair && other.bottom > line.top + hair;
        });
        if (parted < fewest || (parted == fewest && line.top > best)) {
            best = line.top;
            fewest = parted;
        }
    }
    return best;
}

} // namespace

QList<PageCut> pageCuts(const QTextDocument &document, qreal height)
{
    const Pieces pieces = piecesOf(document, height);
    const QList<Span> blocks = merged(pieces.lines + pieces.together);
    QList<PageCut> cuts{PageCut{}};
    const auto room = [&] { return height - cuts.last().headHeight(); };
    const auto cutAt = [&](qreal y) {
        PageCut next{y, y, 0, 0};
        for (const TableSpan &table : pieces.tables)
            if (table.head.bottom > table.head.top && y >= table.head.bottom - hair && y < table.whole.bottom - hair)
                next.headTop = table.head.top, next.headBottom = table.head.bottom;
        cuts << next;
    };
    for (const Span &block : blocks) {
        if (block.bottom - cuts.last().top > room() && block.top > cuts.last().top + hair)
            cutAt(block.top);
        while (block.bottom - cuts.last().top > room()) {
            cuts.last().bottom = cutThrough(pieces.lines, cuts.last().top, cuts.last().top + room());
            cutAt(cuts.last().bottom);
        }
        cuts.last().bottom = block.bottom;
    }
    return cuts;
}

} // namespace ts
