#pragma once

#include <QList>

class QTextDocument;

namespace ts {

/// The part of a document, laid out as one endless page, that stands on one sheet. Where it goes on inside a table, the head of
/// that table stands above it again.
struct PageCut {
    qreal top = 0;
    qreal bottom = 0;
    qreal headTop = 0;
    qreal headBottom = 0;
    [[nodiscard]] qreal headHeight() const { return headBottom - headTop; }
};

/// Where to cut a document for sheets of a height. A row of a table and a heading with what follows it are not parted, nor is a
/// single line left alone; what is taller than a sheet is cut between lines. At least one part, even of an empty document.
[[nodiscard]] QList<PageCut> pageCuts(const QTextDocument &document, qreal height);

} // namespace ts
