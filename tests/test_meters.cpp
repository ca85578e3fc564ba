// A live meter over a real socket and a real (pseudo-)terminal, against a simulated meter that behaves well and badly.
#include "model/meters/live_meter.h"
#include "model/meters/live_text.h"
#include "model/meters/settling.h"
#include "model/meters/simulated_meter.h"
#include "tests/pty_master.h"
#include "tests/testing.h"

#include <QtTest>

#include <cmath>

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

namespace {

constexpr LiveMeter::Pace quick{.connectMs = 1000, .replyMs = 400, .restMs = 1, .againMs = 30, .tries = 3};

/// A meter that is read, and all that it said.
struct Listening {
    LiveMeter meter;
    QList<LiveReading> readings;
    QList<MeterIdentity> identities;
    QList<Trouble> garbled, lost, stopped;

    explicit Listening(const QString &address)
    {
        meter.setPace(quick);
        QObject::connect(&meter, &LiveMeter::read, &meter, [this](const LiveReading &reading) { readings << reading; });
        QObject::connect(&meter, &LiveMeter::identified, &meter, [this](const MeterIdentity &identity) { identities << identity; });
        QObject::connect(&meter, &LiveMeter::garbled, &meter, [this](const Trouble &trouble) { garbled << trouble; });
        QObject::connect(&meter, &LiveMeter::lost, &meter, [this](const Trouble &trouble) { lost << trouble; });
        QObject::connect(&meter, &LiveMeter::stopped, &meter, [this](const Trouble &trouble) { stopped << trouble; });
        const auto parsed = MeterAddress::parse(address);
        if (parsed)
            meter.open(*parsed);
    }
    bool waitFor(qsizetype count) { return QTest::qWaitFor([&] { return readings.size() >= count; }, 20'000); }
    /// Every value that was read lies this near to what the meter measures: none is made up from rubbish.
    [[nodiscard]] bool allNear(double value, double within) const
    {
        return std::all_of(readings.begin(), readings.end(), [&](const LiveReading &each) { return std::abs(each.value.base() - value) <= within; });
    }
};

/// Either way to the same meter.
struct Simulated {
    SimulatedMeter meter;
    std::unique_ptr<PtyMaster> line;
    QString address;

    Simulated(const QString &way, const SimulatedManner &manner) : meter(manner)
    {
        if (way == u"serial"_s) {
            line = std::make_unique<PtyMaster>();
            meter.speakOver(line.get());
            address = u"serial:%1 115200"_s.arg(line->name());
        } else {
            address = u"socket:127.0.0.1:%1"_s.arg(meter.listen(0).value());
        }
    }
};

} // namespace

class TestMeters : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void addresses_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("reads"); // empty: refused
        const auto row = [](const char *typed, const char *reads) { QTest::newRow(typed) << QString::fromUtf8(typed) << QString::fromUtf8(reads); };
        row("serial:/dev/ttyUSB0 9600", "serial:/dev/ttyUSB0 9600");
        row("serial:/dev/ttyS1", "serial:/dev/ttyS1 9600");
        row("serial:/dev/ttyS1 2400 7e2 remote", "serial:/dev/ttyS1 2400 7E2 remote");
        row("socket:192.0.2.7:5025", "socket:192.0.2.7:5025");
        row(" socket:bench-meter.example ", "socket:bench-meter.example:5025");
        row("socket:[2001:db8::7]:5555", "socket:[2001:db8::7]:5555");
        row("socket:192.0.2.7 meas:volt:dc?", "socket:192.0.2.7:5025 MEAS:VOLT:DC?");
        row("", "");
        row("192.0.2.7", "");
        row("socket:", "");
        row("socket:192.0.2.7:99999", "");
        row("socket:192.0.2.7:0", "");
        row("serial:", "");
        row("serial:/dev/ttyUSB0 fast", "");
        row("socket:192.0.2.7 *RST", "");
        row("socket:192.0.2.7 OUTP?", "");
        row("socket:192.0.2.7 READ?;OUTP", "");
    }
    void addresses()
    {
        QFETCH(QString, typed);
        QFETCH(QString, reads);
        const auto address = MeterAddress::parse(typed);
        QCOMPARE(address.ok(), !reads.isEmpty());
        if (!address) {
            QVERIFY(address.trouble().sentence().endsWith(u'.'));
            return;
        }
        QCOMPARE(address->text(), reads);
        QVERIFY(*MeterAddress::parse(address->text()) == *address);
    }

    /// Nothing that could change what a meter or a source puts out is ever sent.
    void onlyReads_data()
    {
        QTest::addColumn<QByteArray>("command");
        QTest::addColumn<bool>("may");
        for (const char *each : {"READ?", "FETC?", "FETCh?", "MEAS:VOLT:DC?", "MEASure:RESistance?", "*IDN?", "FUNC?", "SYST:REM", "SYST:LOC"})
            QTest::newRow(each) << QByteArray(each) << true;
        for (const char *each : {"OUTP ON", "OUTP:STAT 1", "VOLT 5", "*RST", "*TST?", "*CAL?", "CAL:ALL?", "CONF:VOLT:DC", "READ?;OUTP ON", "READ?;*RST", "MEAS:VOLT:DC? 10;OUTP ON", "READ?\nOUTP ON", "INIT", "*TRG", "SYST:PRES",
                                 "READ", "", "READ? OUTP"})
            QTest::newRow(QByteArray(each).replace('\n', " then ").constData()) << QByteArray(each) << false;
    }
    void onlyReads()
    {
        QFETCH(QByteArray, command);
        QFETCH(bool, may);
        QCOMPARE(scpi::onlyReads(command), may);
    }

    void replies()
    {
        const Measure volt = *Measure::parse(u"V");
        // NR1, NR2 and NR3 of IEEE 488.2-1992, 8.7.2 to 8.7.4.
        QCOMPARE(scpi::valueFrom("12", volt)->value(), 12.0);
        QCOMPARE(scpi::valueFrom("-12.50", volt)->value(), -12.5);
        QCOMPARE(scpi::valueFrom("+1.19200E+01", volt)->value(), 11.92);
        QCOMPARE(scpi::stepOf("12"), 1.0);
        QVERIFY(std::abs(scpi::stepOf("-12.50") - 0.01) < 1e-15);
        QVERIFY(std::abs(scpi::stepOf("+1.19200E+01") - 1e-4) < 1e-15);
        // SCPI-99 volume 1, 7.2.1.4: INFinity is 9.9E37, NINFinity −9.9E37; 7.2.1.5: NAN is 9.91E37.
        QCOMPARE(scpi::valueFrom("9.9E37", volt)->sense(), Sense::OverRange);
        QCOMPARE(scpi::valueFrom("-9.90000000E+37", volt)->sense(), Sense::OverRange);
        QVERIFY(!scpi::valueFrom("+9.91000000E+37", volt).ok());
        QCOMPARE(scpi::valueFrom("9.8E37", volt)->sense(), Sense::Plain);
        for (const char *rubbish : {"", "+", ".", "1.2.3", "1,2", "12 V", "nan", "inf", "0x12", "1E", "1E+9999", "\xff\xfe", "+1.2E;?"})
            QVERIFY2(!scpi::valueFrom(rubbish, volt).ok(), rubbish);
        // IEEE 488.2, 10.14: four fields, 0 where the serial number or the firmware is not known.
        const auto identity = scpi::identityFrom("Pellworth,PM-5,0,1.02");
        wantOk(identity);
        QCOMPARE(identity->text(), u"Pellworth PM-5"_s);
        QCOMPARE(identity->firmware, u"1.02"_s);
        QVERIFY(!scpi::identityFrom("+1.19200E+01").ok());
        QVERIFY(!scpi::identityFrom("a,b,\x01,d").ok());
        // SCPI-99 volume 2, 18 (SENSe): functions by their names, short and long.
        QCOMPARE(scpi::measureOf("\"VOLT:DC\"")->text(), u"V"_s);
        QCOMPARE(scpi::measureOf("\"VOLT\"")->text(), u"V"_s);
        QCOMPARE(scpi::measureOf("FRESistance")->text(), u"Ω"_s);
        QCOMPARE(scpi::measureOf("\"CURRent:AC\"")->text(), u"A"_s);
        QCOMPARE(scpi::measureOf("\"SENS:FREQ\"")->text(), u"Hz"_s);
        QVERIFY(!scpi::measureOf("\"VOLT:DC:RAT\"") && !scpi::measureOf("\"POW\""));
        QVERIFY(scpi::isFunction("\"VOLT:DC\"") && !scpi::isFunction("+1.19200E+01"));
    }

    void asSomebodyWouldTypeIt()
    {
        const auto measure = [](const char *unit) { return *Measure::parse(QString::fromUtf8(unit)); };
        const auto text = [&](double value, double step, const char *unit, const char *like) {
            const auto typed = liveText({Quantity(value, *unit ? measure(unit) : Measure()), {}, step}, *like ? measure(like) : Measure());
            return typed ? *typed : typed.trouble().sentence();
        };
        QCOMPARE(text(11.92, 1e-4, "V", "V"), u"11.9200 V"_s);
        QCOMPARE(text(0.01192, 1e-6, "V", "mV"), u"11.920 mV"_s);
        QCOMPARE(text(0.01192, 1e-6, "V", ""), u"11.920 mV"_s);
        QCOMPARE(text(4700, 0.1, "ohm", ""), u"4.7000 kΩ"_s);
        QCOMPARE(text(25.3, 0.1, "°C", ""), u"25.3 °C"_s);
        QCOMPARE(text(0.024, 1e-5, "", "mA"), u"24.00 mA"_s); // values over SCPI are in base units
        QVERIFY(text(0.024, 1e-5, "V", "mA").contains(u"turn its switch"_s));
        QVERIFY(text(0.024, 1e-5, "", "").contains(u"does not say"_s));
        QCOMPARE(*liveText({Quantity(0, measure("V"), Sense::OverRange), "9.9E37", 1e36}, measure("mV")), u"OL"_s);
    }

    void settles()
    {
        const Measure volt = *Measure::parse(u"V");
        const auto at = [&](double value) { return Quantity(value, volt); };
        Settling settling(4);
        for (const double value : {3.0, 9.0, 11.0, 11.90, 11.92, 11.91})
            QVERIFY(!settling.add(at(value), 0.01)); // 11.90 and 11.92 are two steps apart
        QVERIFY(!settling.add(at(11.92), 0.01));
        QVERIFY(settling.add(at(11.91), 0.01)); // 11.92, 11.91, 11.92, 11.91
        QVERIFY(settling.add(at(11.91), 0.01));
        QVERIFY(!settling.add(at(11.93), 0.01)); // two steps off what is left
        QVERIFY(!settling.add(Quantity(0, volt, Sense::OverRange), 0.01));
        QCOMPARE(settling.agreeing(), 1);
        for (int i = 0; i < 2; ++i)
            QVERIFY(!settling.add(Quantity(0, volt, Sense::OverRange), 0.01));
        QVERIFY(settling.add(Quantity(0, volt, Sense::OverRange), 0.01));
        // A slow creep of half a step never settles by going along with its neighbour.
        Settling creeping(4);
        for (int i = 0; i < 50; ++i)
            QVERIFY(!creeping.add(at(5 + 0.005 * i), 0.01));

        TakenOnce once;
        QVERIFY(!once.ready(at(12), 0.01, false) && once.ready(at(12), 0.01, true));
        once.taken(at(12));
        QVERIFY(!once.ready(at(12.01), 0.01, true)); // still on the same point
        QVERIFY(!once.ready(at(0.1), 0.01, false));  // lifted
        QVERIFY(once.ready(at(12), 0.01, true));     // and put on the next, which reads the same
    }

    void ways_data()
    {
        QTest::addColumn<QString>("way");
        QTest::newRow("over a socket") << u"socket"_s;
        QTest::newRow("over a serial line") << u"serial"_s;
    }

    void wellBehaved_data() { ways_data(); }
    void wellBehaved()
    {
        QFETCH(QString, way);
        Simulated simulated(way, {.value = 11.92});
        Listening on(simulated.address);
        QVERIFY2(on.waitFor(5), qPrintable(on.stopped.isEmpty() ? QString() : on.stopped.first().sentence()));
        QCOMPARE(on.identities.first().model, u"Simulated meter"_s);
        QCOMPARE(on.readings.first().value.text(), u"11.92 V"_s);
        QCOMPARE(on.readings.first().raw, QByteArray("+1.19200E+01"));
        QVERIFY(on.garbled.isEmpty() && on.lost.isEmpty());
        // Somebody turns the switch and lifts the probe.
        simulated.meter.manner().function = "RES";
        simulated.meter.setValue(HUGE_VAL);
        QVERIFY(QTest::qWaitFor([&] { return on.readings.last().value.sense() == Sense::OverRange && on.readings.last().value.measure().text() == u"Ω"_s; }, 5000));
        QCOMPARE(on.readings.last().raw, QByteArray("+9.90000000E+37"));
        const auto before = on.readings.size();
        simulated.meter.setValue(std::nan(""));
        QVERIFY(QTest::qWaitFor([&] { return !on.garbled.isEmpty(); }, 5000));
        QVERIFY(on.garbled.first().sentence().contains(u"9.91E+37"_s));
        simulated.meter.setValue(4700);
        QVERIFY(on.waitFor(before + 4));
        QCOMPARE(on.readings.last().value.base(), 4700.0);
        on.meter.close();
        for (const QByteArray &command : simulated.meter.heard())
            QVERIFY2(scpi::onlyReads(command), command.constData());
        QVERIFY(!simulated.meter.heard().contains("SYST:REM")); // it was not asked for
    }

    void remoteModeWhereItIsNeeded_data() { ways_data(); }
    void remoteModeWhereItIsNeeded()
    {
        QFETCH(QString, way);
        Simulated simulated(way, {.needsRemote = true});
        Listening without(simulated.address);
        QVERIFY(QTest::qWaitFor([&] { return !without.stopped.isEmpty(); }, 5000));
        QVERIFY(without.readings.isEmpty() && !without.meter.isOpen());
        Listening on(simulated.address + u" remote"_s);
        QVERIFY(on.waitFor(2));
        QVERIFY(simulated.meter.inRemote());
        on.meter.close();
        QVERIFY(QTest::qWaitFor([&] { return !simulated.meter.inRemote(); }, 5000)); // its keys work again
    }

    void badlyBehaved_data()
    {
        QTest::addColumn<QString>("way");
        QTest::addColumn<int>("fault");
        const char *names[] = {"halves", "garbage", "silent", "late", "slow", "tells no function", "all at once"};
        for (const char *way : {"socket", "serial"})
            for (int fault = 0; fault < 7; ++fault)
                QTest::addRow("%s: %s", way, names[fault]) << QString::fromLatin1(way) << fault;
    }
    void badlyBehaved()
    {
        QFETCH(QString, way);
        QFETCH(int, fault);
        SimulatedManner manner{.value = 5, .noise = 0.001};
        const bool all = fault == 6;
        manner.halves = fault == 0 || all;
        manner.garbageEvery = fault == 1 || all ? 3 : 0;
        manner.silentEvery = fault == 2 || all ? 5 : 0;
        manner.lateEvery = fault == 3 || all ? 4 : 0;
        manner.lateMs = 550; // beyond the time-out of 400: it comes while something else is asked
        manner.replyMs = fault == 4 ? 150 : 5;
        if (fault == 5)
            manner.function.clear();
        Simulated simulated(way, manner);
        Listening on(simulated.address);
        QVERIFY(on.waitFor(12));
        QVERIFY(on.allNear(5, 0.0011));
        // Four misses in a row, as all at once makes them, count as a connection that is gone.
        QVERIFY(on.stopped.isEmpty() && (all || on.lost.isEmpty()));
        QCOMPARE(on.garbled.isEmpty(), fault == 0 || fault == 4 || fault == 5);
        QCOMPARE(on.readings.last().value.measure().text(), fault == 5 ? QString() : u"V"_s);
    }

    void aLateReplyIsNotTakenForTheNext()
    {
        Simulated simulated(u"socket"_s, {.value = 1, .lateEvery = 2, .lateMs = 500});
        Listening on(simulated.address);
        QVERIFY(on.waitFor(1));
        simulated.meter.setValue(2); // what was asked from here on reads 2; the late one was measured at 1 or 2, and is dropped
        QVERIFY(QTest::qWaitFor([&] { return on.readings.last().value.value() == 2; }, 5000));
        const auto from = on.readings.size();
        QVERIFY(on.waitFor(from + 4));
        for (auto i = from; i < on.readings.size(); ++i)
            QCOMPARE(on.readings.at(i).value.value(), 2.0);
    }

    void dropOutsAreTriedAgain()
    {
        Simulated simulated(u"socket"_s, {.value = 5, .dropEvery = 4});
        Listening on(simulated.address);
        QVERIFY(on.waitFor(10)); // three values a connection
        QVERIFY(on.lost.size() >= 3 && on.identities.size() >= 4);
        QVERIFY(on.allNear(5, 1e-9) && on.stopped.isEmpty());
        QVERIFY(on.lost.first().sentence().contains(u"tried again"_s));
    }

    void aPulledCableIsSaid()
    {
        auto simulated = std::make_unique<Simulated>(u"serial"_s, SimulatedManner{.value = 5});
        Listening on(simulated->address);
        QVERIFY(on.waitFor(2));
        simulated->line->pull();
        QVERIFY(QTest::qWaitFor([&] { return !on.stopped.isEmpty(); }, 10'000));
        QVERIFY(!on.meter.isOpen() && !on.lost.isEmpty());
        QVERIFY(on.stopped.first().sentence().contains(simulated->line->name()));
    }

    void whoIsNotThereIsSaidOnce()
    {
        quint16 port = 0;
        {
            SimulatedMeter gone;
            port = gone.listen(0).value();
        }
        Listening nobody(u"socket:127.0.0.1:%1"_s.arg(port));
        QVERIFY(QTest::qWaitFor([&] { return !nobody.stopped.isEmpty(); }, 5000));
        QVERIFY(nobody.lost.isEmpty() && !nobody.meter.isOpen());
        Listening noDevice(u"serial:/dev/no-such-line 9600"_s);
        QCOMPARE(noDevice.stopped.size(), 1);
        // Somebody who is no meter: a greeting, and rubbish without an end.
        PtyMaster line;
        Listening rubbish(u"serial:%1"_s.arg(line.name()));
        line.write("hello\r\n" + QByteArray(3000, 'x'));
        QVERIFY(QTest::qWaitFor([&] { return !rubbish.stopped.isEmpty(); }, 5000));
        QVERIFY(rubbish.readings.isEmpty());
    }

    /// The window goes on while a meter is slow: the event loop comes round at least every few milliseconds.
    void nothingBlocks()
    {
        Simulated simulated(u"socket"_s, {.replyMs = 150, .silentEvery = 2});
        Listening on(simulated.address);
        QElapsedTimer turn;
        qint64 longest = 0;
        turn.start();
        while (on.readings.size() < 3) {
            QCoreApplication::processEvents();
            longest = std::max(longest, turn.restart());
            QThread::usleep(500);
        }
        QVERIFY2(longest < 100, qPrintable(QString::number(longest))); // replies take 150 ms, time-outs 400
    }
};

QTEST_GUILESS_MAIN(TestMeters)
#include "test_meters.moc"
