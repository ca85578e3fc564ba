// meter: one settled reading of a meter over SCPI, and a meter to try it with.
#include "app/commands.h"

#include "model/meters/live_meter.h"
#include "model/meters/settling.h"
#include "model/meters/simulated_meter.h"
#include "model/values/number.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>

#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

/// What came of asking a meter.
struct MeterAnswer {
    MeterIdentity identity;
    std::optional<LiveReading> reading;
    int readings = 0;
    QString trouble; ///< the last thing that went wrong
};

/// Reads until a value has settled, the meter is given up, or the time is over.
MeterAnswer askUntilSettled(const MeterAddress &address, double seconds)
{
    MeterAnswer asked;
    LiveMeter meter;
    Settling settling;
    QEventLoop loop;
    QObject::connect(&meter, &LiveMeter::identified, &loop, [&](const MeterIdentity &identity) { asked.identity = identity; });
    QObject::connect(&meter, &LiveMeter::read, &loop, [&](const LiveReading &reading) {
        ++asked.readings;
        if (!settling.add(reading.value, reading.step))
            return;
        asked.reading = reading;
        loop.quit();
    });
    const auto remember = [&](const Trouble &trouble) { asked.trouble = trouble.sentence(); };
    QObject::connect(&meter, &LiveMeter::garbled, &loop, remember);
    QObject::connect(&meter, &LiveMeter::lost, &loop, remember);
    QObject::connect(&meter, &LiveMeter::stopped, &loop, [&](const Trouble &trouble) {
        remember(trouble);
        loop.quit();
    });
    QTimer::singleShot(static_cast<int>(seconds * 1000), &loop, &QEventLoop::quit);
    // Begun inside of the loop, so that what is refused at once can end it.
    QTimer::singleShot(0, &meter, [&] { meter.open(address); });
    loop.exec();
    if (asked.readings > 0 && !asked.reading)
        asked.trouble = u"The value did not settle within %1 s: %2 readings were taken, and no four in a row agreed within a step of the last figure. %3"_s.arg(seconds).arg(asked.readings).arg(asked.trouble).simplified();
    else if (!asked.reading && asked.trouble.isEmpty())
        asked.trouble = u"The meter at %1 gave no value within %2 s."_s.arg(address.text()).arg(seconds);
    meter.close();
    QCoreApplication::processEvents(); // what it is told at the end goes out
    return asked;
}

Exit runSimulated(Invocation &run)
{
    Options options(run);
    for (const char *name : {"port", "value", "function", "noise", "drift", "fault"})
        options.add(QLatin1String(name), u"value"_s);
    if (auto read = options.read(run.arguments().mid(1), 0, 0); !read)
        return run.misuse(read.trouble().sentence());
    SimulatedManner manner{.noise = 0.0002};
    const auto number = [&](const char *name, double usual) -> Expected<double> {
        const QString text = options.value(QLatin1String(name));
        return text.isEmpty() ? Expected<double>(usual) : text == u"OL"_s ? Expected<double>(HUGE_VAL) : parseNumber(text);
    };
    const auto port = number("port", 5025), value = number("value", 12), noise = number("noise", manner.noise), drift = number("drift", 0);
    for (const auto *each : {&port, &value, &noise, &drift})
        if (!*each)
            return run.misuse(each->trouble().sentence());
    if (*port < 0 || *port > 65535 || *port != std::floor(*port))
        return run.misuse(u"A port is a whole number from 0 (a free one) to 65535."_s);
    manner.value = *value;
    manner.noise = *noise;
    manner.driftPerHour = *drift;
    if (options.has(u"function"_s))
        manner.function = options.value(u"function"_s).toUpper().toLatin1();
    if (!scpi::measureOf(manner.function))
        return run.misuse(u"--function is one of VOLT, CURR, RES, FREQ, PER, CAP, TEMP, DIOD, CONT."_s);
    const QStringList faults = options.value(u"fault"_s).split(u',', Qt::SkipEmptyParts);
    for (const QString &fault : faults) {
        if (fault == u"slow"_s)
            manner.replyMs = 1500;
        else if (fault == u"garbage"_s)
            manner.garbageEvery = 5;
        else if (fault == u"silent"_s)
            manner.silentEvery = 7;
        else if (fault == u"halves"_s)
            manner.halves = true;
        else if (fault == u"drop-outs"_s)
            manner.dropEvery = 30;
        else
            return run.misuse(u"--fault is one or more of slow, garbage, silent, halves, drop-outs, with commas between them."_s);
    }
    SimulatedMeter meter(manner);
    const auto listens = meter.listen(static_cast<quint16>(*port));
    if (!listens)
        return run.refuse(listens.trouble());
    run.remark(u"A simulated meter answers at socket:127.0.0.1:%1 until this is ended with Ctrl+C."_s.arg(*listens));
    QCoreApplication::exec();
    return Exit::Done;
}

} // namespace

Exit runMeter(Invocation &run)
{
    if (run.arguments().value(0) == u"simulate"_s)
        return runSimulated(run);
    Options options(run);
    options.add(u"json"_s);
    options.add(u"within"_s, u"seconds"_s);
    if (auto read = options.read(run.arguments(), 1, -1); !read)
        return run.misuse(read.trouble().sentence());
    const auto address = MeterAddress::parse(options.places().join(u' '));
    if (!address)
        return run.misuse(address.trouble().sentence());
    const auto seconds = options.has(u"within"_s) ? parseNumber(options.value(u"within"_s)) : Expected<double>(30);
    if (!seconds || *seconds <= 0 || *seconds > 3600)
        return run.misuse(u"--within takes seconds, from above 0 to 3600."_s);
    const MeterAnswer asked = askUntilSettled(*address, *seconds);
    if (!asked.reading)
        return run.refuse(Trouble{asked.trouble.endsWith(u'.') ? asked.trouble.chopped(1) : asked.trouble, {}, {}});
    const Quantity &value = asked.reading->value;
    const QString raw = QString::fromLatin1(asked.reading->raw);
    if (options.has(u"json"_s)) {
        run.print({{u"identity"_s, QJsonObject{{u"maker"_s, asked.identity.maker}, {u"model"_s, asked.identity.model}, {u"serial"_s, asked.identity.serial}, {u"firmware"_s, asked.identity.firmware}}},
                   {u"value"_s, value.sense() == Sense::OverRange ? QJsonValue() : QJsonValue(value.value())},
                   {u"unit"_s, value.measure().text()},
                   {u"over_range"_s, value.sense() == Sense::OverRange},
                   {u"raw"_s, raw},
                   {u"readings"_s, asked.readings}});
        return Exit::Done;
    }
    run.out() << asked.identity.text() << '\n' << value.text() << "  (" << raw << u", settled after %1 readings)\n"_s.arg(asked.readings);
    return Exit::Done;
}

} // namespace ts
