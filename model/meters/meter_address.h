#pragma once

#include "model/values/expected.h"

namespace ts {

/// Where a meter is and how it is asked: "serial:/dev/ttyUSB0 9600", "socket:192.0.2.7:5025", and behind it, in any order, "7E1" (data bits,
/// parity, stop bits; 8N1 unless said), "remote" for a meter that answers in remote mode only, and the query that takes one value
/// where it is not READ?: "MEAS:VOLT:DC?".
struct MeterAddress {
    enum class Way { Serial, Socket };
    Way way = Way::Socket;
    QString place;    ///< the device's file, or the host
    int number = 0;   ///< bits a second, or the port
    int dataBits = 8; ///< of a serial line, as the next two
    char parity = 'N';
    int stopBits = 1;
    bool remote = false;
    QString query = QStringLiteral("READ?");

    /// Reads an address as above; 9600 bits a second and port 5025 (IANA's for SCPI) unless said. Refuses what is none in one sentence,
    /// and every query that is not one for a value (READ?, FETCh?, MEASure…?).
    [[nodiscard]] static Expected<MeterAddress> parse(const QString &text);
    /// As it reads back the same, without what is usual.
    [[nodiscard]] QString text() const;
    bool operator==(const MeterAddress &) const = default;
};

} // namespace ts
