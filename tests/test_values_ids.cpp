#include "model/values/clock.h"
#include "model/values/expected.h"
#include "model/values/id.h"
#include "model/values/quoted.h"
#include "model/values/words.h"
#include "tests/testing.h"

#include <QSet>

using namespace ts;
using ts::testing::refusal;

namespace {

struct Thing;
struct Other;
enum class Colour { DarkRed, Green };

QDateTime at(const char *text)
{
    return QDateTime::fromString(QString::fromLatin1(text), Qt::ISODateWithMs);
}

qint64 millisecondsOf(const QUuid &id)
{
    return static_cast<qint64>(id.toRfc4122().left(6).toHex().toULongLong(nullptr, 16));
}

} // namespace

template <>
struct ts::Words<Colour> {
    static constexpr std::array list{std::pair{Colour::DarkRed, "dark_red"}, std::pair{Colour::Green, "green"}};
};

class TestValuesIds : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void layoutOfTheStandard();
    void everyIdIsVersionSeven();
    void idsAscend();
    void aClockThatGoesBackStillAscends();
    void theSameSeedMakesTheSameIds();
    void twoMakersDiffer();
    void idsReadBack();
    void clocksTellTheTimeTheyAreTold();
    void storedTimesReadBack();
    void expectedHoldsOneOfTwo();
    void troubleMakesOneSentence_data();
    void troubleMakesOneSentence();
    void quotationsAreShort();
    void wordsReadBack();
};

void TestValuesIds::layoutOfTheStandard()
{
    // RFC 9562, appendix A.6: 017F22E2-79B0-7CC3-98C4-DC0C0C07398F was made on 22 February 2022 at 14:22:22.00 GMT-05:00.
    const QUuid example = QUuid::fromString(QStringLiteral("017F22E2-79B0-7CC3-98C4-DC0C0C07398F"));
    const QDateTime made = at("2022-02-22T19:22:22.000Z");
    QCOMPARE(made.toMSecsSinceEpoch(), 1645557742000); // the appendix prints 0x17F22E279B0
    QCOMPARE(millisecondsOf(example), made.toMSecsSinceEpoch());

    const SetClock clock(made);
    IdMaker ids(clock, 9562);
    const QByteArray ours = ids.nextUuid().toRfc4122();
    QCOMPARE(ours.left(6), example.toRfc4122().left(6));
    QCOMPARE(static_cast<quint8>(ours[6]) >> 4, static_cast<quint8>(example.toRfc4122()[6]) >> 4);
    QCOMPARE(static_cast<quint8>(ours[8]) >> 6, static_cast<quint8>(example.toRfc4122()[8]) >> 6);
    QVERIFY(QUuid::fromRfc4122(ours).toString(QUuid::WithoutBraces).startsWith(QLatin1String("017f22e2-79b0-7")));
}

void TestValuesIds::everyIdIsVersionSeven()
{
    SetClock clock(at("2026-01-01T00:00:00.000Z"));
    IdMaker ids(clock);
    for (int i = 0; i < 20'000; ++i) {
        const QByteArray bytes = ids.nextUuid().toRfc4122();
        QCOMPARE(static_cast<quint8>(bytes[6]) >> 4, 7); // version, RFC 9562 section 5.7
        QCOMPARE(static_cast<quint8>(bytes[8]) >> 6, 2); // variant 10, section 4.1
    }
}

void TestValuesIds::idsAscend()
{
    SetClock clock(at("2026-01-01T00:00:00.000Z"));
    IdMaker ids(clock, 1);
    QByteArray last;
    QSet<QUuid> seen;
    // more than the 4096 that fit one millisecond
    for (int i = 0; i < 10'000; ++i) {
        const QUuid id = ids.nextUuid();
        QVERIFY(last < id.toRfc4122());
        last = id.toRfc4122();
        seen << id;
    }
    QCOMPARE(seen.size(), 10'000);
    // it borrowed two milliseconds, no more: the time in the id stays true to 3 ms
    QCOMPARE(millisecondsOf(QUuid::fromRfc4122(last)) - clock.now().toMSecsSinceEpoch(), 2);
    clock.advance(1);
    QVERIFY(last < ids.nextUuid().toRfc4122());
}

void TestValuesIds::aClockThatGoesBackStillAscends()
{
    SetClock clock(at("2026-01-01T00:00:00.000Z"));
    IdMaker ids(clock, 1);
    const QUuid before = ids.nextUuid();
    clock.set(at("2025-06-01T00:00:00.000Z"));
    QVERIFY(before.toRfc4122() < ids.nextUuid().toRfc4122());
}

void TestValuesIds::theSameSeedMakesTheSameIds()
{
    const SetClock clock(at("2026-01-01T00:00:00.000Z"));
    IdMaker first(clock, 42);
    IdMaker again(clock, 42);
    IdMaker other(clock, 43);
    for (int i = 0; i < 100; ++i) {
        const QUuid id = first.nextUuid();
        QCOMPARE(again.nextUuid(), id);
        QVERIFY(other.nextUuid() != id);
    }
}

void TestValuesIds::twoMakersDiffer()
{
    // two windows on one shared workbook, in the same millisecond
    const SetClock clock(at("2026-01-01T00:00:00.000Z"));
    IdMaker one(clock);
    IdMaker two(clock);
    QVERIFY(one.nextUuid() != two.nextUuid());
}

void TestValuesIds::idsReadBack()
{
    const SetClock clock(at("2026-01-01T00:00:00.000Z"));
    IdMaker ids(clock, 7);
    const Id<Thing> id = ids.next<Thing>();
    QCOMPARE(Id<Thing>::fromText(id.text()), id);
    QCOMPARE(id.text().size(), 36);
    QVERIFY(Id<Thing>().isNull());
    QCOMPARE(Id<Thing>().text(), QString());
    QVERIFY(Id<Thing>::fromText(QStringLiteral("rubbish")).isNull());
    static_assert(!std::is_convertible_v<Id<Thing>, Id<Other>>, "a unit's id is never a symptom's");
}

void TestValuesIds::clocksTellTheTimeTheyAreTold()
{
    SetClock clock(at("2026-11-25T09:09:32.123Z"));
    QCOMPARE(clock.now(), at("2026-11-25T09:09:32.123Z"));
    clock.advance(90);
    QCOMPARE(clock.now(), at("2026-11-25T09:11:02.123Z"));
    const QDateTime before = QDateTime::currentDateTimeUtc();
    const QDateTime now = SystemClock().now();
    QVERIFY(before <= now && now <= QDateTime::currentDateTimeUtc());
    QCOMPARE(now.timeSpec(), Qt::UTC);
}

void TestValuesIds::storedTimesReadBack()
{
    const QDateTime time = at("2026-11-25T09:09:32.123Z");
    QCOMPARE(toStored(time), QStringLiteral("2026-11-25T09:09:32.123Z"));
    QCOMPARE(toStored(at("2026-11-25T09:09:32.000Z")), QStringLiteral("2026-11-25T09:09:32.000Z"));
    QCOMPARE(toStored(at("2026-11-25T10:09:32.123+01:00")), toStored(time)); // ISO 8601: the same instant
    QCOMPARE(instantFromStored(toStored(time)), time);
    QCOMPARE(toStored(QDateTime()), QString());
    QVERIFY(!instantFromStored(QStringLiteral("yesterday")).isValid());
    QVERIFY(!instantFromStored(QString()).isValid());
    QVERIFY(!instantFromStored(QStringLiteral("2026-02-30T00:00:00.000Z")).isValid());
}

void TestValuesIds::expectedHoldsOneOfTwo()
{
    const Expected<int> good(7);
    QVERIFY(good.ok() && good);
    QCOMPARE(*good, 7);
    const Expected<int> bad(Trouble{QStringLiteral("Cannot"), {}, {}});
    QVERIFY(!bad.ok());
    QCOMPARE(bad.trouble().did, QStringLiteral("Cannot"));
    QVERIFY(Expected<void>().ok());
    QVERIFY(!Expected<void>(Trouble{}).ok());
    Expected<QString> text(QStringLiteral("moved"));
    const QString taken = *std::move(text);
    QCOMPARE(taken, QStringLiteral("moved"));
}

void TestValuesIds::troubleMakesOneSentence_data()
{
    QTest::addColumn<QString>("did");
    QTest::addColumn<QString>("wrong");
    QTest::addColumn<QString>("todo");
    QTest::addColumn<QString>("sentence");
    const auto row = [](const char *did, const char *wrong, const char *todo, const char *sentence) {
        QTest::newRow(sentence) << QString::fromLatin1(did) << QString::fromLatin1(wrong) << QString::fromLatin1(todo)
                                << QString::fromLatin1(sentence);
    };
    row("Cannot open deck", "the file is empty", "choose another", "Cannot open deck: the file is empty; choose another.");
    row("Cannot open deck", "", "choose another", "Cannot open deck; choose another.");
    row("Cannot open deck", "", "", "Cannot open deck.");
    row("", "the file is empty", "", "the file is empty.");
    row("Cannot open\ndeck", "it says\r\n  \"no\".", "", "Cannot open deck: it says \"no\".");
}

void TestValuesIds::troubleMakesOneSentence()
{
    QFETCH(const QString, did);
    QFETCH(const QString, wrong);
    QFETCH(const QString, todo);
    const Trouble trouble{did, wrong, todo};
    QTEST(trouble.sentence(), "sentence");
}

void TestValuesIds::quotationsAreShort()
{
    QCOMPARE(quoted(u"12 V"), QStringLiteral("\"12 V\""));
    QCOMPARE(quoted(u"12\nV"), QStringLiteral("\"12 V\""));
    QCOMPARE(quoted(QString(1'000'000, QLatin1Char('x'))).size(), 43); // 40 signs, an ellipsis, the marks
    QVERIFY(!quoted(u"a\u0007\u0000b").contains(QChar(7)));
    const QString faces = QString::fromUtf8("\xF0\x9F\x98\x80").repeated(50); // never half a surrogate pair
    const QString cut = quoted(QLatin1Char('x') + faces);
    QVERIFY(QString::fromUtf8(cut.toUtf8()) == cut);
}

void TestValuesIds::wordsReadBack()
{
    QCOMPARE(toWord(Colour::DarkRed), QStringLiteral("dark_red"));
    QVERIFY(fromWord<Colour>(u"green") == Colour::Green);
    QVERIFY(!fromWord<Colour>(u"Green")); // stored words are exact
    QVERIFY(!fromWord<Colour>(u""));
    QCOMPARE(allWords<Colour>(), (QStringList{QStringLiteral("dark_red"), QStringLiteral("green")}));
    // what a person types is read more kindly
    QVERIFY(parseWord<Colour>(QStringLiteral(" Dark Red "), QStringLiteral("colour")).value() == Colour::DarkRed);
    QVERIFY(parseWord<Colour>(QStringLiteral("dark-red"), QStringLiteral("colour")).value() == Colour::DarkRed);
    const auto refused = parseWord<Colour>(QStringLiteral("blue"), QStringLiteral("colour"));
    QCOMPARE(refusal(refused), QStringLiteral("\"blue\" is no colour; choose one of dark_red, green."));
}

QTEST_GUILESS_MAIN(TestValuesIds)
#include "test_values_ids.moc"
