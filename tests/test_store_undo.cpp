// Random work on a workbook of every kind of record, taken back and done again.
#include "model/records/all_records.h"
#include "tests/generated_rows.h"
#include "tests/workbooks.h"

using namespace ts;
using namespace ts::testing;

namespace {

/// Everything that is in sight, without the versions.
QMap<QString, Row> content(Desk &desk)
{
    QMap<QString, Row> all;
    for (const Kind *kind : allKinds()) {
        const auto rows = desk.listRows(*kind);
        if (!rows)
            qFatal("%s", qPrintable(rows.trouble().sentence()));
        for (Row row : *rows) {
            row[Kind::versionColumn] = QVariant();
            all.insert(kind->table() + QLatin1Char(' ') + row.at(Kind::idColumn).toString(), row);
        }
    }
    return all;
}

QString difference(const QMap<QString, Row> &is, const QMap<QString, Row> &was)
{
    QStringList lines;
    for (auto it = is.begin(); it != is.end(); ++it)
        if (was.value(it.key()) != it.value())
            lines << (was.contains(it.key()) ? QStringLiteral("differs: ") : QStringLiteral("too many: ")) + it.key();
    for (auto it = was.begin(); it != was.end(); ++it)
        if (!is.contains(it.key()))
            lines << QStringLiteral("missing: ") + it.key();
    return lines.join(QLatin1Char('\n'));
}

/// Someone who does anything at all.
class Hand {
public:
    Hand(OpenDesk &desk, quint32 seed) : m_desk(desk), m_random(seed)
    {
        for (const char *bytes : {"a photo", "a paper"})
            m_known[QStringLiteral("sha256")] << *m_desk->keep(QByteArray(bytes));
    }

    /// A change of one to four records: new ones, edits and removals of what is there.
    Change change()
    {
        Change change(m_random.text());
        QSet<QString> touched;
        for (int items = 1 + m_random.below(4); items > 0; --items) {
            const Kind &kind = *allKinds().at(m_random.below(static_cast<int>(allKinds().size())));
            const auto rows = m_desk->listRows(kind);
            const int what = rows->isEmpty() ? 0 : m_random.below(3);
            if (what == 0) {
                if (m_unit.isEmpty() && kind.unitColumn() >= 0)
                    continue;
                const QString id = m_desk.ids.nextUuid().toString(QUuid::WithoutBraces);
                change.addItem({&kind, std::nullopt, m_random.row(kind, id, m_unit, m_known)});
                continue;
            }
            const Row before = m_random.pick(*rows);
            const QString id = before.at(Kind::idColumn).toString();
            if (touched.contains(id))
                continue;
            touched << id;
            if (what == 1) {
                Row after = m_random.row(kind, id, m_unit, m_known);
                after[Kind::versionColumn] = before.at(Kind::versionColumn);
                if (const int tag = kind.column(u"tag"); tag >= 0)
                    after[tag] = before.at(tag);
                change.addItem({&kind, before, after});
            } else {
                change.addItem({&kind, before, std::nullopt});
            }
        }
        return change;
    }
    /// What was recorded may be referred to from now on; never-removed rows only in name, as nothing is ever gone.
    void remember(const Change &applied)
    {
        for (const ChangeItem &item : applied.items()) {
            if (item.before || !item.after)
                continue;
            const QString id = item.after->at(Kind::idColumn).toString();
            m_known[item.kind->table()] << id;
            if (item.kind->table() == QLatin1String("unit"))
                m_unit = id;
        }
    }
    int below(int limit) { return m_random.below(limit); }

private:
    OpenDesk &m_desk;
    GeneratedRows m_random;
    QHash<QString, QStringList> m_known;
    QString m_unit;
};

} // namespace

class TestStoreUndo : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

private Q_SLOTS:
    void allTheWayBackAndForth_data()
    {
        QTest::addColumn<QString>("engine");
        QTest::addColumn<quint32>("seed");
        const QStringList engines = Workbooks::engines();
        for (const QString &engine : engines)
            for (quint32 seed = 1; seed <= (engine == QLatin1String("sqlite") ? 4 : 2); ++seed)
                QTest::addRow("%s %u", qPrintable(engine), seed) << engine << seed;
    }
    void allTheWayBackAndForth()
    {
        QFETCH(QString, engine);
        QFETCH(quint32, seed);
        const QString book = m_books.fresh(engine);
        OpenDesk desk;
        wantOk(desk.create(book));
        Hand hand(desk, seed);
        QList<QMap<QString, Row>> states{content(*desk)}; // states.at(n): after n changes that stand
        qsizetype at = 0;
        int applied = 0;
        int refused = 0;
        for (int i = 0; i < 160; ++i) {
            const int what = hand.below(10);
            if (what < 6) {
                const Change change = hand.change();
                const auto done = desk->apply(change);
                if (done && !change.isEmpty()) {
                    hand.remember(*done);
                    states = states.mid(0, ++at);
                    states << content(*desk);
                    ++applied;
                } else if (!done) { // two records of a unit or a name that may have but one
                    const QString apart = difference(content(*desk), states.at(at));
                    QVERIFY2(apart.isEmpty(), qPrintable(done.trouble().sentence() + QLatin1Char('\n') + apart));
                    ++refused;
                }
            } else if (what < 9) {
                const auto done = desk->undo();
                QCOMPARE(done.ok(), at > 0);
                at -= at > 0 ? 1 : 0;
            } else {
                const auto done = desk->redo();
                QCOMPARE(done.ok(), at + 1 < states.size());
                at += at + 1 < states.size() ? 1 : 0;
            }
            const QString apart = difference(content(*desk), states.at(at));
            QVERIFY2(apart.isEmpty(), qPrintable(QStringLiteral("at %1:\n").arg(i) + apart));
            if (i % 40 == 0)
                wantOk(desk.open(book)); // a restart forgets nothing
        }
        QVERIFY(applied > 50 && refused < applied);

        while (desk->redo())
            ++at;
        QCOMPARE(at + 1, states.size());
        QCOMPARE(difference(content(*desk), states.last()), QString());
        for (; at > 0; --at)
            wantOk(desk->undo());
        QVERIFY(!desk->undo());
        QCOMPARE(difference(content(*desk), states.first()), QString());
        QCOMPARE(*desk->verify(), QStringList());
        QCOMPARE(desk->rack()->size(), 0);
        QCOMPARE(desk->search(QStringLiteral("capstan"))->size(), 0);
        for (; at + 1 < states.size(); ++at)
            wantOk(desk->redo());
        QVERIFY(!desk->redo());
        QCOMPARE(difference(content(*desk), states.last()), QString());
        QCOMPARE(*desk->verify(), QStringList());
    }
};

QTEST_GUILESS_MAIN(TestStoreUndo)
#include "test_store_undo.moc"
