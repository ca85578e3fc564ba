#pragma once

#include "model/jot/jotted.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

namespace ts {

/// One line on its way to becoming records, with what it may look at.
struct Jotting {
    const QString &line; ///< as typed, without white space around it
    QString text;        ///< what follows the word that begins the line
    const UnitFile &file;
    const BenchFile &bench;
    Maker &maker;

    /// A new record of this unit.
    template <class R>
    [[nodiscard]] R fresh() const
    {
        R record = maker.fresh<R>();
        record.unit = file.unit.id;
        return record;
    }
    /// The calendar day at the bench.
    [[nodiscard]] QDate today() const { return maker.now().toLocalTime().date(); }
};

/// The line as a note; `why` says in plain words what kept it from being more ("\"grey\" is no value"), empty where nothing did.
[[nodiscard]] Jotted asNote(const Jotting &jotting, const QString &why = {});

} // namespace ts
