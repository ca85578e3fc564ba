#include "model/meters/meter_address.h"

#include "model/meters/scpi.h"

#include <QRegularExpression>
#include <QStringList>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr int usualSpeed = 9600;
constexpr int usualPort = 5025; // scpi-raw in IANA's register of service names and ports

Trouble notOne(const QString &text, const QString &wrong)
{
    return {u"\"%1\" is no address of a meter"_s.arg(text.left(60)), wrong, u"type one such as serial:/dev/ttyUSB0 9600, or socket:192.0.2.7:5025"_s};
}

/// "host", "host:5025", "[2001:db8::7]:5025".
std::optional<Trouble> readSocket(MeterAddress &address, const QString &place, const QString &all)
{
    static const QRegularExpression form(uR"(^(\[[0-9a-fA-F:.]+\]|[\p{L}\d._-]+)(?::(\d{1,5}))?$)"_s);
    const auto match = form.match(place);
    if (!match.hasMatch())
        return notOne(all, u"after socket: there is no host and port"_s);
    address.place = match.captured(1).remove(u'[').remove(u']');
    address.number = match.hasCaptured(2) ? match.captured(2).toInt() : usualPort;
    if (address.number < 1 || address.number > 65535)
        return notOne(all, u"a port is from 1 to 65535"_s);
    return std::nullopt;
}

std::optional<Trouble> readWord(MeterAddress &address, const QString &word, const QString &all)
{
    static const QRegularExpression speed(u"^\\d{3,7}$"_s);
    static const QRegularExpression frame(u"^([78])([NEO])([12])$"_s, QRegularExpression::CaseInsensitiveOption);
    const bool serial = address.way == MeterAddress::Way::Serial;
    if (const auto match = frame.match(word); serial && match.hasMatch()) {
        address.dataBits = match.captured(1).toInt();
        address.parity = match.captured(2).at(0).toUpper().toLatin1();
        address.stopBits = match.captured(3).toInt();
    } else if (serial && speed.match(word).hasMatch()) {
        address.number = word.toInt();
    } else if (word.compare(u"remote"_s, Qt::CaseInsensitive) == 0) {
        address.remote = true;
    } else if (word.endsWith(u'?')) {
        if (!scpi::takesValue(word.toUtf8()))
            return notOne(all, u"%1 is no query for a value; READ?, FETC? and MEAS…? are"_s.arg(word.left(30)));
        address.query = word.toUpper();
    } else {
        return notOne(all, u"\"%1\" in it says nothing"_s.arg(word.left(30)));
    }
    return std::nullopt;
}

} // namespace

Expected<MeterAddress> MeterAddress::parse(const QString &text)
{
    const QString all = text.simplified();
    QStringList words = all.split(u' ', Qt::SkipEmptyParts);
    if (words.isEmpty())
        return notOne(all, u"it is empty"_s);
    MeterAddress address;
    const QString first = words.takeFirst();
    if (first.startsWith(u"serial:"_s, Qt::CaseInsensitive)) {
        address.way = Way::Serial;
        address.place = first.mid(7);
        address.number = usualSpeed;
        if (address.place.isEmpty())
            return notOne(all, u"after serial: there is no device"_s);
    } else if (first.startsWith(u"socket:"_s, Qt::CaseInsensitive)) {
        if (const auto wrong = readSocket(address, first.mid(7), all))
            return *wrong;
    } else {
        return notOne(all, u"it begins with neither serial: nor socket:"_s);
    }
    for (const QString &word : words)
        if (const auto wrong = readWord(address, word, all))
            return *wrong;
    return address;
}

QString MeterAddress::text() const
{
    QStringList words;
    if (way == Way::Serial) {
        words << u"serial:"_s + place << QString::number(number);
        if (const QString frame = QString::number(dataBits) + QLatin1Char(parity) + QString::number(stopBits); frame != u"8N1"_s)
            words << frame;
    } else {
        words << u"socket:%1:%2"_s.arg(place.contains(u':') ? u'[' + place + u']' : place).arg(number);
    }
    if (remote)
        words << u"remote"_s;
    if (query != MeterAddress().query)
        words << query;
    return words.join(u' ');
}

} // namespace ts
