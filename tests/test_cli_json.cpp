// What the program says to other programs of a workbook: the keys as they were promised, and how their values are written.
#include "tests/program.h"
#include "tests/workbooks.h"

#include <QJsonArray>

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

namespace {

// The promise, in the words it was made in: name {keys} is an object, name [{keys}] a list of objects, name [text] a list of
// texts.
const auto unitPromise = uR"(
    tag, name, maker, maker_model, category, kind, stage, stage_since, held_because, outcome, serial, year, mains,
    protection_class, claim, place, source_id
    left_off   {where, next, loose, do_not_power}
    log        [{at, what, text}]
    symptoms   [{text, conditions, state}]
    causes     [{symptom, text, state, likelihood_before, likelihood, fix_minutes, fix_cost, fix_odds}]
    checks     [{symptom, text, minutes, came_out}]
    check_next [{text, minutes, saves_minutes}]
    readings   [{point, value, unit, wanted_low, wanted_high, uncertainty, phase, verdict, chance_within, meter}]
    soaks      [{name, readings, drift_per_hour, drift_low, drift_high, verdict}]
    steps      [{text, minutes}]
    teardown   [{what, fasteners, kept_in, state}]
    needs      [{text, state, price, quantity}]
    spends     [{text, amount, currency}]
    proofs     [{text, came_out, kind}]
    cautions   [text]
    hours      {minutes_to_date, minutes_planned}
    money      {currency, spent, break_even, resale_middle, profit_low, profit_middle, profit_high, per_hour, ways_out}
    papers     [{kind, version, made_at, sha256}]
)"_s;
const auto rackPromise = uR"(
    currency
    units [{tag, name, category, kind, stage, stage_since, spent, minutes, source_id}]
)"_s;

struct Promised {
    enum class Shape { Value, Object, Objects, Texts };
    Shape shape = Shape::Value;
    QStringList keys;
};

QStringList split(const QString &keys)
{
    QStringList list;
    for (const QString &key : keys.split(u',', Qt::SkipEmptyParts))
        if (!key.trimmed().isEmpty())
            list << key.trimmed();
    return list;
}

QMap<QString, Promised> read(const QString &promise)
{
    static const QRegularExpression shaped(u"^(\\w+)\\s+(\\[\\{|\\{|\\[)([^}\\]]*)"_s);
    QMap<QString, Promised> all;
    for (const QString &line : promise.split(u'\n', Qt::SkipEmptyParts)) {
        const auto found = shaped.match(line.trimmed());
        if (!found.hasMatch()) {
            for (const QString &key : split(line))
                all.insert(key, {});
            continue;
        }
        const QString open = found.captured(2);
        const auto shape = open == u"[{"_s  ? Promised::Shape::Objects
                           : open == u"{"_s ? Promised::Shape::Object
                                            : Promised::Shape::Texts;
        all.insert(found.captured(1), {shape, split(found.captured(3))});
    }
    return all;
}

/// What of the promise the document does not keep.
QStringList broken(const QJsonObject &document, const QString &promise)
{
    QStringList list;
    const auto lacking = [&list](const QJsonObject &object, const QStringList &keys, const QString &where) {
        for (const QString &key : keys)
            if (!object.contains(key))
                list << where + key + u" is missing"_s;
    };
    const QMap<QString, Promised> all = read(promise);
    for (auto [name, promised] : all.asKeyValueRange()) {
        const QJsonValue value = document.value(name);
        switch (promised.shape) {
        case Promised::Shape::Value:
            lacking(document, {name}, {});
            break;
        case Promised::Shape::Object:
            if (!value.isObject())
                list << name + u" is no object"_s;
            lacking(value.toObject(), promised.keys, name + u'.');
            break;
        case Promised::Shape::Objects:
            if (!value.isArray())
                list << name + u" is no list"_s;
            for (const QJsonValue &each : value.toArray())
                lacking(each.toObject(), promised.keys, name + u"[]."_s);
            break;
        case Promised::Shape::Texts:
            if (!value.isArray())
                list << name + u" is no list"_s;
            for (const QJsonValue &each : value.toArray())
                if (!each.isString())
                    list << name + u" holds something else than text"_s;
            break;
        }
    }
    return list;
}

/// Every value in the document with its path, "spends[].amount".
void walk(const QJsonValue &value, const QString &path, const std::function<void(const QString &, const QJsonValue &)> &look)
{
    if (value.isObject()) {
        const QJsonObject object = value.toObject();
        for (auto it = object.begin(); it != object.end(); ++it)
            walk(it.value(), path.isEmpty() ? it.key() : path + u'.' + it.key(), look);
    } else if (value.isArray()) {
        for (const QJsonValue &each : value.toArray())
            walk(each, path + u"[]"_s, look);
    } else {
        look(path, value);
    }
}

const QStringList money{u"causes[].fix_cost"_s, u"needs[].price"_s,       u"spends[].amount"_s,  u"money.spent"_s,
                        u"money.break_even"_s,  u"money.resale_middle"_s, u"money.profit_low"_s, u"money.profit_middle"_s,
                        u"money.profit_high"_s, u"money.per_hour"_s,      u"units[].spent"_s};
const QStringList times{u"stage_since"_s, u"log[].at"_s, u"papers[].made_at"_s, u"units[].stage_since"_s};
const QStringList words{u"category"_s,
                        u"kind"_s,
                        u"stage"_s,
                        u"outcome"_s,
                        u"symptoms[].state"_s,
                        u"causes[].state"_s,
                        u"checks[].came_out"_s,
                        u"readings[].phase"_s,
                        u"readings[].verdict"_s,
                        u"soaks[].verdict"_s,
                        u"teardown[].state"_s,
                        u"needs[].state"_s,
                        u"proofs[].came_out"_s,
                        u"proofs[].kind"_s,
                        u"papers[].kind"_s,
                        u"log[].what"_s,
                        u"units[].category"_s,
                        u"units[].kind"_s,
                        u"units[].stage"_s};

/// Values that are not written as promised: money as decimal strings, times in UTC as ISO 8601, words in lower case with
/// underscores.
QStringList illWritten(const QJsonObject &document)
{
    static const QRegularExpression decimal(u"^-?\\d+\\.\\d{2}$"_s); // the workbook's pounds have two
    static const QRegularExpression utc(u"^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?Z$"_s);
    static const QRegularExpression word(u"^[a-z]+(_[a-z]+)*$"_s);
    static const QRegularExpression snake(u"^[a-z0-9_\\[\\].]+$"_s);
    QStringList list;
    walk(document, {}, [&list](const QString &path, const QJsonValue &value) {
        const auto is = [&value](const QRegularExpression &form) {
            return value.isNull() || form.match(value.toString()).hasMatch();
        };
        if ((money.contains(path) && !is(decimal)) || (times.contains(path) && !is(utc)) || (words.contains(path) && !is(word)) ||
            !snake.match(path).hasMatch())
            list << path + u" = "_s + value.toVariant().toString();
    });
    return list;
}

} // namespace

class TestCliJson : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;
    QString m_book;

    QJsonObject shown(const QStringList &rest)
    {
        const Answer answer = program(QStringList{u"show"_s, m_book} + rest + QStringList{u"--json"_s});
        if (answer.status != 0 || !answer.err.isEmpty() || !QJsonDocument::fromJson(answer.out.toUtf8()).isObject())
            qFatal("%s", answer.told().constData());
        return answer.json();
    }

private Q_SLOTS:
    // Unit 1 has something of every kind, unit 2 nothing but its name.
    void initTestCase()
    {
        m_book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"new"_s, m_book);
        TS_RUN(u"take-in"_s, m_book, u"--name"_s, u"Aldous 40 amplifier"_s, u"--category"_s, u"amplifier_receiver"_s,
               u"--mains"_s, u"230 V 50 Hz"_s, u"--paid"_s, u"45"_s, u"--carriage"_s, u"9,5"_s, u"--class"_s, u"I"_s, u"--year"_s,
               u"1979"_s);
        TS_RUN(u"take-in"_s, m_book, u"--name"_s, u"Corvane pocket set"_s, u"--category"_s, u"radio"_s);
        for (const QString &line :
             {u"saw hum in both channels"_s, u"think reservoir capacitor dry 60%"_s, u"check ripple on the supply 10m"_s,
              u"ripple = 1,2 V want <= 200 mV found"_s, u"offset L = 12 mV want -50..50 mV after"_s,
              u"did renewed the reservoir 25m"_s, u"off lid 4 screws M4x10 tray B2"_s, u"need knob 3.20"_s,
              u"fitted capacitor 4700u 63 V 6.40"_s, u"proved earth continuity: 0.08 Ω"_s, u"next fit the lid"_s,
              u"do not power lid is off"_s, u"waiting knob until 28 Nov"_s})
            TS_RUN(u"jot"_s, m_book, u"1"_s, line);
        TS_RUN(u"paper"_s, m_book, u"1"_s, u"restoration"_s, u"-o"_s, m_books.path(u"sheet.html"_s));
        OpenDesk desk;
        wantOk(desk.open(m_book));
        Soak soak = desk->maker().fresh<Soak>();
        soak.unit = *desk->unitByTag(1);
        soak.name = u"four hours with music"_s;
        soak.startedAt = soak.at;
        soak.wanted = *Limit::parse(u"<= 60 °C");
        Change change(u"Soak begun"_s);
        change.add(soak);
        for (const char16_t *value : {u"48 °C", u"61 °C", u"55 °C"}) {
            Reading reading = desk->maker().fresh<Reading>();
            reading.unit = soak.unit;
            reading.soak = soak.id;
            reading.name = u"heat sink"_s;
            reading.value = *Quantity::parse(QStringView(value));
            change.add(reading);
        }
        wantOk(desk->apply(change));
    }

    void aUnitHasAllKeys()
    {
        const QJsonObject unit = shown({u"1"_s});
        QCOMPARE(broken(unit, unitPromise), QStringList());
        QCOMPARE(illWritten(unit), QStringList());
        for (const auto *list : {"log", "symptoms", "causes", "checks", "readings", "soaks", "steps", "teardown", "needs",
                                 "spends", "proofs", "cautions", "papers"})
            QVERIFY2(!unit.value(QLatin1String(list)).toArray().isEmpty(),
                     list); // or the keys inside would not have been looked at
        QCOMPARE(unit.value(u"tag"_s).toString(), u"0001"_s);
        QCOMPARE(unit.value(u"held_because"_s).toString(), u"knob"_s);
        QCOMPARE(unit.value(u"protection_class"_s).toString(), u"I"_s);
        const QJsonObject left = unit.value(u"left_off"_s).toObject();
        QCOMPARE(left.value(u"next"_s).toString(), u"fit the lid"_s);
        QCOMPARE(left.value(u"do_not_power"_s).toString(), u"lid is off"_s);
        QCOMPARE(left.value(u"loose"_s).toString(), u"lid"_s);
        const QJsonObject soak = unit.value(u"soaks"_s).toArray().at(0).toObject();
        QCOMPARE(soak.value(u"readings"_s).toInt(), 3);
        QCOMPARE(soak.value(u"verdict"_s).toString(), u"out"_s); // one of three is: limits are the soak's own
        QJsonObject ripple;
        for (const QJsonValue &reading : unit.value(u"readings"_s).toArray())
            if (reading[u"point"] == u"ripple"_s)
                ripple = reading.toObject();
        QCOMPARE(ripple.value(u"value"_s).toDouble(), 1.2);
        QCOMPARE(ripple.value(u"unit"_s).toString(), u"V"_s);
        QCOMPARE(ripple.value(u"wanted_high"_s).toDouble(), 0.2); // in the unit shown, not in the limit's
        QVERIFY(ripple.value(u"wanted_low"_s).isNull());
        QCOMPARE(ripple.value(u"verdict"_s).toString(), u"outside"_s);
        QCOMPARE(unit.value(u"money"_s).toObject().value(u"spent"_s).toString(),
                 u"60.90"_s); // 45 + 9.50 + 6.40; the knob is only needed
    }

    void whatIsAbsentIsNullOrEmpty()
    {
        const QJsonObject unit = shown({u"2"_s});
        QCOMPARE(broken(unit, unitPromise), QStringList());
        QCOMPARE(illWritten(unit), QStringList());
        for (const auto *key : {"maker", "maker_model", "held_because", "outcome", "serial", "year", "mains", "protection_class",
                                "claim", "place", "source_id"})
            QVERIFY2(unit.value(QLatin1String(key)).isNull(), key);
        for (const auto *list : {"symptoms", "causes", "checks", "check_next", "readings", "soaks", "steps", "teardown", "needs",
                                 "spends", "papers"})
            QVERIFY2(unit.value(QLatin1String(list)).isArray() && unit.value(QLatin1String(list)).toArray().isEmpty(), list);
        for (const QJsonValue &each : unit.value(u"left_off"_s).toObject())
            QVERIFY(each.isNull());
        QVERIFY(unit.value(u"money"_s).toObject().value(u"resale_middle"_s).isNull());
        QCOMPARE(unit.value(u"hours"_s).toObject().value(u"minutes_to_date"_s).toInt(-1), 0);
        QVERIFY(unit.value(u"hours"_s).toObject().value(u"minutes_planned"_s).isNull());
    }

    void aReadingSaysHowSureItIs()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"demo"_s, book);
        TS_RUN(u"jot"_s, book, u"42"_s, u"trial point = 11.92 V want 12 V 5% with bench meter"_s);
        const QJsonObject shown = program({u"show"_s, book, u"42"_s, u"--json"_s}).json();
        QJsonObject reading;
        for (const QJsonValue &each : shown.value(u"readings"_s).toArray())
            if (each.toObject().value(u"point"_s) == u"trial point"_s)
                reading = each.toObject();
        // The demo's bench meter: 0.3 % + 1 count of 0.01 V on its 40 V range; by hand a = 0.04576 V, a rectangle (JCGM 100, 4.3.7).
        QVERIFY2(std::fabs(reading.value(u"uncertainty"_s).toDouble() - 1.959964 * 0.04576 / std::sqrt(3.0)) < 1e-6,
                 QJsonDocument(reading).toJson().constData());
        QCOMPARE(reading.value(u"budget"_s).toArray().size(), 2);
        QCOMPARE(reading.value(u"calibration_overdue"_s), QJsonValue(false));
        QCOMPARE(reading.value(u"verdict"_s).toString(), u"within"_s);
    }

    void theRackHasAllKeys()
    {
        const QJsonObject rack = shown({});
        QCOMPARE(broken(rack, rackPromise), QStringList());
        QCOMPARE(illWritten(rack), QStringList());
        QCOMPARE(rack.value(u"units"_s).toArray().size(), 2);
        QCOMPARE(rack.value(u"currency"_s).toString(), u"GBP"_s);
    }
};

QTEST_GUILESS_MAIN(TestCliJson)
#include "test_cli_json.moc"
