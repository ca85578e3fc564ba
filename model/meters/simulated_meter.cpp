#include "model/meters/simulated_meter.h"

#include "model/meters/scpi.h"

#include <QPointer>
#include <QTcpServer>
#include <QTcpSocket>
#include <QTimer>

#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

SimulatedMeter::SimulatedMeter(const SimulatedManner &manner, QObject *parent) : QObject(parent), m_manner(manner)
{
    m_since.start();
}

Expected<quint16> SimulatedMeter::listen(quint16 port)
{
    m_server = new QTcpServer(this);
    connect(m_server, &QTcpServer::newConnection, this, [this] {
        while (QTcpSocket *socket = m_server->nextPendingConnection()) {
            connect(socket, &QTcpSocket::disconnected, socket, &QObject::deleteLater);
            speakOver(socket);
        }
    });
    if (!m_server->listen(QHostAddress::LocalHost, port))
        return Trouble{u"The simulated meter cannot listen on port %1"_s.arg(port), m_server->errorString(), u"choose another port"_s};
    return m_server->serverPort();
}

void SimulatedMeter::speakOver(QIODevice *device)
{
    m_buffers.insert(device, {});
    connect(device, &QIODevice::readyRead, this, [this, device] { hear(device); });
    connect(device, &QObject::destroyed, this, [this, device] { m_buffers.remove(device); });
    if (device->bytesAvailable() > 0)
        hear(device);
}

void SimulatedMeter::dropAll()
{
    const QList<QIODevice *> devices = m_buffers.keys();
    for (QIODevice *device : devices)
        device->close();
}

void SimulatedMeter::hear(QIODevice *device)
{
    QByteArray buffer = m_buffers.value(device) + device->readAll();
    QList<QByteArray> commands;
    for (qsizetype end = buffer.indexOf('\n'); end >= 0; end = buffer.indexOf('\n')) {
        commands << buffer.left(end).trimmed();
        buffer.remove(0, end + 1);
    }
    m_buffers.insert(device, buffer.right(512));
    for (const QByteArray &command : commands)
        if (!command.isEmpty() && device->isOpen())
            obey(device, command);
}

void SimulatedMeter::obey(QIODevice *device, const QByteArray &command)
{
    m_heard << command;
    if (command == "SYST:REM")
        m_remote = true;
    else if (command == "SYST:LOC")
        m_remote = false;
    else if (m_manner.needsRemote && !m_remote)
        return;
    else if (command == "*IDN?")
        reply(device, "Turnscrew,Simulated meter,0," TURNSCREW_VERSION, m_manner.replyMs);
    else if (command == "FUNC?" && !m_manner.function.isEmpty())
        reply(device, '"' + m_manner.function + '"', m_manner.replyMs);
    else if (scpi::takesValue(command))
        answerValue(device);
    else if (command == "SYST:ERR?")
        reply(device, m_errors > 0 ? "-113,\"Undefined header\"" : "0,\"No error\"", m_manner.replyMs), m_errors = std::max(0, m_errors - 1);
    else
        ++m_errors;
}

void SimulatedMeter::answerValue(QIODevice *device)
{
    ++m_values;
    const auto turn = [this](int every) { return every > 0 && m_values % every == 0; };
    if (turn(m_manner.dropEvery))
        return device->close();
    if (turn(m_manner.silentEvery))
        return;
    if (turn(m_manner.garbageEvery))
        return reply(device, QByteArray("\x8f\x02+1.2E;?\x7f#0"), m_manner.replyMs);
    reply(device, measured(), m_manner.replyMs + (turn(m_manner.lateEvery) ? m_manner.lateMs : 0));
}

void SimulatedMeter::reply(QIODevice *device, const QByteArray &line, int afterMs)
{
    const qsizetype half = m_manner.halves ? line.size() / 2 : 0;
    const auto put = [device](const QByteArray &bytes) {
        if (device->isOpen())
            device->write(bytes);
    };
    QTimer::singleShot(afterMs, device, [=] {
        put(line.left(half));
        QTimer::singleShot(half > 0 ? 30 : 0, device, [=] { put(line.mid(half) + "\r\n"); });
    });
}

QByteArray SimulatedMeter::measured()
{
    if (std::isnan(m_manner.value))
        return "+9.91000000E+37";
    if (std::isinf(m_manner.value))
        return m_manner.value > 0 ? "+9.90000000E+37" : "-9.90000000E+37";
    m_dice = m_dice * 1664525U + 1013904223U; // Numerical Recipes' quick generator: good enough for noise
    const double noise = m_manner.noise * (static_cast<double>(m_dice >> 8) / 8388608.0 - 1);
    const double value = m_manner.value + noise + m_manner.driftPerHour * static_cast<double>(m_since.elapsed()) / 3.6e6;
    const QByteArray text = QByteArray::number(value, 'E', m_manner.figures);
    return value < 0 ? text : '+' + text;
}

} // namespace ts
