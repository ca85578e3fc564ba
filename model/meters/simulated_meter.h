#pragma once

#include "model/values/expected.h"

#include <QByteArray>
#include <QElapsedTimer>
#include <QHash>
#include <QObject>

class QIODevice;
class QTcpServer;

namespace ts {

/// What a simulated meter measures and how badly it behaves. Every so many replies to a query for a value (0: never) one of the faults.
struct SimulatedManner {
    QByteArray function = "VOLT:DC"; ///< empty: it does not know FUNC? and stays silent
    double value = 12;               ///< infinite: over range; NaN: no number
    double noise = 0;                ///< largest deviation of a value
    double driftPerHour = 0;
    int figures = 5;  ///< behind the point
    int replyMs = 10; ///< until it answers
    bool halves = false;  ///< replies come in two halves
    int garbageEvery = 0; ///< a line of rubbish
    int silentEvery = 0;  ///< no reply
    int lateEvery = 0;    ///< a reply `lateMs` too late
    int lateMs = 0;
    int dropEvery = 0; ///< the connection is closed
    bool needsRemote = false; ///< it answers after SYST:REM alone
};

/// A meter without hardware that speaks SCPI, for trying things out and for tests: *IDN?, FUNC?, READ?, FETCh?, MEASure…?, SYST:REM, SYST:LOC,
/// SYST:ERR?. Whatever else is sent is kept, does nothing, and is reported as error −113 (SCPI-99 volume 2, 21.8.10).
class SimulatedMeter : public QObject {
    Q_OBJECT
public:
    explicit SimulatedMeter(const SimulatedManner &manner = {}, QObject *parent = nullptr);
    /// Listens on this computer alone (127.0.0.1); port 0 takes a free one. Answers the port.
    Expected<quint16> listen(quint16 port);
    /// Answers what comes in over an open device, which stays the caller's.
    void speakOver(QIODevice *device);

    void setValue(double value) { m_manner.value = value; }
    [[nodiscard]] SimulatedManner &manner() { return m_manner; }
    [[nodiscard]] bool inRemote() const { return m_remote; }
    [[nodiscard]] const QList<QByteArray> &heard() const { return m_heard; } ///< every command, in order
    void dropAll(); ///< closes every connection; new ones are taken

private:
    void hear(QIODevice *device);
    void obey(QIODevice *device, const QByteArray &command);
    void answerValue(QIODevice *device);
    void reply(QIODevice *device, const QByteArray &line, int afterMs);
    [[nodiscard]] QByteArray measured();

    SimulatedManner m_manner;
    QTcpServer *m_server = nullptr;
    QHash<QIODevice *, QByteArray> m_buffers;
    QList<QByteArray> m_heard;
    QElapsedTimer m_since;
    quint32 m_dice = 12345;
    int m_values = 0;
    int m_errors = 0;
    bool m_remote = false;
};

} // namespace ts
