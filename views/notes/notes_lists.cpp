#include "views/notes/notes_lists.h"

#include "views/notes/known_columns.h"
#include "views/notes/known_list.h"
#include "views/widgets/word_text.h"

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

template <class R>
KnownColumn<R> countColumn(const QString &title, const QString &what, int R::*member, int low, int high)
{
    return {{.title = title, .width = 6, .right = true},
            [member](const R &record, const NotesFile &) { return typedCell(shown::count(record.*member)); },
            [=](R record, const QString &typed, const NotesFile &) -> Expected<R> {
                const auto count = typed::whole(typed, what, low, high);
                if (!count)
                    return count.trouble();
                record.*member = *count;
                return record;
            }};
}

} // namespace

std::unique_ptr<NotesList> pointsList()
{
    const KnownColumn<TestPoint> wanted{{.title = tr("Wanted"), .width = 12, .stretch = 2},
                                        [](const TestPoint &point, const NotesFile &) { return typedCell(point.wanted.text()); },
                                        [](TestPoint point, const QString &typed, const NotesFile &) -> Expected<TestPoint> {
                                            const auto limit = typed.trimmed().isEmpty() ? Expected<Limit>(Limit()) : Limit::parse(typed);
                                            if (!limit)
                                                return limit.trouble();
                                            point.wanted = *limit;
                                            return point;
                                        }};
    return std::make_unique<KnownList<TestPoint>>(tr("Add a test point"), 0,
                                                  QList<KnownColumn<TestPoint>>{textColumn(tr("Test point"), 14, 4, &TestPoint::name, true), wanted,
                                                                                textColumn(tr("Under which conditions"), 12, 3, &TestPoint::conditions),
                                                                                textColumn(tr("Who says so"), 10, 3, &TestPoint::source)},
                                                  &TestPoint::name);
}

std::unique_ptr<NotesList> teardownList()
{
    using T = KnownTeardown;
    return std::make_unique<KnownList<T>>(tr("Add what comes off next"), 0,
                                          QList<KnownColumn<T>>{textColumn(tr("What comes off"), 12, 4, &T::what, true), textColumn(tr("Fasteners"), 9, 3, &T::fasteners),
                                                                textColumn(tr("Connectors"), 8, 2, &T::connectors), textColumn(tr("Springs and washers"), 8, 2, &T::springs),
                                                                textColumn(tr("Mark first"), 8, 2, &T::marks), textColumn(tr("Caution"), 8, 2, &T::caution)},
                                          &T::what);
}

std::unique_ptr<NotesList> partsList()
{
    using P = KnownPart;
    return std::make_unique<KnownList<P>>(tr("Add a part"), 1,
                                          QList<KnownColumn<P>>{textColumn(tr("Position"), 7, 1, &P::position), textColumn(tr("Part"), 12, 4, &P::text, true),
                                                                textColumn(tr("Rating"), 10, 3, &P::rating), countColumn(tr("Pieces"), tr("number of pieces"), &P::quantity, 1, 9999),
                                                                textColumn(tr("Note"), 8, 3, &P::note)},
                                          &P::text);
}

std::unique_ptr<NotesList> proofsList()
{
    using P = KnownProof;
    GridColumn kind{.title = tr("Kind"), .width = 16};
    for (const ProofKind each : {ProofKind::Function, ProofKind::Cosmetic, ProofKind::ElectricalSafety})
        kind.choices << GridChoice{toWord(each), shown::word(each), shown::word(each).front().toLower()};
    const KnownColumn<P> kinds{kind, [](const P &proof, const NotesFile &) { return typedCell(shown::word(proof.kind), toWord(proof.kind)); },
                               [](P proof, const QString &typed, const NotesFile &) -> Expected<P> {
                                   proof.kind = fromWord<ProofKind>(typed).value_or(proof.kind);
                                   return proof;
                               }};
    return std::make_unique<KnownList<P>>(tr("Add a proof that this model asks for"), 0, QList<KnownColumn<P>>{textColumn(tr("What is to be proved"), 20, 4, &P::text, true), kinds}, &P::text);
}

std::unique_ptr<NotesList> papersList()
{
    using P = KnownPaper;
    const KnownColumn<P> kept{{.title = tr("Kept in the workbook"), .width = 14},
                              [](const P &paper, const NotesFile &) { return shownCell(paper.sha256.isEmpty() ? QString() : tr("%1 file").arg(paper.format.toUpper())); },
                              [](P paper, const QString &, const NotesFile &) -> Expected<P> { return paper; }};
    return std::make_unique<KnownList<P>>(tr("Add a service paper: its title"), 0,
                                          QList<KnownColumn<P>>{textColumn(tr("Paper"), 14, 4, &P::title, true), textColumn(tr("Where it is"), 14, 4, &P::link), kept}, &P::title);
}

} // namespace ts
