#pragma once

#include "model/desk/desk.h"
#include "model/exchange/whole_file.h"
#include "model/paper/paper_pages.h"
#include "model/paper/restoration_facts.h"

#include <memory>

namespace ts {

/// The facts of a unit's restoration sheet with the photos that go on it, read from the workbook. `now` is the sheet's date, in
/// its own time zone.
[[nodiscard]] Expected<RestorationFacts> restorationFacts(Desk &desk, const UnitFile &unit, const BenchFile &bench, const QDateTime &now);

/// The bench's own size of paper: A4 where nothing was set.
[[nodiscard]] PageSize benchPageSize(const BenchFile &bench);

/// A restoration sheet on its way out. The file appears only when the workbook has kept its copy, and the copy is kept only where
/// the file can be written: begin, apply the change, finish.
class OutgoingSheet {
public:
    /// Writes the sheet beside `file` without putting it there yet, and keeps the bytes in the workbook. No `file`: it leaves on a
    /// printer. `format` is pdf or html. Refuses where the file cannot be written; nothing is changed then.
    [[nodiscard]] static Expected<OutgoingSheet> begin(Desk &desk, const Id<Unit> &unit, const RestorationFacts &facts, const QByteArray &bytes,
                                                       const QString &format, const QString &file);
    /// What records the sheet; the store gives its number and edition.
    [[nodiscard]] const Change &change() const { return m_change; }
    /// Puts the file in its place, after the change was applied, and answers the record.
    [[nodiscard]] Expected<Paper> finish(Desk &desk);

private:
    OutgoingSheet() = default;
    std::unique_ptr<WholeFile> m_file;
    QString m_name;
    Id<Paper> m_paper;
    Change m_change;
};

/// Writes a file whole or not at all.
[[nodiscard]] Expected<void> writeWhole(const QString &file, const QByteArray &bytes);

} // namespace ts
