#include "model/meters/live_meter.h"

#include <QSerialPort>
#include <QTcpSocket>

using namespace Qt::StringLiterals;

namespace ts {

namespace {
constexpr qsizetype longestLine = 512; // no reply that is understood here is longer
}

LiveMeter::LiveMeter(QObject *parent) : QObject(parent)
{
    for (QTimer *timer : {&m_reply, &m_rest, &m_again})
        timer->setSingleShot(true);
    connect(&m_reply, &QTimer::timeout, this, &LiveMeter::noReply);
    connect(&m_rest, &QTimer::timeout, this, &LiveMeter::askNext);
    connect(&m_again, &QTimer::timeout, this, &LiveMeter::connectDevice);
}

LiveMeter::~LiveMeter()
{
    close();
}

void LiveMeter::open(const MeterAddress &address)
{
    close();
    m_address = address;
    m_open = true;
    m_failures = 0;
    m_identity = {};
    m_identityLine.clear();
    m_tellsFunction = false;
    m_askFunction = true;
    m_measure = {};
    connectDevice();
}

void LiveMeter::close()
{
    m_open = false;
    if (m_device && !m_connecting && m_address.remote)
        send("SYST:LOC"); // its own keys work again
    drop();
    m_again.stop();
}

void LiveMeter::drop()
{
    m_reply.stop();
    m_rest.stop();
    m_asked = Asked::Nothing;
    m_connecting = false;
    m_buffer.clear();
    if (!m_device)
        return;
    m_device->disconnect(this);
    // A socket lets out first what was written, and goes by itself then.
    if (auto *socket = qobject_cast<QTcpSocket *>(m_device)) {
        socket->flush();
        socket->disconnectFromHost();
    } else {
        if (auto *serial = qobject_cast<QSerialPort *>(m_device); serial && serial->isOpen())
            serial->flush();
        m_device->close();
    }
    m_device->deleteLater();
    m_device = nullptr;
}

void LiveMeter::connectDevice()
{
    m_connecting = true;
    m_misses = 0;
    if (m_address.way == MeterAddress::Way::Serial)
        connectSerial();
    else
        connectSocket();
}

void LiveMeter::connectSerial()
{
    auto *port = new QSerialPort(m_address.place, this);
    m_device = port;
    port->setBaudRate(m_address.number);
    port->setDataBits(m_address.dataBits == 7 ? QSerialPort::Data7 : QSerialPort::Data8);
    port->setParity(m_address.parity == 'E' ? QSerialPort::EvenParity : m_address.parity == 'O' ? QSerialPort::OddParity : QSerialPort::NoParity);
    port->setStopBits(m_address.stopBits == 2 ? QSerialPort::TwoStop : QSerialPort::OneStop);
    if (!port->open(QIODevice::ReadWrite))
        return failed(port->error() == QSerialPort::PermissionError ? u"the device is in use, or this user may not open it (on Debian: the group dialout)"_s : port->errorString());
    connect(port, &QSerialPort::errorOccurred, this, [this, port](QSerialPort::SerialPortError error) {
        if (error == QSerialPort::ResourceError || error == QSerialPort::ReadError || error == QSerialPort::WriteError)
            failed(port->errorString());
    }, Qt::QueuedConnection);
    connected();
}

void LiveMeter::connectSocket()
{
    auto *socket = new QTcpSocket(this);
    m_device = socket;
    connect(socket, &QTcpSocket::connected, this, &LiveMeter::connected);
    connect(socket, &QTcpSocket::errorOccurred, this, [this, socket] { failed(socket->errorString()); }, Qt::QueuedConnection);
    m_reply.start(m_pace.connectMs);
    socket->connectToHost(m_address.place, static_cast<quint16>(m_address.number));
}

void LiveMeter::connected()
{
    m_connecting = false;
    connect(m_device, &QIODevice::readyRead, this, &LiveMeter::takeBytes);
    if (m_address.remote)
        send("SYST:REM");
    ask(Asked::Identity);
}

void LiveMeter::failed(const QString &why)
{
    drop();
    const QString did = u"The meter at %1 cannot be reached"_s.arg(m_address.text());
    if (++m_failures >= m_pace.tries || m_identityLine.isEmpty()) // what never was there is not waited for
        return giveUp(did, why);
    Q_EMIT lost({u"The meter at %1 went away"_s.arg(m_address.text()), why, u"it is tried again"_s});
    if (m_open)
        m_again.start(m_pace.againMs);
}

void LiveMeter::giveUp(const QString &did, const QString &why)
{
    close();
    Q_EMIT stopped({did, why, u"check that it is switched on, its cable, and its address in Settings"_s});
}

void LiveMeter::send(const QByteArray &command)
{
    if (m_device && scpi::onlyReads(command))
        m_device->write(command + '\n');
}

void LiveMeter::ask(Asked what)
{
    m_asked = what;
    m_reply.start(m_pace.replyMs);
    send(what == Asked::Function ? QByteArray("FUNC?") : what == Asked::Value ? m_address.query.toLatin1() : QByteArray("*IDN?"));
}

// The function is asked for before every value: somebody may have turned the switch in between.
void LiveMeter::askNext()
{
    ask(m_askFunction ? Asked::Function : Asked::Value);
}

void LiveMeter::takeBytes()
{
    m_buffer += m_device->readAll();
    for (qsizetype end = m_buffer.indexOf('\n'); end >= 0 && m_device; end = m_buffer.indexOf('\n')) {
        const QByteArray line = m_buffer.left(end).trimmed();
        m_buffer.remove(0, end + 1);
        if (!line.isEmpty())
            takeLine(line);
    }
    if (m_buffer.size() > longestLine) {
        m_buffer.clear();
        if (m_asked != Asked::Nothing)
            missed({u"The meter sends what is no reply"_s, u"no line ends for %1 characters"_s.arg(longestLine), u"check speed and parity"_s});
    }
}

void LiveMeter::takeLine(const QByteArray &line)
{
    switch (m_asked) {
    case Asked::Nothing: // nobody asked
        return;
    case Asked::Identity: {
        const auto identity = scpi::identityFrom(line);
        if (!identity)
            return missed(identity.trouble());
        m_identity = *identity;
        m_identityLine = line;
        m_misses = 0;
        Q_EMIT identified(m_identity);
        if (m_open)
            askNext();
        return;
    }
    case Asked::Step: // late replies to what was given up come before it
        if (line == m_identityLine)
            askNext();
        return;
    case Asked::Function:
        return takeFunction(line);
    case Asked::Value:
        return takeValue(line);
    }
}

void LiveMeter::takeFunction(const QByteArray &line)
{
    if (!scpi::isFunction(line))
        return missed({u"The meter's reply \"%1\" names no function"_s.arg(QString::fromLatin1(line.left(40)).simplified()), {}, {}});
    m_tellsFunction = true;
    m_measure = scpi::measureOf(line).value_or(Measure());
    ask(Asked::Value);
}

void LiveMeter::takeValue(const QByteArray &line)
{
    const auto value = scpi::valueFrom(line, m_measure);
    if (!value)
        return missed(value.trouble());
    m_misses = 0;
    m_failures = 0;
    m_asked = Asked::Nothing;
    m_reply.stop();
    m_rest.start(m_pace.restMs);
    Q_EMIT read({*value, line, scpi::stepOf(line)});
}

void LiveMeter::noReply()
{
    if (m_connecting)
        return failed(u"it does not answer within %1 s"_s.arg(m_pace.connectMs / 1000.0));
    // A meter that does not know the query stays silent; it measures all the same.
    if (m_asked == Asked::Function && !m_tellsFunction) {
        m_askFunction = false;
        m_buffer.clear();
        return ask(Asked::Step);
    }
    m_buffer.clear();
    missed({u"The meter did not answer within %1 s"_s.arg(m_pace.replyMs / 1000.0), {}, {}});
}

void LiveMeter::missed(const Trouble &trouble)
{
    m_reply.stop();
    if (++m_misses >= m_pace.tries) {
        if (m_identityLine.isEmpty())
            return giveUp(u"The meter at %1 does not answer as one over SCPI"_s.arg(m_address.text()), trouble.sentence());
        return failed(u"%1 times in a row there was no value; the last time: %2"_s.arg(m_misses).arg(trouble.sentence()));
    }
    Q_EMIT garbled(trouble);
    if (m_open && m_device)
        ask(m_identityLine.isEmpty() ? Asked::Identity : Asked::Step);
}

} // namespace ts
