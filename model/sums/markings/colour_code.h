#pragma once

#include "model/sums/reckon.h"

namespace ts {

/// What the colour bands of a resistor say, by IEC 60062:2016, and what an older edition says where it differs.
struct ColourCode {
    double ohms = 0;
    double tolerancePercent = 20; ///< 20 where no band says it; nothing is promised of a single black band
    std::optional<double>
        olderTolerance;           ///< what charts before the 2016 edition give for that band; nothing where it had no meaning
    bool editionsDiffer = false;  ///< one of the bands is read differently by edition
    std::optional<double> tempco; ///< ppm/K, of a sixth band
    QString remark;               ///< what the editions differ in; empty where they agree
    bool operator==(const ColourCode &) const = default;
};

/// Three to six bands, read from the end that is nearer to the first: two figures, multiplier and tolerance, with five and six
/// bands three figures, with six the temperature coefficient last; a single black band is a link of 0 Ω. Refuses a colour that
/// is none, or that has no meaning at its place ("white is no tolerance"), naming the band. IEC 60062:2016.
[[nodiscard]] Expected<ColourCode> colourCode(const QStringList &bands);

/// The colours' names, in the order of the code: black to white, gold, silver, pink, none.
[[nodiscard]] QStringList colourNames();

/// colour-code for the command line and the page of sums.
[[nodiscard]] Sum colourCodeSum();

} // namespace ts
