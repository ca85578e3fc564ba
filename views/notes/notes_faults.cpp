// Usual causes of a model's symptoms, and the checks that tell them apart.
#include "model/faults/alike.h"
#include "model/faults/fault_board.h"
#include "model/faults/same_text.h"
#include "views/fault/fault_rows.h"
#include "views/notes/known_columns.h"
#include "views/notes/known_list.h"
#include "views/notes/notes_lists.h"

#include <QRegularExpression>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

/// On how many of the owner's own closed units of the model it was this cause.
int timesFound(const KnownCause &cause, const ModelNotes &notes, const QList<SolvedCause> &solved)
{
    QSet<Id<Unit>> units;
    for (const SolvedCause &each : solved) {
        const bool ofModel = ofCategory(notes) ? each.category == notes.category : sameText(each.maker, notes.maker) && sameText(each.makerModel, notes.makerModel);
        if (ofModel && alike(each.cause, cause.text) && (cause.symptom.isEmpty() || alike(each.symptom, cause.symptom)))
            units << each.unit;
    }
    return static_cast<int>(units.size());
}

/// "20 m · £0.00 · 80 %", as on a unit's board.
KnownColumn<KnownCause> putRightColumn(const std::function<Currency()> &currency)
{
    return {{.title = tr("To put right"), .width = 13, .right = true, .tip = tr("minutes, cost, and the chance that it can be had")},
            [](const KnownCause &cause, const NotesFile &) {
                BoardCause shape;
                shape.fixMinutes = cause.fixMinutes;
                shape.fixCost = cause.fixCost;
                shape.fixOdds = cause.fixOdds;
                return typedCell(putRightText(shape));
            },
            [currency](KnownCause cause, const QString &typed, const NotesFile &) -> Expected<KnownCause> {
                const auto right = parsePutRight(typed, currency());
                if (!right)
                    return right.trouble();
                cause.fixMinutes = right->minutes;
                cause.fixCost = right->cost;
                cause.fixOdds = right->odds;
                return cause;
            }};
}

class CausesList : public KnownList<KnownCause> {
public:
    using KnownList::KnownList;

protected:
    void alsoRemoved(const NotesFile &file, const KnownCause &cause, Change &change) const override
    {
        for (const KnownMark &mark : file.all<KnownMark>())
            if (mark.cause == cause.id)
                change.remove(mark);
    }
};

constexpr int pointsToColumn = 4;

QString pointsTo(const KnownCheck &check, const NotesFile &file)
{
    QStringList named;
    for (const KnownMark &mark : file.all<KnownMark>()) {
        if (mark.check != check.id)
            continue;
        for (const KnownCause &cause : file.all<KnownCause>()) {
            if (cause.id != mark.cause)
                continue;
            const bool usual = mark.abnormalIf == usuallyAbnormalIf && mark.abnormalIfNot == usuallyAbnormalIfNot;
            named << (usual ? cause.text : QStringLiteral("%1 %2/%3").arg(cause.text, shown::number(100 * mark.abnormalIf), shown::number(100 * mark.abnormalIfNot)));
        }
    }
    return named.join(QStringLiteral("; "));
}

/// The cause that the text names: one of the check's symptom that reads so, or the only one that begins so.
Expected<KnownCause> causeNamed(const QString &text, const KnownCheck &check, const NotesFile &file)
{
    QList<KnownCause> begin;
    for (const KnownCause &cause : file.all<KnownCause>()) {
        if (!check.symptom.isEmpty() && !sameText(cause.symptom, check.symptom))
            continue;
        if (sameText(cause.text, text))
            return cause;
        if (cause.text.startsWith(text, Qt::CaseInsensitive))
            begin << cause;
    }
    if (begin.size() == 1)
        return begin.first();
    return Trouble{tr("\"%1\" is none of the causes of this symptom").arg(text.left(60)), {}, tr("write a cause as it stands in the list above, several parted by semicolons")};
}

/// The marks that a typed list stands for.
Expected<QList<KnownMark>> marksTyped(const QString &typed, const KnownCheck &check, const NotesFile &file, Maker &maker)
{
    static const QRegularExpression odds(QStringLiteral(R"(^(.*\S)\s+(\d{1,3}(?:[.,]\d+)?)\s*/\s*(\d{1,3}(?:[.,]\d+)?)$)"));
    QList<KnownMark> marks;
    for (const QString &each : typed.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        QString name = each.simplified();
        if (name.isEmpty())
            continue;
        KnownMark mark = maker.fresh<KnownMark>();
        if (const auto match = odds.match(name); match.hasMatch()) {
            const auto yes = typed::shareOrNone(match.captured(2), tr("chance of abnormal if it is the cause"));
            const auto no = typed::shareOrNone(match.captured(3), tr("chance of abnormal if it is not"));
            if (!yes || !no)
                return yes ? no.trouble() : yes.trouble();
            name = match.captured(1);
            mark.abnormalIf = **yes;
            mark.abnormalIfNot = **no;
        }
        const auto cause = causeNamed(name, check, file);
        if (!cause)
            return cause.trouble();
        mark.modelNotes = file.notes.id;
        mark.check = check.id;
        mark.cause = cause->id;
        marks << mark;
    }
    return marks;
}

class ChecksList : public KnownList<KnownCheck> {
public:
    using KnownList::KnownList;

    [[nodiscard]] Expected<NotesEdit> typed(const NotesFile &file, const GridRow &row, int column, const QString &text, Maker &maker) const override
    {
        const KnownCheck *check = find(file, row.key);
        if (!check || column != pointsToColumn)
            return KnownList::typed(file, row, column, text, maker);
        const auto wanted = marksTyped(text, *check, file, maker);
        if (!wanted)
            return wanted.trouble();
        Change change(tr("Model notes: %1").arg(check->text));
        QSet<Id<KnownCause>> stay;
        for (const KnownMark &mark : *wanted) {
            if (stay.contains(mark.cause))
                continue;
            stay << mark.cause;
            const auto &all = file.all<KnownMark>();
            const auto before = std::find_if(all.begin(), all.end(), [&](const KnownMark &each) { return each.check == check->id && each.cause == mark.cause; });
            if (before == all.end()) {
                change.add(mark);
            } else {
                KnownMark after = *before;
                after.abnormalIf = mark.abnormalIf;
                after.abnormalIfNot = mark.abnormalIfNot;
                change.edit(*before, after);
            }
        }
        for (const KnownMark &mark : file.all<KnownMark>())
            if (mark.check == check->id && !stay.contains(mark.cause))
                change.remove(mark);
        return NotesEdit{change, row.key};
    }

protected:
    void alsoRemoved(const NotesFile &file, const KnownCheck &check, Change &change) const override
    {
        for (const KnownMark &mark : file.all<KnownMark>())
            if (mark.check == check.id)
                change.remove(mark);
    }
};

} // namespace

std::unique_ptr<NotesList> causesList(std::function<QList<SolvedCause>()> solved, std::function<Currency()> currency)
{
    const KnownColumn<KnownCause> found{{.title = tr("Found"), .width = 6, .right = true, .tip = tr("on how many of your own closed units it was this")},
                                        [solved = std::move(solved)](const KnownCause &cause, const NotesFile &file) {
                                            const int times = timesFound(cause, file.notes, solved());
                                            return shownCell(times ? shown::count(times) : QString());
                                        },
                                        [](KnownCause cause, const QString &, const NotesFile &) -> Expected<KnownCause> { return cause; }};
    return std::make_unique<CausesList>(tr("Add a cause"), 1,
                                        QList<KnownColumn<KnownCause>>{textColumn(tr("Symptom"), 10, 3, &KnownCause::symptom), textColumn(tr("Usual cause"), 12, 4, &KnownCause::text, true),
                                                                       shareColumn(tr("Weight"), tr("weight"), &KnownCause::weight, tr("against the others of its symptom")),
                                                                       putRightColumn(currency), found,
                                                                       textColumn(tr("Put right how"), 8, 3, &KnownCause::note)},
                                        &KnownCause::text);
}

std::unique_ptr<NotesList> checksList()
{
    KnownColumn<KnownCheck> points{{.title = tr("Abnormal points to"), .width = 12, .stretch = 4, .tip = tr("causes as they stand above, parted by semicolons; 90/5 after one gives its odds in percent")},
                                   [](const KnownCheck &check, const NotesFile &file) { return typedCell(pointsTo(check, file)); },
                                   [](KnownCheck check, const QString &, const NotesFile &) -> Expected<KnownCheck> { return check; }};
    return std::make_unique<ChecksList>(tr("Add a check"), 1,
                                        QList<KnownColumn<KnownCheck>>{textColumn(tr("Symptom"), 10, 3, &KnownCheck::symptom), textColumn(tr("Check"), 12, 4, &KnownCheck::text, true),
                                                                       minutesColumn(tr("Minutes"), &KnownCheck::minutes), textColumn(tr("Wanted"), 8, 3, &KnownCheck::wanted), points},
                                        &KnownCheck::text);
}

} // namespace ts
