#pragma once

#include "model/values/plain_text.h"
#include "views/notes/notes_list.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/typed.h"

namespace ts {

// The columns that several lists have, each over a member of the record.

template <class R>
[[nodiscard]] KnownColumn<R> textColumn(const QString &title, double width, int stretch, QString R::*member, bool needed = false)
{
    return {{.title = title, .width = width, .stretch = stretch},
            [member, needed](const R &record, const NotesFile &) {
                GridCell cell = typedCell(record.*member);
                cell.strong = needed;
                return cell;
            },
            [member, title, needed](R record, const QString &typed, const NotesFile &) -> Expected<R> {
                const auto text = plainText(typed, title, needed ? shortText : longText);
                if (!text)
                    return text.trouble();
                if (needed && text->isEmpty())
                    return Trouble{QCoreApplication::translate("ts", "%1 needs a word").arg(title), {}, QCoreApplication::translate("ts", "Delete takes the row off the list")};
                record.*member = *text;
                return record;
            }};
}

template <class R>
[[nodiscard]] KnownColumn<R> minutesColumn(const QString &title, std::optional<int> R::*member)
{
    return {{.title = title, .width = 8, .right = true},
            [member](const R &record, const NotesFile &) { return typedCell(record.*member ? shown::count(*(record.*member)) : QString()); },
            [member](R record, const QString &typed, const NotesFile &) -> Expected<R> {
                const auto minutes = typed::minutesOrNone(typed);
                if (!minutes)
                    return minutes.trouble();
                record.*member = *minutes;
                return record;
            }};
}

template <class R>
[[nodiscard]] KnownColumn<R> shareColumn(const QString &title, const QString &what, std::optional<double> R::*member, const QString &tip)
{
    return {{.title = title, .width = 8, .right = true, .tip = tip},
            [member](const R &record, const NotesFile &) { return typedCell(record.*member ? shown::percent(*(record.*member)) : QString()); },
            [member, what](R record, const QString &typed, const NotesFile &) -> Expected<R> {
                const auto share = typed::shareOrNone(typed, what);
                if (!share)
                    return share.trouble();
                record.*member = *share;
                return record;
            }};
}

} // namespace ts
