#pragma once

#include "model/desk/desk.h"
#include "model/paper/paper_pages.h"
#include "model/paper/restoration_facts.h"

#include <functional>

namespace ts {

/// The facts of a unit's restoration sheet with the photos that go on it, read from the workbook. `now` is the sheet's date, in
/// its own time zone.
[[nodiscard]] Expected<RestorationFacts> restorationFacts(Desk &desk, const UnitFile &unit, const BenchFile &bench, const QDateTime &now);

/// The bench's own size of paper: A4 where nothing was set.
[[nodiscard]] PageSize benchPageSize(const BenchFile &bench);

/// How a sheet leaves.
struct SheetWish {
    QString format; ///< pdf, html
    PageSize size = PageSize::A4; ///< of a PDF
    QString file = {}; ///< empty: on a printer
};

/// A paper that is about to leave: what it is, and how it is made once it has its number and edition.
struct OutgoingPaper {
    PaperKind kind = PaperKind::Restoration;
    QString noun; ///< "Restoration sheet", for the journal
    QString title;
    QDateTime madeAt;
    std::function<Expected<QByteArray>(const Paper &numbered)> make;
};

/// Hands a paper over: numbers it, makes it with its number and edition on it, keeps its bytes in the workbook, records it,
/// and puts the file in its place. The file appears only when the workbook has kept its copy, and the copy is kept only where the
/// file can be written; where anything is refused before that, nothing is changed and no number is used up.
/// Answers the record. A paper of the whole workbook has a unit without an id.
[[nodiscard]] Expected<Paper> handOver(Desk &desk, const Unit &unit, const OutgoingPaper &outgoing, const SheetWish &wish);
/// The same for a restoration sheet.
[[nodiscard]] Expected<Paper> handOver(Desk &desk, const Id<Unit> &unit, RestorationFacts facts, const SheetWish &wish);

/// Writes a file whole or not at all.
[[nodiscard]] Expected<void> writeWhole(const QString &file, const QByteArray &bytes);

} // namespace ts
