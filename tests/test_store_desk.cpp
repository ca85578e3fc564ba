// The desk over the store: every case on SQLite and, where the run has a server, on PostgreSQL.
#include "tests/workbooks.h"

#include <QSignalSpy>

using namespace ts;
using namespace ts::testing;

class TestStoreDesk : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    static Unit addUnit(Desk &desk, const QString &name)
    {
        Unit unit = desk.maker().fresh<Unit>();
        unit.name = name;
        unit.stageSince = unit.at;
        const auto applied = desk.apply(Change(QStringLiteral("Took in ") + name).add(unit));
        if (!applied)
            qFatal("%s", qPrintable(applied.trouble().sentence()));
        return *desk.get(unit.id);
    }

private Q_SLOTS:
    void keepsWhatIsRecorded_data() { engineRows(); }
    void keepsWhatIsRecorded()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        Id<Reading> id;
        Reading reading;
        {
            OpenDesk desk;
            wantOk(desk.create(book));
            const Unit unit = addUnit(*desk, QStringLiteral("Pellworth KD-7 cassette deck"));
            QCOMPARE(unit.tag, 1);
            QCOMPARE(unit.version, 1);
            reading = desk->maker().fresh<Reading>();
            reading.unit = unit.id;
            reading.name = QStringLiteral("CN2.4 – µ, Ω, 水");
            reading.value = *Quantity::parse(u"11.92 V");
            reading.wanted = *Limit::parse(u"12 V 5%");
            reading.uncertainty = 0.04;
            wantOk(desk->apply(Change(QStringLiteral("Reading")).add(reading)));
            id = reading.id;
        }
        OpenDesk again;
        wantOk(again.open(book));
        const auto back = again->get(id);
        wantOk(back);
        reading.version = 1;
        QCOMPARE(*back, reading);
        const auto file = again->unitFile(*again->unitByTag(1));
        wantOk(file);
        QCOMPARE(file->all<Reading>().size(), 1);
        wantOk(again->verify());
        QCOMPARE(*again->verify(), QStringList());
    }

    void undoesAndRedoesAfterARestart_data() { engineRows(); }
    void undoesAndRedoesAfterARestart()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        Id<Unit> id;
        {
            OpenDesk desk;
            wantOk(desk.create(book));
            const Unit unit = addUnit(*desk, QStringLiteral("Tuner"));
            id = unit.id;
            Unit renamed = unit;
            renamed.name = QStringLiteral("Tarrick T-9 tuner");
            wantOk(desk->apply(Change(QStringLiteral("Renamed")).edit(unit, renamed)));
        }
        OpenDesk desk;
        wantOk(desk.open(book));
        QCOMPARE(desk->undoSentence()->value_or(QString()), QStringLiteral("Renamed"));
        QCOMPARE(*desk->undo(), QStringLiteral("Renamed"));
        QCOMPARE(desk->get(id)->name, QStringLiteral("Tuner"));
        QCOMPARE(*desk->undo(), QStringLiteral("Took in Tuner"));
        QVERIFY(!desk->get(id));
        QVERIFY(!desk->unitByTag(1));
        QVERIFY(refusal(desk->undo()).contains(QLatin1String("nothing to undo")));
        QCOMPARE(*desk->redo(), QStringLiteral("Took in Tuner"));
        QCOMPARE(desk->get(id)->name, QStringLiteral("Tuner"));
        QCOMPARE(desk->get(id)->tag, 1);
        QCOMPARE(*desk->redo(), QStringLiteral("Renamed"));
        QCOMPARE(desk->get(id)->name, QStringLiteral("Tarrick T-9 tuner"));
        QVERIFY(refusal(desk->redo()).contains(QLatin1String("nothing to do again")));

        wantOk(desk->undo());
        addUnit(*desk, QStringLiteral("Another")); // something new ends what could be redone
        QVERIFY(!desk->redo());
        QCOMPARE(desk->journal()->size(), 8);
        QCOMPARE(*desk->verify(), QStringList());
    }

    void tagsAreNeverUsedAgain_data() { engineRows(); }
    void tagsAreNeverUsedAgain()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        QCOMPARE(addUnit(*desk, QStringLiteral("A")).tag, 1);
        wantOk(desk->undo());
        QCOMPARE(addUnit(*desk, QStringLiteral("B")).tag, 2);
        Unit given = desk->maker().fresh<Unit>();
        given.name = QStringLiteral("C");
        given.tag = 42;
        wantOk(desk->apply(Change(QStringLiteral("C")).add(given)));
        QCOMPARE(addUnit(*desk, QStringLiteral("D")).tag, 43);
        given.id = desk->maker().fresh<Unit>().id;
        QVERIFY(!desk->apply(Change(QStringLiteral("twice")).add(given)));
        QCOMPARE(addUnit(*desk, QStringLiteral("E")).tag, 44);
    }

    void aLostUpdateIsRefused_data() { engineRows(); }
    void aLostUpdateIsRefused()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        OpenDesk one;
        OpenDesk two;
        wantOk(one.create(book));
        const Unit unit = addUnit(*one, QStringLiteral("Amplifier"));
        wantOk(two.open(book, QStringLiteral("second")));
        Unit mine = *one->get(unit.id);
        Unit theirs = *two->get(unit.id);
        Unit edited = mine;
        edited.place = QStringLiteral("shelf 3");
        wantOk(one->apply(Change(QStringLiteral("Moved")).edit(mine, edited)));
        Unit late = theirs;
        late.place = QStringLiteral("shelf 9");
        const auto refused = two->apply(Change(QStringLiteral("Moved too")).edit(theirs, late));
        QVERIFY(refusal(refused).contains(QLatin1String("changed by someone else")));
        QCOMPARE(two->get(unit.id)->place, QStringLiteral("shelf 3"));
    }

    void undoIsRefusedWhereSomeoneChangedItSince()
    {
        const QString book = m_books.fresh(QStringLiteral("sqlite"));
        OpenDesk desk;
        wantOk(desk.create(book));
        const Unit unit = addUnit(*desk, QStringLiteral("Amplifier"));
        // Behind the journal's back, as a foreign tool would.
        const auto address = BookAddress::parse(book);
        const auto connection = Connection::open(*address, Connection::Mode::Existing);
        wantOk(connection);
        wantOk((*connection)->run(QStringLiteral("UPDATE \"unit\" SET \"name\" = 'Else'")));
        QVERIFY(refusal(desk->undo()).contains(QLatin1String("was changed since")));
        QCOMPARE(desk->get(unit.id)->name, QStringLiteral("Else"));
    }

    void twoDesksSeeEachOther_data() { engineRows(); }
    void twoDesksSeeEachOther()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        OpenDesk one;
        OpenDesk two;
        wantOk(one.create(book));
        wantOk(two.open(book));
        QSignalSpy told(two.desk.get(), &Desk::recorded);
        const Unit unit = addUnit(*one, QStringLiteral("Radio"));
        if (two->isShared())
            QVERIFY(told.wait(1000)); // LISTEN, no polling
        else
            wantOk(two->poll());
        QCOMPARE(told.size(), 1);
        QCOMPARE(told.first().at(0).toString(), QStringLiteral("unit"));
        QCOMPARE(told.first().at(1).toUuid(), unit.id.value);
        QVERIFY(told.first().at(3).toStringList().contains(QLatin1String("name")));
        wantOk(two->poll());
        QCOMPARE(told.size(), 1);
    }

    void findsByTheBeginningOfWords_data() { engineRows(); }
    void findsByTheBeginningOfWords()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Unit unit = addUnit(*desk, QStringLiteral("Quenby R-3 reel recorder"));
        const Unit other = addUnit(*desk, QStringLiteral("Reel to reel, Größe 3"));
        Note note = desk->maker().fresh<Note>();
        note.unit = unit.id;
        note.text = QStringLiteral("belt 78x4x0.6 at CN2.4; 50% <script>'\" OR NEAR(");
        wantOk(desk->apply(Change(QStringLiteral("Note")).add(note)));

        const auto names = [&](const QString &text) {
            QStringList found;
            const auto hits = desk->search(text);
            if (!hits)
                return QStringList{hits.trouble().sentence()};
            for (const Found &hit : *hits)
                found << hit.kind + QLatin1Char(' ') + QString::number(hit.tag);
            return found;
        };
        QCOMPARE(names(QStringLiteral("ree")), QStringList({QStringLiteral("unit 2"), QStringLiteral("unit 1")})); // the newest first
        QCOMPARE(names(QStringLiteral("quen reel")), QStringList({QStringLiteral("unit 1")}));
        QCOMPARE(names(QStringLiteral("0002")), QStringList({QStringLiteral("unit 2")}));
        QCOMPARE(names(QStringLiteral("grosse")), QStringList({QStringLiteral("unit 2")}));
        QCOMPARE(names(QStringLiteral("GRÖSSE")), QStringList({QStringLiteral("unit 2")}));
        QCOMPARE(names(QStringLiteral("78x4x0.6")), QStringList({QStringLiteral("note 1")}));
        QCOMPARE(names(QStringLiteral("cn2.4")), QStringList({QStringLiteral("note 1")}));
        QCOMPARE(names(QStringLiteral("\"'*() OR script")), QStringList({QStringLiteral("note 1")}));
        QCOMPARE(names(QStringLiteral("elt")), QStringList());
        QCOMPARE(names(QStringLiteral("  ")), QStringList());

        wantOk(desk->undo()); // what is out of sight is not found
        QCOMPARE(names(QStringLiteral("belt")), QStringList());
        wantOk(desk->redo());
        QCOMPARE(names(QStringLiteral("belt")), QStringList({QStringLiteral("note 1")}));
        const Unit before = *desk->get(other.id);
        Unit after = before;
        after.name = QStringLiteral("Speaker");
        wantOk(desk->apply(Change(QStringLiteral("Renamed")).edit(before, after)));
        QCOMPARE(names(QStringLiteral("grosse")), QStringList());
        QCOMPARE(*desk->verify(), QStringList());
    }

    void nothingOfAFailedChangeStays_data() { engineRows(); }
    void nothingOfAFailedChangeStays()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        Unit good = desk->maker().fresh<Unit>();
        good.name = QStringLiteral("Good");
        good.tag = 7;
        Unit nameless = desk->maker().fresh<Unit>();
        QVERIFY(refusal(desk->apply(Change(QStringLiteral("Two")).add(good).add(nameless))).contains(QLatin1String("name is missing")));
        Symptom astray = desk->maker().fresh<Symptom>();
        astray.unit = nameless.id; // a unit that is not there
        astray.text = QStringLiteral("hum");
        QVERIFY(!desk->apply(Change(QStringLiteral("Astray")).add(astray)));
        Note nul = desk->maker().fresh<Note>();
        nul.unit = good.id;
        nul.text = QStringLiteral("a") + QChar(0) + QStringLiteral("b");
        QVERIFY(refusal(desk->apply(Change(QStringLiteral("Nul")).add(good).add(nul))).contains(QLatin1String("NUL")));
        QCOMPARE(desk->rack()->size(), 0);
        QCOMPARE(desk->journal()->size(), 0);
        QCOMPARE(addUnit(*desk, QStringLiteral("First")).tag, 1);
    }

    void aStoppedImportLeavesNothing()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        Change many(QStringLiteral("Many"));
        for (int i = 0; i < 1000; ++i) {
            Unit unit = desk->maker().fresh<Unit>();
            unit.name = QStringLiteral("Unit");
            many.add(unit);
        }
        qint64 seen = 0;
        const auto stopped = desk->apply(many, [&](qint64 done, qint64) {
            seen = done;
            return done < 500;
        });
        QVERIFY(refusal(stopped).contains(QLatin1String("Stopped")));
        QVERIFY(seen >= 500);
        QCOMPARE(desk->rack()->size(), 0);
    }

    void keepsBytesBySha256_data() { engineRows(); }
    void keepsBytesBySha256()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        QByteArray bytes("abc");
        const auto sha = desk->keep(bytes, QByteArray("\0\xff\x01", 3));
        wantOk(sha);
        // FIPS 180-4 example for "abc".
        QCOMPARE(*sha, QStringLiteral("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
        QCOMPARE(*desk->kept(*sha), bytes);
        QCOMPARE(*desk->thumbnail(*sha), QByteArray("\0\xff\x01", 3));
        QCOMPARE(*desk->keep(bytes), *sha);
        QVERIFY(!desk->kept(QStringLiteral("00")));
    }

    void backsUpIntoACheckedFile_data() { engineRows(); }
    void backsUpIntoACheckedFile()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        const Unit unit = addUnit(*desk, QStringLiteral("Console"));
        wantOk(desk->keep(QByteArray("photo")));
        const QString file = m_books.path(QStringLiteral("backup-%1.turnscrew").arg(engine));
        wantOk(desk->backup(file));
        QVERIFY(refusal(desk->backup(file)).contains(QLatin1String("already")));
        OpenDesk copy;
        wantOk(copy.open(file));
        QCOMPARE(*copy->get(unit.id), *desk->get(unit.id));
        QCOMPARE(copy->search(QStringLiteral("console"))->size(), 1);
        QCOMPARE(*copy->verify(), QStringList());
        QCOMPARE(copy->journal()->size(), desk->journal()->size());
        QCOMPARE(*copy->undo(), QStringLiteral("Took in Console"));
        QCOMPARE(addUnit(*copy, QStringLiteral("Next")).tag, 2);
    }

    void papersAreNumberedWithoutGaps()
    {
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(QStringLiteral("sqlite"))));
        const Unit a = addUnit(*desk, QStringLiteral("A"));
        const Unit b = addUnit(*desk, QStringLiteral("B"));
        const auto paper = [&](const Unit &unit) {
            Paper made = desk->maker().fresh<Paper>();
            made.unit = unit.id;
            made.madeAt = made.at;
            made.sha256 = *desk->keep(QByteArray("pdf"));
            made.format = QStringLiteral("pdf");
            (void)desk->apply(Change(QStringLiteral("Sheet")).add(made));
            return *desk->get(made.id);
        };
        QCOMPARE(paper(a).number, 1);
        const Paper second = paper(b);
        QCOMPARE(second.number, 2);
        QCOMPARE(second.edition, 1);
        const Paper third = paper(a);
        QCOMPARE(third.number, 3);
        QCOMPARE(third.edition, 2);
    }

    void aPaperIsMadeWithItsNumber_data() { engineRows(); }
    void aPaperIsMadeWithItsNumber()
    {
        QFETCH(QString, engine);
        OpenDesk desk;
        wantOk(desk.create(m_books.fresh(engine)));
        const Unit unit = addUnit(*desk, QStringLiteral("A"));
        Paper sheet = desk->maker().fresh<Paper>();
        sheet.unit = unit.id;
        sheet.madeAt = sheet.at;
        sheet.format = QStringLiteral("html");
        const auto says = [](const Paper &numbered) -> Expected<QByteArray> {
            return QStringLiteral("sheet %1, edition %2").arg(numbered.number).arg(numbered.edition).toUtf8();
        };
        const auto refused = desk->applyPaper(sheet, QStringLiteral("Sheet"), [](const Paper &) -> Expected<QByteArray> {
            return Trouble{QStringLiteral("Cannot write sheet.html"), QStringLiteral("the disk is full"), {}};
        });
        QCOMPARE(refusal(refused), QStringLiteral("Cannot write sheet.html: the disk is full."));
        QCOMPARE(desk->list<Paper>()->size(), 0);
        const auto first = desk->applyPaper(sheet, QStringLiteral("Sheet"), says);
        wantOk(first);
        QCOMPARE(first->number, 1); // the refused one used none up
        QCOMPARE(*desk->get(sheet.id), *first);
        QCOMPARE(*desk->kept(first->sha256), QByteArray("sheet 1, edition 1"));
        Paper next = sheet;
        next.id = desk->maker().fresh<Paper>().id;
        const auto second = desk->applyPaper(next, QStringLiteral("Sheet"), says);
        wantOk(second);
        QCOMPARE(*desk->kept(second->sha256), QByteArray("sheet 2, edition 2"));
        QCOMPARE(*desk->undo(), QStringLiteral("Sheet"));
        QCOMPARE(desk->list<Paper>()->size(), 1);
        QCOMPARE(*desk->verify(), QStringList());
    }
};

QTEST_GUILESS_MAIN(TestStoreDesk)
#include "test_store_desk.moc"
