#pragma once

#include "views/workplace.h"

namespace ts {

/// Records that one record is otherwise now. Answers its id where it stands so (nothing to do is done), or nothing where it was refused.
template <class R>
[[nodiscard]] std::optional<QUuid> recordEdit(Workplace &work, const R &before, const R &after, const QString &sentence)
{
    const QUuid id = before.id.value;
    if (!work.record(Change(sentence).edit(before, after)))
        return std::nullopt;
    return id;
}

/// Records a new one, and answers its id where that went well.
template <class R>
[[nodiscard]] std::optional<QUuid> recordNew(Workplace &work, const R &record, const QString &sentence)
{
    if (!work.record(Change(sentence).add(record)))
        return std::nullopt;
    return record.id.value;
}

/// A fresh record of the unit in hand.
template <class R>
[[nodiscard]] R freshOfUnit(Workplace &work)
{
    R record = work.maker().template fresh<R>();
    record.unit = work.file().unit.id;
    return record;
}

} // namespace ts
