// Parts by what they are rated for. The rules checked here are those of ../shared/trade/trade.md 2.13 ("voltage up fits only if size
// fits", "never plain film on mains", "fuse: A, fast/slow, size") and IEC 60062 (letter M: ± 20 %).
#include "model/sums/parts/part_fit.h"
#include "tests/testing.h"

#include <QtTest>

using namespace ts;
using namespace Qt::StringLiterals;

namespace {

Part part(const QString &name, const QString &kind, const QString &rating)
{
    static int next = 0;
    Part made;
    made.id.value = QUuid::createUuidV5(QUuid(), QByteArray::number(++next));
    made.name = name;
    made.kind = kind;
    made.rating = rating;
    return made;
}

Batch batch(const Part &of, int left)
{
    Batch made;
    made.part = of.id;
    made.quantity = left;
    made.left = left;
    return made;
}

Need need(const QString &text)
{
    Need made;
    made.text = text;
    return made;
}

QString asText(Match match)
{
    return match == Match::Yes ? u"yes"_s : match == Match::No ? u"no"_s : u"not said"_s;
}

} // namespace

class TestSumsParts : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void kinds()
    {
        QCOMPARE(partKindIn(u"2 capstan belts"_s)->name, u"belt"_s);
        QCOMPARE(partKindIn(u"Electrolytic 470 uF"_s)->name, u"electrolytic"_s);
        QCOMPARE(partKindIn(u"pinch roller with arm"_s)->name, u"pinch roller"_s);
        QVERIFY(!partKindIn(u"something else"_s));
        QVERIFY(!partKindIn(u"beltway"_s));
        for (const PartKind &kind : partKinds()) {
            QSet<QString> names;
            for (const RatingField &field : kind.fields) {
                for (const QString &name : QStringList(field.key) + field.shorter)
                    QVERIFY2(!names.contains(name), qPrintable(kind.name + u": "_s + name));
                names << field.key;
                for (const QString &name : field.shorter)
                    names << name;
                if (!field.isWord())
                    QVERIFY2(Measure::parse(field.measure), qPrintable(field.measure));
            }
            for (const QString &size : kind.sizes)
                QVERIFY2(kind.field(size), qPrintable(kind.name));
        }
    }

    void textIsReadAsQuantities_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("lines");
        QTest::addColumn<QString>("rest");
        QTest::newRow("belt") << u"capstan belt 78x4x0.6"_s << u"inner circumference 78 mm\nwidth 4 mm\nthickness 0.6 mm"_s << u"capstan"_s;
        QTest::newRow("square") << u"Tray belt 71 x 1.2 square"_s << u"inner circumference 71 mm\nwidth 1.2 mm\nsection square\nthickness 1.2 mm"_s << u"Tray"_s;
        QTest::newRow("capacitor") << u"capacitor 1000u 63V 105 °C 10x16"_s
                                   << u"diameter 10 mm\nheight 16 mm\ncapacitance 1000 µF\nvoltage 63 V\ntemperature 105 °C"_s << QString();
        QTest::newRow("electrolytic") << u"Electrolytic 3.3 uF 63 V"_s << u"capacitance 3.3 µF\nvoltage 63 V"_s << QString();
        QTest::newRow("suppressor") << u"Suppressor 47 nF X2"_s << u"capacitance 47 nF\nclass X2"_s << QString();
        QTest::newRow("fuse") << u"Fuse T 315 mA 5 x 20"_s << u"diameter 5 mm\nlength 20 mm\ncharacteristic T\ncurrent 315 mA"_s << QString();
        QTest::newRow("resistor") << u"resistor 4k7 0.25 W fusible"_s << u"resistance 4.7 kΩ\npower 0.25 W\nfusible fusible"_s << QString();
        QTest::newRow("lamp") << u"Dial lamp 8 V 250 mA"_s << u"voltage 8 V\ncurrent 250 mA"_s << QString();
        QTest::newRow("no kind") << u"thing 63 V"_s << QString() << u"thing 63 V"_s;
    }
    void textIsReadAsQuantities()
    {
        QFETCH(QString, text);
        const ReadRating read = ratingInText(text);
        QTEST(read.rating.lines(), "lines");
        QTEST(read.rest.join(u' '), "rest");
        // what is kept reads back as the same quantities
        QCOMPARE(ratingOfLines(read.rating.lines(), read.kind), read.rating);
    }

    void linesOfTheRecord()
    {
        const Rating rating = ratingOfLines(u"lead spacing 5 mm\nvoltage 275 V AC\nsize 5 x 20 mm\nmade up thing"_s, partKindNamed(u"fuse"));
        QCOMPARE(rating.find(u"voltage")->amount->base(), 275.0);
        QCOMPARE(rating.find(u"voltage")->word, u"AC"_s);
        QCOMPARE(rating.find(u"length")->amount->base(), 0.02);
        QCOMPARE(rating.find(u"made")->word, u"up thing"_s);
    }

    void typedAttributes()
    {
        const PartKind *kind = partKindNamed(u"capacitor");
        QCOMPARE(typedRating(*kind->field(u"c"), u"1000u"_s)->text(), u"1000 µF"_s);
        QCOMPARE(typedRating(*kind->field(u"d"), u"10"_s)->text(), u"10 mm"_s);
        QCOMPARE(typedRating(*kind->field(u"voltage"), u"275 V AC"_s)->text(), u"275 V AC"_s);
        QVERIFY(!typedRating(*kind->field(u"d"), u"10 V"_s));
        QVERIFY(!typedRating(*kind->field(u"d"), u"-1 mm"_s));
        QVERIFY(!typedRating(*kind->field(u"d"), u"wide"_s));
        QVERIFY(!typedRating(*kind->field(u"d"), u"OL"_s));
        QCOMPARE(typedRating(*kind->field(u"d"), u" "_s)->text(), QString());
    }

    void finding_data()
    {
        QTest::addColumn<QString>("wish");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("rating");
        QTest::addColumn<QString>("match");
        const auto can = u"capacitance 1000 µF\nvoltage 63 V\ndiameter 10 mm"_s;
        const auto row = [](const char *tag, const QString &wish, const QString &name, const QString &rating, const char *match) {
            QTest::newRow(tag) << wish << name << rating << QString::fromLatin1(match);
        };
        row("all", u"capacitor 1000u >=63V d<=10mm"_s, u"electrolytic"_s, can, "yes");
        row("words for signs", u"capacitor 1000 µF at least 63 V diameter at most 10 mm"_s, u"electrolytic"_s, can, "yes");
        row("voltage above", u"capacitor >= 63 V"_s, u"electrolytic"_s, u"voltage 100 V"_s, "yes");
        row("voltage below", u"capacitor 1000u >=63V d<=10mm"_s, u"electrolytic"_s, u"capacitance 1000 µF\nvoltage 50 V\ndiameter 8 mm"_s, "no");
        row("too wide", u"capacitor 1000u >=63V d<=10mm"_s, u"electrolytic"_s, u"capacitance 1000 µF\nvoltage 63 V\ndiameter 12.5 mm"_s, "no");
        row("size not said", u"capacitor 1000u >=63V d<=10mm"_s, u"electrolytic"_s, u"capacitance 1 mF\nvoltage 63 V"_s, "not said");
        row("other value", u"capacitor 1000u"_s, u"electrolytic"_s, u"capacitance 2200 µF"_s, "no");
        row("not its kind", u"capacitor 1000u"_s, u"belt"_s, can, "no");
        row("belt lower edge", u"belt 78 mm ± 2 mm"_s, u"belt 76x4x0.6"_s, {}, "yes");
        row("belt upper edge", u"belt 78mm +-2mm"_s, u"belt"_s, u"inner circumference 80 mm"_s, "yes");
        row("belt outside", u"belt 78 ± 2 mm"_s, u"belt 80.1x4x0.6"_s, {}, "no");
        row("belt, size", u"belt 78x4x0.6 ± 2 mm"_s, u"belt 79x4x0.6"_s, {}, "yes");
        row("belt, size, other width", u"belt 78x4x0.6 ± 2 mm"_s, u"belt 79x5x0.6"_s, {}, "no");
        row("belt, from to", u"belt 70..80 mm"_s, u"belt 71 x 1.2 square"_s, {}, "yes");
        row("belt in centimetres", u"belt 7.6..8 cm"_s, u"belt 78x4x0.6"_s, {}, "yes");
        row("bare numbers", u"belt 76..80"_s, u"belt 78x4x0.6"_s, {}, "yes");
        row("class", u"safety capacitor X2"_s, u"suppressor 47 nF X2"_s, {}, "yes");
        row("other class", u"safety capacitor Y2"_s, u"suppressor 47 nF X2"_s, {}, "no");
        row("no kind, voltage", u">=63V"_s, u"thing"_s, u"voltage 63 V"_s, "yes");
        row("no kind, amount", u"63 V"_s, u"thing"_s, u"voltage 50 V"_s, "no");
        row("words", u"tray"_s, u"Tray belt"_s, {}, "yes");
        row("words, other", u"tray drawer"_s, u"Tray belt"_s, {}, "no");
        row("equals", u"capacitor h=11mm"_s, u"electrolytic"_s, u"height 11 mm"_s, "yes");
        row("two attributes in mm", u"capacitor d<=10mm h<=16mm"_s, u"electrolytic"_s, u"diameter 10 mm\nheight 20 mm"_s, "no");
        row("pitch", u"capacitor pitch<=5mm"_s, u"electrolytic"_s, u"lead spacing 5 mm"_s, "yes");
    }
    void finding()
    {
        QFETCH(QString, wish);
        QFETCH(QString, name);
        QFETCH(QString, rating);
        const auto read = readPartWish(wish);
        QVERIFY2(read, qPrintable(read ? QString() : read.trouble().sentence()));
        const auto found = matches(part(name, {}, rating), *read);
        QFETCH(QString, match);
        QVERIFY2(asText(found.match) == match, qPrintable(asText(found.match) + u": "_s + read->text()));
    }

    void badWishes_data()
    {
        QTest::addColumn<QString>("wish");
        QTest::newRow("of what") << u"capacitor >=63"_s;
        QTest::newRow("measure") << u"capacitor d<=10V"_s;
        QTest::newRow("no such measure") << u"belt >=63V"_s;
        QTest::newRow("rubbish") << u"capacitor >=x"_s;
        QTest::newRow("backwards") << u"belt 80..70 mm"_s;
        QTest::newRow("no attribute") << u"capacitor foo=3"_s;
    }
    void badWishes()
    {
        QFETCH(QString, wish);
        const auto read = readPartWish(wish);
        QVERIFY2(!read, qPrintable(read ? read->text() : QString()));
        QVERIFY(read.trouble().sentence().endsWith(u'.'));
    }

    void fitting_data()
    {
        QTest::addColumn<QString>("wanted");
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("rating");
        QTest::addColumn<int>("word");
        const auto row = [](const char *tag, const QString &wanted, const QString &name, const QString &kind, const QString &rating, FitWord word) {
            QTest::newRow(tag) << wanted << name << kind << rating << static_cast<int>(word);
        };
        const auto e = u"electrolytic"_s;
        row("the same", u"electrolytic 470 µF 25 V"_s, {}, e, u"capacitance 470 uF\nvoltage 25 V"_s, FitWord::Fits);
        row("voltage up", u"electrolytic 470 µF 25 V"_s, {}, e, u"capacitance 470 uF\nvoltage 35 V"_s, FitWord::Fits);
        row("voltage down", u"electrolytic 470 µF 25 V"_s, {}, e, u"capacitance 470 uF\nvoltage 16 V"_s, FitWord::DoesNot);
        row("voltage up, size fits", u"electrolytic 470 µF 25 V 10x16"_s, {}, e, u"capacitance 470 uF\nvoltage 35 V\ndiameter 10 mm\nheight 16 mm"_s, FitWord::Fits);
        row("voltage up, size does not", u"electrolytic 470 µF 25 V 10x16"_s, {}, e, u"capacitance 470 uF\nvoltage 63 V\ndiameter 12.5 mm\nheight 20 mm"_s, FitWord::DoesNot);
        row("size not recorded", u"electrolytic 470 µF 25 V 10x16"_s, {}, e, u"capacitance 470 uF\nvoltage 35 V"_s, FitWord::LookFirst);
        row("letter M", u"electrolytic 1000 µF 25 V"_s, {}, e, u"capacitance 1200 uF\nvoltage 25 V"_s, FitWord::LookFirst);
        row("beyond letter M", u"electrolytic 1000 µF 25 V"_s, {}, e, u"capacitance 1210 uF\nvoltage 25 V"_s, FitWord::DoesNot);
        row("cooler", u"electrolytic 470 µF 25 V 105 °C"_s, {}, e, u"capacitance 470 uF\nvoltage 25 V\ntemperature 85 °C"_s, FitWord::DoesNot);
        row("plain film on mains", u"suppressor 47 nF X2"_s, {}, u"film capacitor"_s, u"capacitance 47 nF\nvoltage 630 V"_s, FitWord::DoesNot);
        row("plain film on mains, by family", u"capacitor 47 nF X2"_s, {}, u"film capacitor"_s, u"capacitance 47 nF\nvoltage 630 V"_s, FitWord::DoesNot);
        row("other class", u"suppressor 47 nF X1"_s, {}, u"safety capacitor"_s, u"capacitance 47 nF\nclass X2"_s, FitWord::DoesNot);
        row("class", u"suppressor 47 nF X2"_s, {}, u"safety capacitor"_s, u"capacitance 47 nF\nclass X2"_s, FitWord::Fits);
        row("fuse", u"fuse T 315 mA"_s, u"Fuse T 315 mA 5 x 20"_s, u"fuse"_s, {}, FitWord::Fits);
        row("fuse quick for slow", u"fuse T 315 mA"_s, u"Fuse F 315 mA 5 x 20"_s, u"fuse"_s, {}, FitWord::DoesNot);
        row("fuse larger", u"fuse T 315 mA"_s, u"Fuse T 630 mA 5 x 20"_s, u"fuse"_s, {}, FitWord::DoesNot);
        row("belt", u"belt 78x4x0.6"_s, u"belt 79x4x0.6"_s, u"belt"_s, {}, FitWord::Fits);
        row("belt 5 mm wrong", u"belt 78x4x0.6"_s, u"belt 83x4x0.6"_s, u"belt"_s, {}, FitWord::DoesNot);
        row("a kind alone", u"belt"_s, u"belt 83x4x0.6"_s, u"belt"_s, {}, FitWord::DoesNot);
    }
    void fitting()
    {
        QFETCH(QString, wanted);
        QFETCH(QString, name);
        QFETCH(QString, kind);
        QFETCH(QString, rating);
        QFETCH(int, word);
        const PartFit fit = fitOf(ratingOfPart(part(name, kind, rating)), ratingInText(wanted));
        QVERIFY2(static_cast<int>(fit.word) == word, qPrintable(fit.why.join(u"; "_s)));
    }

    void shelf()
    {
        const Part sure = part(u"Belt 78 flat"_s, u"belt"_s, u"inner circumference 78 mm\nwidth 4 mm\nthickness 0.6 mm"_s);
        const Part look = part(u"Belt 78 of the tin"_s, u"belt"_s, u"inner circumference 78 mm"_s);
        const Part gone = part(u"Belt 78x4x0.6"_s, u"belt"_s, {});
        const Part named = part(u"clutch of the KD series"_s, {}, {});
        const QList<Part> parts{look, sure, gone, named};
        const QList<Batch> batches{batch(sure, 1), batch(look, 5), batch(gone, 0), batch(named, 1)};
        const auto found = shelfFor(need(u"capstan belt 78x4x0.6"_s), parts, batches);
        QCOMPARE(found.size(), 2);
        QCOMPARE(found.at(0).part.id, sure.id);
        QCOMPARE(found.at(0).left, 1);
        QCOMPARE(found.at(1).part.id, look.id);
        QVERIFY(found.at(1).fit.why.join(u' ').contains(u"width"_s));
        QCOMPARE(shelfFor(need(u"Clutch of the KD series"_s), parts, batches).size(), 1);
        QVERIFY(shelfFor(need(u"something"_s), parts, batches).isEmpty());
    }

    void minimum()
    {
        Part few = part(u"few"_s, {}, {}), none = part(u"none"_s, {}, {}), enough = part(u"enough"_s, {}, {}), free = part(u"free"_s, {}, {});
        few.minimumStock = 10;
        none.minimumStock = 2;
        enough.minimumStock = 3;
        const auto found = belowMinimum({few, none, enough, free}, {batch(few, 4), batch(few, 3), batch(enough, 3)});
        QCOMPARE(found.size(), 2);
        QCOMPARE(found.at(0).part.name, u"none"_s);
        QCOMPARE(found.at(0).missing, 2);
        QCOMPARE(found.at(1).left, 7);
        QCOMPARE(found.at(1).missing, 3);
    }
};

QTEST_GUILESS_MAIN(TestSumsParts)
#include "test_sums_parts.moc"
