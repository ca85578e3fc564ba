// The job of the README, typed: from an empty workbook, or from somebody's repair records, to the sheet that a buyer gets.
#include "model/sums/acceptance.h"
#include "tests/program.h"
#include "tests/workbooks.h"

#include <QImage>
#include <QJsonArray>

using namespace Qt::StringLiterals;
using namespace ts;
using namespace ts::testing;

namespace {

/// Width and height of every page in points, as the PDF states them.
QList<QSizeF> pageSizes(const QByteArray &pdf)
{
    static const QRegularExpression box(u"/MediaBox\\s*\\[\\s*0\\s+0\\s+([0-9.]+)\\s+([0-9.]+)\\s*\\]"_s);
    QList<QSizeF> sizes;
    for (auto found = box.globalMatch(QString::fromLatin1(pdf)); found.hasNext();) {
        const auto each = found.next();
        sizes << QSizeF(each.captured(1).toDouble(), each.captured(2).toDouble());
    }
    return sizes;
}

/// The pieces that a page does not say. Pages begin lines with a capital and keep a figure and its unit on one line.
QString missing(QString page, const QStringList &wanted)
{
    for (const char16_t space : {u'\u00A0', u'\u202F', u'\u2009'})
        page.replace(QChar(space), u' ');
    page.remove(u'\u2060');
    QStringList list;
    for (const QString &piece : wanted)
        if (!page.contains(piece, Qt::CaseInsensitive))
            list << piece;
    return list.join(u" | ");
}

// Four records of our own in the columns of the open repair standard.
const auto repairs = QByteArrayLiteral(
    "id,data_provider,country,partner_product_category,product_category,product_category_id,brand,year_of_manufacture,product_"
    "age,repair_status,"
    "repair_barrier_if_end_of_life,group_identifier,event_date,problem\n"
    "bench_1,Hill Menders,GBR,Audio ~ Deck,Hi-Fi separates,13,Pellworth,1986,38,Repairable,,hill_1,2024-03-02,\"Deck, left "
    "channel silent\"\n"
    "bench_2,Hill Menders,GBR,Audio ~ Radio,Portable radio,23,Corvane,,,Fixed,,hill_1,2024-03-02,Batteries leaked\n"
    "bench_3,Hill Menders,GBR,Audio ~ Radio,Portable radio,23,Unknown,,,End of life,Spare parts not "
    "available,hill_2,2024-04-06,\"<script>alert(1)</script>\"\n"
    "bench_4,Hill Menders,GBR,Audio ~ Other,Hi-Fi integrated,12,Aldous,2001,23,Unknown,,hill_2,2024-04-06,=1+1\n");

} // namespace

class TestCliMainJob : public QObject {
    Q_OBJECT
private:
    Workbooks m_books;

    [[nodiscard]] QString at(const QString &name) const { return m_books.path(name); }

    /// A workbook with one unit, from taking in to ready, told in lines as they would be typed.
    void mend(const QString &book)
    {
        QImage picture(400, 300, QImage::Format_RGB32);
        picture.fill(Qt::darkGray);
        QVERIFY(picture.save(at(u"front.png"_s)));
        picture.fill(Qt::lightGray);
        QVERIFY(picture.save(at(u"done.jpg"_s)));

        TS_RUN(u"new"_s, book);
        TS_RUN(u"set"_s, book, u"bench_name"_s, u"Hillside Bench"_s);
        TS_RUN(u"set"_s, book, u"worker"_s, u"R. M."_s);
        const Answer taken = program({u"take-in"_s,    book,
                                      u"--name"_s,     u"Pellworth KD-7 cassette deck"_s,
                                      u"--category"_s, u"cassette_deck"_s,
                                      u"--maker"_s,    u"Pellworth"_s,
                                      u"--model"_s,    u"KD-7"_s,
                                      u"--serial"_s,   u"1180427"_s,
                                      u"--year"_s,     u"1986"_s,
                                      u"--mains"_s,    u"230 V 50 Hz"_s,
                                      u"--class"_s,    u"II"_s,
                                      u"--claim"_s,    u"eats tapes"_s,
                                      u"--paid"_s,     u"30.00"_s,
                                      u"--carriage"_s, u"8.40"_s});
        QVERIFY2(taken.status == 0, taken.told().constData());
        QCOMPARE(taken.out, u"0001\n"_s);
        TS_RUN(u"stage"_s, book, u"1"_s, u"bench"_s);
        TS_RUN(u"photo"_s, book, u"1"_s, at(u"front.png"_s), u"--phase"_s, u"found"_s, u"--caption"_s, u"lid scratched"_s);
        const QStringList lines{u"saw take-up reel stops after a few seconds"_s,
                                u"take-up torque = 18 gf.cm want 35..65 found"_s,
                                u"think clutch felt glazed 40%"_s,
                                u"think belt slack 60%"_s,
                                u"ruled out clutch felt"_s,
                                u"was belt slack"_s,
                                u"off lid 5 screws M3x8 tray A1"_s,
                                u"did cleaned the source switch 20m"_s,
                                u"fitted belt 78x4x0.6 2.50"_s,
                                u"back lid"_s,
                                u"take-up torque = 47 gf.cm want 35..65 after"_s,
                                u"insulation = 200 MΩ want >= 2 MΩ with insulation tester"_s,
                                u"cleared take-up reel stops"_s,
                                u"paid cleaner 0.60"_s};
        for (const QString &line : lines)
            TS_RUN(u"jot"_s, book, u"0001"_s, line);
        TS_RUN(u"photo"_s, book, u"1"_s, at(u"done.jpg"_s), u"--phase"_s, u"leaves"_s);
        TS_RUN(u"jot"_s, book, u"0001"_s, u"insulation = 200 MΩ want >= 2 MΩ after ± 9 MΩ with insulation tester"_s);
        TS_RUN(u"stage"_s, book, u"1"_s, u"ready"_s);
    }

private Q_SLOTS:
    void fromNothingToTheSheet_data() { engineRows(); }
    void fromNothingToTheSheet()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        mend(book);
        if (QTest::currentTestFailed())
            return;

        // Page sizes: ISO 216 (A4 is 210 mm by 297 mm) and ASME Y14.1 (Letter is 8.5 in by 11 in), in points of 1/72 in.
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"a4.pdf"_s), u"--size"_s, u"A4"_s);
        TS_RUN(u"paper"_s, u"--size"_s, u"Letter"_s, u"-o"_s, at(u"letter.pdf"_s), book, u"1"_s, u"restoration"_s);
        const auto a4 = pageSizes(contents(at(u"a4.pdf"_s)));
        const auto letter = pageSizes(contents(at(u"letter.pdf"_s)));
        QVERIFY(contents(at(u"a4.pdf"_s)).startsWith("%PDF-"));
        QVERIFY(!a4.isEmpty() && !letter.isEmpty());
        for (const QSizeF &page : a4)
            QVERIFY2(qAbs(page.width() - 210 / 25.4 * 72) < 1 && qAbs(page.height() - 297 / 25.4 * 72) < 1,
                     qPrintable(QString::number(page.width())));
        for (const QSizeF &page : letter)
            QVERIFY2(qAbs(page.width() - 612) < 1 && qAbs(page.height() - 792) < 1, qPrintable(QString::number(page.width())));

        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"sheet.html"_s));
        const QString sheet = QString::fromUtf8(contents(at(u"sheet.html"_s)));
        // What a restoration sheet says: trade.md 3.1.
        const QString lacks = missing(sheet, {u"Pellworth KD-7 cassette deck"_s, u"1180427"_s, u"1986"_s, u"230 V 50 Hz"_s,
                                              u"eats tapes"_s, u"take-up reel stops after a few seconds"_s, u"belt slack"_s,
                                              u"18 gf·cm"_s, u"47 gf·cm"_s, u"200 MΩ"_s, u"insulation tester"_s,
                                              u"belt 78x4x0.6"_s, u"lid scratched"_s, u"Hillside Bench"_s, u"R. M."_s});
        QCOMPARE(lacks, QString());
        QVERIFY(sheet.contains(u"Restoration sheet 3, edition 3"_s)); // two were written before
        QCOMPARE(sheet.count(u"data:image/jpeg;base64,"_s), 2); // as it arrived and as it leaves, inside the file
        QVERIFY(!sheet.contains(u"<script"_s, Qt::CaseInsensitive));
        static const QRegularExpression outside(u"(src|href)\\s*=\\s*[\"'](?!data:|#)"_s);
        QVERIFY2(!outside.match(sheet).hasMatch(), qPrintable(outside.match(sheet).captured()));

        const QJsonObject unit = program({u"show"_s, book, u"1"_s, u"--json"_s}).json();
        QCOMPARE(unit.value(u"stage"_s).toString(), u"ready"_s);
        QCOMPARE(unit.value(u"hours"_s).toObject().value(u"minutes_to_date"_s).toInt(), 20);
        QCOMPARE(unit.value(u"money"_s).toObject().value(u"spent"_s).toString(), u"41.50"_s); // 30.00 + 8.40 + 2.50 + 0.60
        Unit deck;
        deck.category = Category::CassetteDeck;
        deck.protectionClass = ProtectionClass::II;
        const QJsonArray proofs = unit.value(u"proofs"_s).toArray(); // an insulation reading as it leaves is one
        QCOMPARE(proofs.size(), acceptanceFor(deck).size() + 1); // beside what its category and class ask for
        QCOMPARE(proofs.last().toObject(), (QJsonObject{{u"text"_s, u"insulation: 200 MΩ ± 9 MΩ, wanted at least 2 MΩ"_s},
                                                       {u"came_out"_s, u"passed"_s},
                                                       {u"kind"_s, u"electrical_safety"_s}}));
        const QJsonArray papers = unit.value(u"papers"_s).toArray();
        QCOMPARE(papers.size(), 3);
        const QStringList files{u"a4.pdf"_s, u"letter.pdf"_s, u"sheet.html"_s};
        for (qsizetype i = 0; i < files.size(); ++i) {
            const QJsonObject paper = papers.at(i).toObject();
            QCOMPARE(paper.value(u"version"_s).toInt(), static_cast<int>(i) + 1);
            QCOMPARE(paper.value(u"sha256"_s).toString(), sha256(contents(at(files.at(i)))));
        }
        TS_RUN(u"verify"_s, book);
    }

    void whatWasHandedOverStays()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        mend(book);
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"first.html"_s));
        const QByteArray first = contents(at(u"first.html"_s));
        TS_RUN(u"jot"_s, book, u"1"_s, u"saw hum on the right channel"_s);
        TS_RUN(u"stage"_s, book, u"1"_s, u"bench"_s);
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"second.html"_s));
        QVERIFY(contents(at(u"second.html"_s)).contains("hum on the right channel"));
        QVERIFY(!first.contains("hum on the right channel"));
        {
            OpenDesk desk;
            wantOk(desk.open(book));
            const auto kept = desk->kept(sha256(first));
            wantOk(kept);
            QCOMPARE(*kept, first);
        }
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"--edition"_s, u"1"_s, u"-o"_s, at(u"again.html"_s));
        QCOMPARE(contents(at(u"again.html"_s)), first);
        const QJsonArray papers = program({u"show"_s, book, u"1"_s, u"--json"_s}).json().value(u"papers"_s).toArray();
        QCOMPARE(papers.size(), 2); // writing one again makes no new one
    }

    void aFileThatIsThereIsReplaced()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        mend(book);
        write(at(u"old.pdf"_s), "something older");
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"old.pdf"_s));
        QVERIFY(contents(at(u"old.pdf"_s)).startsWith("%PDF-"));
    }

    void fromAnImportedRecordToTheSheet_data() { engineRows(); }
    void fromAnImportedRecordToTheSheet()
    {
        QFETCH(QString, engine);
        const QString book = m_books.fresh(engine);
        const QString file = at(u"repairs.csv"_s);
        write(file, repairs);
        TS_RUN(u"new"_s, book);
        TS_RUN(u"import"_s, book, file, u"--as"_s, u"open-repair-data"_s);
        TS_RUN(u"import"_s, book, file, u"--as"_s, u"open-repair-data"_s); // the same file again adds nothing
        const QJsonArray units = program({u"show"_s, book, u"--json"_s}).json().value(u"units"_s).toArray();
        QCOMPARE(units.size(), 4);
        QString tag;
        QString scriptTag;
        for (const QJsonValue &unit : units) {
            if (unit[u"source_id"].toString() == u"bench_1"_s)
                tag = unit[u"tag"].toString();
            if (unit[u"source_id"].toString() == u"bench_3"_s)
                scriptTag = unit[u"tag"].toString();
        }
        QVERIFY(!tag.isEmpty() && !scriptTag.isEmpty());
        const QJsonObject unit = program({u"show"_s, book, tag, u"--json"_s}).json();
        QCOMPARE(unit.value(u"year"_s).toInt(), 1986);
        QVERIFY(unit.value(u"maker"_s).toString() == u"Pellworth"_s);
        const Answer told = program({u"show"_s, book, tag});
        QVERIFY2(told.status == 0 && told.out.contains(u"left channel silent"_s), told.told().constData());

        TS_RUN(u"jot"_s, book, tag, u"line out L = 380 mV want 387 mV 2dB after"_s);
        TS_RUN(u"jot"_s, book, tag, u"did resoldered the left output socket 15m"_s);
        TS_RUN(u"paper"_s, book, tag, u"restoration"_s, u"-o"_s, at(u"imported.html"_s));
        TS_RUN(u"paper"_s, book, tag, u"restoration"_s, u"-o"_s, at(u"imported.pdf"_s));
        const QString sheet = QString::fromUtf8(contents(at(u"imported.html"_s)));
        QCOMPARE(missing(sheet, {u"Pellworth"_s, u"left channel silent"_s, u"380 mV"_s, u"resoldered the left output socket"_s}),
                 QString());
        QVERIFY(contents(at(u"imported.pdf"_s)).startsWith("%PDF-"));

        TS_RUN(u"paper"_s, book, scriptTag, u"restoration"_s, u"-o"_s, at(u"script.html"_s));
        QVERIFY(!contents(at(u"script.html"_s)).toLower().contains("<script"));
        TS_RUN(u"verify"_s, book);
    }

    void hostileTextStaysText()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"new"_s, book);
        TS_RUN(u"take-in"_s, book, u"--category"_s, u"radio"_s, u"--name"_s, u"<script>alert(1)</script> \u202Eoidar"_s,
               u"--claim"_s, u"=cmd|'/C calc'!A0"_s);
        TS_RUN(u"jot"_s, book, u"1"_s, u"<img src=x onerror=alert(1)>"_s);
        TS_RUN(u"jot"_s, book, u"1"_s, u"=HYPERLINK(\"http://x\")"_s);
        TS_RUN(u"paper"_s, book, u"1"_s, u"restoration"_s, u"-o"_s, at(u"hostile.html"_s));
        const QByteArray sheet = contents(at(u"hostile.html"_s));
        QVERIFY(sheet.contains("&lt;script&gt;"));
        QVERIFY(!sheet.contains("<script") && !sheet.contains("<img src=x"));
        for (const QStringList &words : {QStringList{u"show"_s, book}, QStringList{u"show"_s, book, u"1"_s},
                                         QStringList{u"show"_s, book, u"1"_s, u"--json"_s}}) {
            const Answer answer = program(words);
            QCOMPARE(answer.status, 0);
            QVERIFY(!answer.out.contains(QChar(0x202E)));
        }
        // JSON says the same text by its escape.
        QVERIFY(program({u"show"_s, book, u"1"_s, u"--json"_s}).json().value(u"name"_s).toString().contains(QChar(0x202E)));
        TS_RUN(u"export"_s, book, u"--as"_s, u"csv"_s, u"-o"_s, at(u"units.csv"_s));
        for (const QByteArray &cell : contents(at(u"units.csv"_s)).split(','))
            QVERIFY2(!cell.startsWith('=') && !cell.startsWith("\"="), cell.constData()); // a spreadsheet would run it
    }

    void undoAndRedoSayWhat()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"new"_s, book);
        TS_RUN(u"take-in"_s, book, u"--name"_s, u"Deck"_s, u"--category"_s, u"cassette_deck"_s);
        TS_RUN(u"jot"_s, book, u"1"_s, u"CN2.4 = 11.92 V want 12 V 5%"_s);
        TS_RUN(u"stage"_s, book, u"1"_s, u"bench"_s);
        QCOMPARE(program({u"undo"_s, book}).out, u"Undone: Moved 0001 to Bench\n"_s);
        QCOMPARE(program({u"undo"_s, book}).out, u"Undone: 0001 Reading CN2.4: 11.92 V\n"_s);
        QCOMPARE(program({u"show"_s, book, u"1"_s, u"--json"_s}).json().value(u"readings"_s).toArray().size(), 0);
        QCOMPARE(program({u"redo"_s, book}).out, u"Done again: 0001 Reading CN2.4: 11.92 V\n"_s);
        QCOMPARE(program({u"show"_s, book, u"1"_s, u"--json"_s}).json().value(u"readings"_s).toArray().size(), 1);
        QCOMPARE(program({u"show"_s, book, u"1"_s, u"--json"_s}).json().value(u"stage"_s).toString(), u"shelved"_s);
    }

    void takingInBringsWhatTheWindowBrings()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"new"_s, book);
        TS_RUN(u"set"_s, book, u"mains"_s, u"230 V 50 Hz"_s);
        const Answer taken = program({u"take-in"_s, book, u"--name"_s, u"Tarrick T-9"_s, u"--category"_s, u"tuner"_s, u"--class"_s, u"I"_s, u"--mains"_s, u"117 V 60 Hz"_s});
        QCOMPARE(taken.status, 0);
        QCOMPARE(taken.out, u"0001\n"_s); // the tag alone, for scripts
        QVERIFY2(taken.err.contains(u"117"_s), taken.told().constData()); // before it is plugged in
        OpenDesk desk;
        wantOk(desk.open(book));
        const auto file = desk->unitFile(desk->list<Unit>()->first().id);
        wantOk(file);
        QStringList proofs;
        for (const Proof &proof : file->all<Proof>())
            proofs << proof.text;
        QStringList wanted;
        for (const AcceptanceLine &line : acceptanceFor(file->unit))
            wanted << line.text;
        QCOMPARE(proofs, wanted);
        QVERIFY(wanted.contains(u"Protective earth: touchable metal to the earth pin"_s));
    }

    void anOwnerIsOnePerson()
    {
        const QString book = m_books.fresh(u"sqlite"_s);
        TS_RUN(u"new"_s, book);
        for (const QString &name : {u"Ann Bell"_s, u" ann  bell "_s, u"Bob Reed"_s})
            TS_RUN(u"take-in"_s, book, u"--name"_s, u"Set"_s, u"--category"_s, u"radio"_s, u"--owner"_s, name);
        OpenDesk desk;
        wantOk(desk.open(book));
        QCOMPARE(desk->list<Contact>()->size(), 2);
        const auto units = desk->list<Unit>();
        QCOMPARE(units->at(0).owner, units->at(1).owner);
        QVERIFY(units->at(0).owner != units->at(2).owner);
        QCOMPARE(units->at(0).kind, UnitKind::Owners);
    }
};

QTEST_GUILESS_MAIN(TestCliMainJob)
#include "test_cli_main_job.moc"
