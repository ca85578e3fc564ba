#pragma once

#include "model/records/unit_file.h"

namespace ts {

/// Which symptom a cause, check or step belongs to.
struct Belonging {
    const Symptom *symptom = nullptr; ///< nullptr: it stands by itself
    QString text;                     ///< without the "for SYMPTOM" that named it

    [[nodiscard]] Id<Symptom> id() const { return symptom ? symptom->id : Id<Symptom>(); }
    /// ` · for "take-up reel stops"`, or nothing.
    [[nodiscard]] QString words() const;
};

/// The symptom that a "for SYMPTOM" at the end names, by two of its words or all of them; work and parts are often "for" something
/// else, so no more than that counts. Where none is named: the newest open one, and the whole text.
[[nodiscard]] Belonging plainlyNamed(const QString &text, const UnitFile &file);

/// The symptom that the text names ("worn belt for reel stops", or by all of the symptom's words), open ones before cleared ones;
/// else the newest open one; else none.
[[nodiscard]] Belonging belonging(const QString &text, const UnitFile &file);

} // namespace ts
