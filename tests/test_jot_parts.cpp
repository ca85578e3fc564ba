#include "jot_bench.h"

using namespace ts;
using ts::testing::JotBench;
using ts::testing::pounds;

/// Parts, money and teardown. The lines and what they must give are those of the product's own table of jotting.
class TestJotParts : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void partsForASymptom()
    {
        JotBench bench;
        bench.put(QStringLiteral("saw take-up reel stops"));
        const Id<Symptom> reel = bench.last<Symptom>().id;
        bench.put(QStringLiteral("saw left channel weak"));
        for (const char *line : {"need belt for reel stops 2.50", "need belt 2.50 for reel stops", "fitted belt for reel stops was stretched 2.50",
                                 "ordered belt for reel stops from Ardmoor due 28 Nov 2.50"}) {
            bench.file.all<Need>().clear();
            const Jotted jotted = bench.put(QString::fromLatin1(line));
            QVERIFY2(bench.last<Need>().symptom == reel, line);
            QCOMPARE(bench.last<Need>().text, QStringLiteral("belt"));
            QCOMPARE(bench.last<Need>().price->minor(), 250);
            QVERIFY2(jotted.preview.endsWith(QStringLiteral(" · for \"take-up reel stops\"")), qPrintable(jotted.preview));
        }
        // "for" something that is no symptom is part of its name.
        bench.put(QStringLiteral("need screw for the lid 0.20"));
        QCOMPARE(bench.last<Need>().text, QStringLiteral("screw for the lid"));
    }

    void need_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("text");
        QTest::addColumn<int>("quantity");
        QTest::addColumn<int>("pence"); // -1: no price
        const auto row = [](const char *line, const char *text, int quantity, int pence) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(text) << quantity << pence;
        };
        row("need belt 78x4x0.6 2.50", "belt 78x4x0.6", 1, 250);
        row("need belt 78x4x0.6", "belt 78x4x0.6", 1, -1);
        row("need belt 78 x 4 x 0.65", "belt 78 x 4 x 0.65", 1, -1);
        row("need fuse T 315 mA", "fuse T 315 mA", 1, -1);
        row("need 10k pot", "10k pot", 1, -1);
        row("need 2x fuse T 315 mA 0.40", "fuse T 315 mA", 2, 40);
        row("need 2 x fuse T 315 mA £0.40 each", "fuse T 315 mA", 2, 40);
        row("need 12 × 1N4148 £3", "1N4148", 12, 300);
        row("need lamp £3", "lamp", 1, 300);
        row("need lamp £ 3", "lamp", 1, 300);
        row("need lamp at 3", "lamp", 1, 300);
        row("need lamp 3,20", "lamp", 1, 320);
        row("need lamp 3 GBP", "lamp", 1, 300);
        row("need lamp 12 V 40 mA", "lamp 12 V 40 mA", 1, -1);
        row("need 470u 25", "470u 25", 1, -1);
        row("need screws 4 all", "screws 4 all", 1, -1);
        row("need 2x4 wood", "2x4 wood", 1, -1);
    }
    void need()
    {
        QFETCH(QString, line);
        QFETCH(QString, text);
        QFETCH(int, quantity);
        QFETCH(int, pence);
        JotBench bench;
        const Jotted jotted = bench.put(line);
        QCOMPARE(jotted.what, QStringLiteral("part"));
        QCOMPARE(jotted.badge, QStringLiteral("part, needed"));
        const Need need = bench.last<Need>();
        QCOMPARE(need.text, text);
        QCOMPARE(need.quantity, quantity);
        QCOMPARE(need.state, NeedState::Needed);
        QCOMPARE(need.price.has_value(), pence >= 0);
        if (need.price)
            QCOMPARE(*need.price, pounds(pence));
    }

    void needPreviews()
    {
        JotBench bench;
        QCOMPARE(bench.preview(QStringLiteral("need belt 78x4x0.6 2.50")).preview,
                 QStringLiteral("Part needed: belt 78x4x0.6, £2.50"));
        QCOMPARE(bench.preview(QStringLiteral("need 2x fuse T 315 mA 0.40")).preview,
                 QStringLiteral("Part needed: 2 × fuse T 315 mA, £0.40 each"));
        QCOMPARE(bench.preview(QStringLiteral("fitted idler tyre 1.20")).preview, QStringLiteral("Fitted idler tyre, £1.20"));
        QCOMPARE(bench.preview(QStringLiteral("fitted idler tyre 1.20")).change.sentence(),
                 QStringLiteral("Fitted idler tyre, £1.20"));
        QCOMPARE(bench.preview(QStringLiteral("need stylus 18 EUR")).preview, QStringLiteral("Part needed: stylus, €18.00"));
    }

    void fitted()
    {
        JotBench bench;
        bench.put(QStringLiteral("need idler tyre 1.20"));
        bench.put(QStringLiteral("need belt"));
        const Jotted jotted = bench.put(QStringLiteral("fitted idler tyre"));
        QCOMPARE(jotted.badge, QStringLiteral("part, fitted"));
        QCOMPARE(jotted.preview, QStringLiteral("Fitted idler tyre, £1.20 · was needed"));
        QCOMPARE(bench.count<Need>(), 2);
        QCOMPARE(bench.file.all<Need>().first().state, NeedState::Fitted);
        QCOMPARE(bench.file.all<Need>().first().stateSince, bench.now());
        // Figures added to the words still mean the need; another noun does not.
        bench.put(QStringLiteral("fitted belt holder"));
        QCOMPARE(bench.count<Need>(), 3);
        bench.put(QStringLiteral("fitted belt 78x4x0.6 2.75"));
        QCOMPARE(bench.count<Need>(), 3);
        QCOMPARE(bench.file.all<Need>().at(1).state, NeedState::Fitted);
        QCOMPARE(bench.file.all<Need>().at(1).text, QStringLiteral("belt 78x4x0.6"));
        QCOMPARE(*bench.file.all<Need>().at(1).price, pounds(275));
        // One that is fitted already is not fitted again: another one came in.
        bench.put(QStringLiteral("fitted idler tyre 1.20"));
        QCOMPARE(bench.count<Need>(), 4);
    }

    void fittedAtAPlace()
    {
        JotBench bench;
        const Jotted jotted = bench.put(QStringLiteral("fitted C214 3.3u 63V was 2.2u 50V"));
        QCOMPARE(jotted.preview, QStringLiteral("Fitted 3.3u 63V at C214, was 2.2u 50V"));
        Need need = bench.last<Need>();
        QCOMPARE(need.position, QStringLiteral("C214"));
        QCOMPARE(need.text, QStringLiteral("3.3u 63V"));
        QCOMPARE(need.oldValue, QStringLiteral("2.2u 50V"));
        QVERIFY(!need.price);
        bench.put(QStringLiteral("fitted c301, c302 100u 25V 0.35 was 100u 16V"));
        need = bench.last<Need>();
        QCOMPARE(need.position, QStringLiteral("C301, C302"));
        QCOMPARE(need.quantity, 1);
        QCOMPARE(*need.price, pounds(35));
        bench.put(QStringLiteral("need TR5"));
        QCOMPARE(bench.last<Need>().text, QStringLiteral("TR5"));
        bench.put(QStringLiteral("fitted TR5 small signal NPN"));
        QCOMPARE(bench.last<Need>().state, NeedState::Fitted);
        QCOMPARE(bench.last<Need>().text, QStringLiteral("small signal NPN"));
        QCOMPARE(bench.count<Need>(), 3);
        bench.put(QStringLiteral("fitted X2 capacitor 100n")); // a class, no place
        QCOMPARE(bench.last<Need>().position, QString());
        bench.put(QStringLiteral("fitted M3 screw"));
        QCOMPARE(bench.last<Need>().position, QString());
    }

    void someOfSeveral()
    {
        JotBench bench;
        bench.put(QStringLiteral("need 4x fuse T 315 mA 0.40"));
        const Jotted jotted = bench.put(QStringLiteral("fitted 1x fuse"));
        QVERIFY2(jotted.preview.endsWith(QStringLiteral("1 of 4")), qPrintable(jotted.preview));
        QCOMPARE(bench.count<Need>(), 2);
        QCOMPARE(bench.file.all<Need>().first().quantity, 3);
        QCOMPARE(bench.file.all<Need>().first().state, NeedState::Needed);
        QCOMPARE(bench.last<Need>().quantity, 1);
        QCOMPARE(bench.last<Need>().state, NeedState::Fitted);
        QCOMPARE(*bench.last<Need>().price, pounds(40));
    }

    void orderedAndHere()
    {
        JotBench bench;
        bench.put(QStringLiteral("need belt 78x4x0.6"));
        const Jotted jotted = bench.put(QStringLiteral("ordered belt 2.50 due 28 Nov"));
        QCOMPARE(jotted.preview, QStringLiteral("Part ordered: belt 78x4x0.6, £2.50, due 28 Nov · was needed"));
        QCOMPARE(bench.last<Need>().state, NeedState::Ordered);
        QCOMPARE(bench.last<Need>().due, QDate(2026, 11, 28));
        bench.put(QStringLiteral("here belt"));
        QCOMPARE(bench.last<Need>().state, NeedState::Here);
        QCOMPARE(bench.count<Need>(), 1);
        bench.put(QStringLiteral("ordered stylus from the north shop due 3 Jan 18.00"));
        QCOMPARE(bench.last<Need>().text, QStringLiteral("stylus"));
        QCOMPARE(bench.last<Need>().supplier, QStringLiteral("the north shop"));
        QCOMPARE(bench.last<Need>().due, QDate(2027, 1, 3));
        QCOMPARE(*bench.last<Need>().price, pounds(1800));
        QCOMPARE(bench.put(QStringLiteral("here the sun shines")).preview,
                 QStringLiteral("Taken as a note, because no part is awaited that reads \"the sun shines\""));
    }

    void paid_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("text");
        QTest::addColumn<SpendKind>("kind");
        QTest::addColumn<int>("pence");
        const auto row = [](const char *line, const char *text, SpendKind kind, int pence) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(text) << kind << pence;
        };
        row("paid carriage 8.40", "carriage", SpendKind::CarriageIn, 840);
        row("paid cleaner 0.60", "cleaner", SpendKind::Consumable, 60);
        row("paid postage £3", "postage", SpendKind::CarriageIn, 300);
        row("paid carriage 8", "carriage", SpendKind::CarriageIn, 800);
        row("paid 8,40 for carriage", "carriage", SpendKind::CarriageIn, 840);
        row("paid packing 2.10", "packing", SpendKind::Packing, 210);
        row("paid listing fee 1.35", "listing fee", SpendKind::SellingFee, 135);
        row("paid feet for the case 4.00", "feet for the case", SpendKind::Other, 400);
        row("paid solder 1.00 GBP", "solder", SpendKind::Consumable, 100);
        row("paid the hall 1,234.50", "the hall", SpendKind::Other, 123450);
        row("paid 8.40", "payment", SpendKind::Other, 840);
    }
    void paid()
    {
        QFETCH(QString, line);
        QFETCH(QString, text);
        QFETCH(SpendKind, kind);
        QFETCH(int, pence);
        JotBench bench;
        const Jotted jotted = bench.put(line);
        QCOMPARE(jotted.what, QStringLiteral("spend"));
        QCOMPARE(jotted.badge, QStringLiteral("spend, out"));
        const Spend spend = bench.last<Spend>();
        QCOMPARE(spend.text, text);
        QCOMPARE(spend.kind, kind);
        QCOMPARE(*spend.amount, pounds(pence));
        QCOMPARE(spend.flow, Flow::Out);
        QCOMPARE(spend.paidOn, QDate(2026, 11, 25));
        QVERIFY(!spend.inBenchCurrency);
    }

    void money()
    {
        JotBench bench;
        QCOMPARE(bench.put(QStringLiteral("paid carriage 8.40")).preview, QStringLiteral("Paid £8.40: carriage · carriage in"));
        QCOMPARE(bench.put(QStringLiteral("paid stylus 8.40 EUR = 7.10")).preview, QStringLiteral("Paid €8.40: stylus = £7.10"));
        QCOMPARE(bench.last<Spend>().amount->currency().code(), QStringLiteral("EUR"));
        QCOMPARE(*bench.last<Spend>().inBenchCurrency, pounds(710));
        QVERIFY(bench.put(QStringLiteral("paid stylus €8.40")).preview.contains(QStringLiteral("to say what it came to in GBP")));
        QCOMPARE(bench.put(QStringLiteral("got refund 5.00")).preview, QStringLiteral("Got £5.00: refund · refund"));
        QCOMPARE(bench.last<Spend>().flow, Flow::In);
        QCOMPARE(bench.last<Spend>().kind, SpendKind::Refund);
        bench.put(QStringLiteral("got sale 120"));
        QCOMPARE(bench.last<Spend>().kind, SpendKind::Sale);
        bench.put(QStringLiteral("got deposit 40"));
        QCOMPARE(bench.last<Spend>().kind, SpendKind::Deposit);
        QCOMPARE(bench.put(QStringLiteral("got it working at last")).what, QStringLiteral("note"));
        QCOMPARE(bench.put(QStringLiteral("got it down to 3")).what, QStringLiteral("note"));
        QCOMPARE(bench.put(QStringLiteral("paid nothing at all")).preview,
                 QStringLiteral("Taken as a note, because it ends in no amount of money"));
        QCOMPARE(bench.put(QStringLiteral("paid belt 8.40 EUR = lots")).preview,
                 QStringLiteral("Taken as a note, because \"lots\" is no amount in GBP"));
        QCOMPARE(bench.put(QStringLiteral("paid too much 99999999999999999999.00")).what, QStringLiteral("note"));
        bench.file.unit.stage = Stage::Closed;
        bench.put(QStringLiteral("paid carriage 8.40"));
        QCOMPARE(bench.last<Spend>().kind, SpendKind::CarriageOut);
    }

    void off_data()
    {
        QTest::addColumn<QString>("line");
        QTest::addColumn<QString>("what");
        QTest::addColumn<QString>("fasteners");
        QTest::addColumn<int>("count");
        QTest::addColumn<QString>("springs");
        QTest::addColumn<QString>("connectors");
        QTest::addColumn<QString>("keptIn");
        const auto row = [](const char *line, const char *what, const char *fasteners, int count, const char *springs,
                            const char *connectors, const char *keptIn) {
            QTest::newRow(line) << QString::fromUtf8(line) << QString::fromUtf8(what) << QString::fromUtf8(fasteners) << count
                                << QString::fromUtf8(springs) << QString::fromUtf8(connectors) << QString::fromUtf8(keptIn);
        };
        row("off lid 5 screws M3x8 tray A1", "lid", "5 screws M3x8", 5, "", "", "tray A1");
        row("off lid 5 screws M3x8 black, one not original in tray A1", "lid", "5 screws M3x8 black, one not original", 5, "", "",
            "tray A1");
        row("off bottom plate tray A2 6 screws M3x6", "bottom plate", "6 screws M3x6", 6, "", "", "tray A2");
        row("off front panel 4 M3x6, 2 clips below tray A3", "front panel", "4 M3x6", 4, "2 clips below", "", "tray A3");
        row("off mechanism 3 screws M2.6x10 3 washers ribbon CN2 cup B1", "mechanism", "3 screws M2.6x10", 3, "3 washers",
            "ribbon CN2", "cup B1");
        row("off take-up clutch, 1 e-clip 2 mm, 1 spring, cup B1", "take-up clutch", "", -1, "1 e-clip 2 mm, 1 spring", "",
            "cup B1");
        row("off mains board 2 plugs CN2 CN3 four long screws box 2", "mains board", "four long screws", 4, "", "2 plugs CN2 CN3",
            "box 2");
        row("off back 3 screws M3x8 2 screws M3x12 bag 3", "back", "3 screws M3x8, 2 screws M3x12", 5, "", "", "bag 3");
        row("off disc tray 4 screws M2", "disc tray", "4 screws M2", 4, "", "", "");
        row("off disc tray", "disc tray", "", -1, "", "", "");
        row("off ribbon CN2", "ribbon CN2", "", -1, "", "", "");
        row("off 3 knobs", "3 knobs", "", -1, "", "", "");
    }
    void off()
    {
        QFETCH(QString, line);
        QFETCH(QString, what);
        QFETCH(QString, fasteners);
        QFETCH(int, count);
        QFETCH(QString, springs);
        QFETCH(QString, connectors);
        QFETCH(QString, keptIn);
        JotBench bench;
        const Jotted jotted = bench.put(line);
        QCOMPARE(jotted.badge, QStringLiteral("teardown, off"));
        const TeardownItem item = bench.last<TeardownItem>();
        QCOMPARE(item.what, what);
        QCOMPARE(item.fasteners, fasteners);
        QCOMPARE(item.fastenerCount.value_or(-1), count);
        QCOMPARE(item.springs, springs);
        QCOMPARE(item.connectors, connectors);
        QCOMPARE(item.keptIn, keptIn);
        QCOMPARE(item.position, 1);
        QCOMPARE(item.state, TeardownState::Off);
    }

    void offAndBack()
    {
        JotBench bench;
        QCOMPARE(bench.put(QStringLiteral("off lid 5 screws M3x8 tray A1")).preview,
                 QStringLiteral("Off: lid, 5 screws M3x8, in tray A1 · number 1"));
        bench.put(QStringLiteral("off front panel 4 screws tray A2"));
        QCOMPARE(bench.last<TeardownItem>().position, 2);
        const Jotted jotted = bench.put(QStringLiteral("back lid"));
        QCOMPARE(jotted.preview, QStringLiteral("Back: lid, with 5 screws M3x8 from tray A1 · 1 still off"));
        QCOMPARE(jotted.badge, QStringLiteral("teardown, back"));
        QCOMPARE(bench.file.all<TeardownItem>().first().state, TeardownState::Back);
        QCOMPARE(bench.file.all<TeardownItem>().first().backAt, bench.now());
        QCOMPARE(bench.put(QStringLiteral("back lid")).preview,
                 QStringLiteral("Taken as a note, because nothing that is off reads \"lid\""));
        QCOMPARE(bench.put(QStringLiteral("back light is dim")).what, QStringLiteral("note"));
        bench.put(QStringLiteral("off lid"));
        QCOMPARE(bench.last<TeardownItem>().position, 3);
        QCOMPARE(bench.put(QStringLiteral("back all")).preview, QStringLiteral("Back: all 2 items that were off"));
        for (const TeardownItem &item : bench.file.all<TeardownItem>())
            QCOMPARE(item.state, TeardownState::Back);
    }
};

QTEST_GUILESS_MAIN(TestJotParts)
#include "test_jot_parts.moc"
