#pragma once

#include "model/meters/meter_address.h"
#include "model/meters/scpi.h"

#include <QObject>
#include <QTimer>

class QIODevice;

namespace ts {

/// One value as a meter gave it.
struct LiveReading {
    Quantity value; ///< in the function's unit, without prefix; no unit where the meter does not say what it measures
    QByteArray raw; ///< the reply itself
    double step = 0; ///< of its last figure
};

/// A meter that is asked for one value after the other over SCPI, on a serial line or a socket. Read only: nothing is ever sent but the queries of
/// scpi::onlyReads and, where its address says so, SYST:REM at the beginning and SYST:LOC at the end. Nothing here blocks: all of it happens in
/// the event loop of the thread that the object lives in. A reply that does not come in time is given up, and what comes late is not
/// taken for the answer to a later query: the line is brought into step by *IDN? first. A connection that drops is tried again.
class LiveMeter : public QObject {
    Q_OBJECT
public:
    struct Pace {
        int connectMs = 5000;
        int replyMs = 4000; ///< slow meters take two seconds for a value
        int restMs = 120;   ///< between two values
        int againMs = 1500; ///< before a dropped connection is tried again
        int tries = 3;      ///< in a row without success, then it is given up
    };
    explicit LiveMeter(QObject *parent = nullptr);
    ~LiveMeter() override;

    void setPace(const Pace &pace) { m_pace = pace; }
    /// Connects and reads on until close(). One address at a time.
    void open(const MeterAddress &address);
    void close();
    [[nodiscard]] bool isOpen() const { return m_open; }
    [[nodiscard]] const MeterAddress &address() const { return m_address; }
    [[nodiscard]] const MeterIdentity &identity() const { return m_identity; }

Q_SIGNALS:
    void identified(const ts::MeterIdentity &identity);
    void read(const ts::LiveReading &reading);
    void garbled(const ts::Trouble &trouble); ///< a reply that was no value, or none in time; it goes on
    void lost(const ts::Trouble &trouble);    ///< the connection dropped; it is tried again
    void stopped(const ts::Trouble &trouble); ///< given up; the meter is closed

private:
    enum class Asked { Nothing, Identity, Function, Value, Step };
    void connectDevice();
    void connectSerial();
    void connectSocket();
    void connected();
    void drop();
    void failed(const QString &why);
    void send(const QByteArray &command);
    void ask(Asked what);
    void askNext();
    void takeBytes();
    void takeLine(const QByteArray &line);
    void takeFunction(const QByteArray &line);
    void takeValue(const QByteArray &line);
    void noReply();
    void missed(const Trouble &trouble);
    void giveUp(const QString &did, const QString &why);

    Pace m_pace;
    MeterAddress m_address;
    MeterIdentity m_identity;
    QByteArray m_identityLine;
    QIODevice *m_device = nullptr;
    QByteArray m_buffer;
    QTimer m_reply; ///< to connect, or for a reply
    QTimer m_rest;
    QTimer m_again;
    Asked m_asked = Asked::Nothing;
    bool m_open = false;
    bool m_connecting = false;
    bool m_tellsFunction = false; ///< it has answered FUNC? once
    bool m_askFunction = true;
    Measure m_measure;
    int m_misses = 0;   ///< replies in a row that did not come or were no value
    int m_failures = 0; ///< connections in a row that came to nothing
};

} // namespace ts
