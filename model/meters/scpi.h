#pragma once

#include "model/values/quantity.h"

#include <QByteArray>

namespace ts {

/// Who a meter says it is: the four fields of *IDN? (IEEE 488.2-1992, 10.14); a field of 0 is unknown and left empty.
struct MeterIdentity {
    QString maker;
    QString model;
    QString serial;
    QString firmware;
    /// "Pellworth PM-5, 1204".
    [[nodiscard]] QString text() const;
    bool operator==(const MeterIdentity &) const = default;
};

/// The little of SCPI that reading takes.
namespace scpi {

/// The identity in a reply to *IDN?; refuses what has not three or four fields of printable ASCII.
[[nodiscard]] Expected<MeterIdentity> identityFrom(const QByteArray &line);

/// The number in a reply (IEEE 488.2, 8.7.2 to 8.7.4: NR1, NR2, NR3), in a unit; 9.9E+37 of either sign is over range and 9.91E+37 no
/// number, which is refused (SCPI-99 volume 1, 7.2.1.4 and 7.2.1.5). Refuses everything else that is no number to its last character.
[[nodiscard]] Expected<Quantity> valueFrom(const QByteArray &line, const Measure &measure);
/// The step of the last figure of a number as it was sent: 1e-4 of "+1.19200E+01". 0 where it is no number.
[[nodiscard]] double stepOf(const QByteArray &line);

/// The unit that a meter's function is read in, of a reply to FUNC? ("VOLT:DC", with or without quotation marks; SCPI-99 volume 2,
/// SENSe:FUNCtion): V, A, Ω, F, Hz, s, °C. Nothing where the function is not known here.
[[nodiscard]] std::optional<Measure> measureOf(const QByteArray &line);
/// Whether it has the form of a function's name at all.
[[nodiscard]] bool isFunction(const QByteArray &line);

/// Whether a query takes a value and does nothing else: READ?, FETCh?, MEASure…?, one alone and without parameters that could
/// hold another command.
[[nodiscard]] bool takesValue(const QByteArray &query);
/// Whether a command may be sent to a meter: it takes a value, asks who it is or what it measures, or switches between its own keys and
/// remote mode. Nothing that sets, resets or calibrates is among them.
[[nodiscard]] bool onlyReads(const QByteArray &command);

} // namespace scpi
} // namespace ts
