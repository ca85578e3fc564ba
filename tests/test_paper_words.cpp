#include "model/paper/plain_words.h"
#include "model/paper/template_filler.h"

#include <QtTest>

using namespace ts;

/// The words that paper may not carry, and the filling of its templates.
class PaperWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bareClaimsGo_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("printed");
        const auto row = [](const char *typed, const char *printed) {
            QTest::newRow(typed) << QString::fromUtf8(typed) << QString::fromUtf8(printed);
        };
        row("serviced", "");
        row("Fully serviced!", "");
        row("Tested, working", "");
        row("tested and working", "");
        row("Professionally restored.", "");
        row("This deck has been fully overhauled", "");
        row("Fully serviced, new belt", "new belt");
        row("New belt, fully serviced.", "New belt.");
        row("Cleaned heads. Tested. New belt.", "Cleaned heads. New belt.");
        row("serviced\nnew belt", "new belt");
        // What says something stays whole, even with such a word in it.
        row("Serviced in 2005 by the maker's own shop", "Serviced in 2005 by the maker's own shop");
        row("Tested on battery only", "Tested on battery only");
        row("Restoration sheet of the first owner enclosed", "Restoration sheet of the first owner enclosed");
        row("drops 0.5 V, then 1.2 V", "drops 0.5 V, then 1.2 V");
        row("Clutch felt 0,5 mm worn.", "Clutch felt 0,5 mm worn.");
        row("", "");
    }
    void bareClaimsGo()
    {
        QFETCH(QString, typed);
        QFETCH(QString, printed);
        QCOMPARE(withoutBareClaims(typed), printed);
    }

    void plainTextKeepsLettersAndLines()
    {
        QCOMPARE(plainText(QStringLiteral("  a\tb\r\nc\u2028d  ")), QStringLiteral("a b\nc\nd"));
        QCOMPARE(plainText(QString(QStringLiteral("a") + QChar(0) + QChar(7) + QStringLiteral("b"))), QStringLiteral("ab"));
        // UAX #9 controls that reach past the text they stand in.
        QCOMPARE(plainText(QStringLiteral("a\u202Eb\u202C\u2067c\u2069")), QStringLiteral("abc"));
        QCOMPARE(plainText(QStringLiteral("\u05E9\u05DC\u05D5\u05DD \u0645\u0633\u062C\u0644 \u65E5\u672C")),
                 QStringLiteral("\u05E9\u05DC\u05D5\u05DD \u0645\u0633\u062C\u0644 \u65E5\u672C"));
        QCOMPARE(plainText(QString(QChar(0xD800)) + QStringLiteral("x")), QStringLiteral("x")); // half a letter
        QCOMPARE(plainText(QString::fromUcs4(U"\U0001F50A")), QString::fromUcs4(U"\U0001F50A"));
    }

    void onlyRightToLeftIsIsolated()
    {
        QCOMPARE(isolated(QStringLiteral("1180427")), QStringLiteral("1180427"));
        QCOMPARE(isolated(QStringLiteral("\u05D0")), QStringLiteral("\u2068\u05D0\u2069"));
    }

    void templatesEscapeEverything()
    {
        Filling filling;
        filling.put("text", QStringLiteral("<a href=\"x\">'&'\nnext"));
        QCOMPARE(filled(QStringLiteral("<p title=\"[[text]]\">[[text|lines]]</p>"), filling),
                 QStringLiteral("<p title=\"&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;\nnext\">&lt;a "
                                "href=&quot;x&quot;&gt;&#39;&amp;&#39;<br>next</p>"));
    }

    void templateMarksInATextAreText()
    {
        Filling filling;
        filling.put("text", QStringLiteral("[[secret]]<!-- each rows -->[[text]]<!-- end -->"))
            .put("secret", QStringLiteral("no"));
        QCOMPARE(filled(QStringLiteral("[[text]]"), filling),
                 QStringLiteral("[[secret]]&lt;!-- each rows --&gt;[[text]]&lt;!-- end --&gt;"));
    }

    void listsAndConditionsNest()
    {
        Filling filling;
        filling.put("bench", QStringLiteral("B")).put("empty", QString());
        filling.put("rows", QList<Filling>{Filling()
                                               .put("name", QStringLiteral("one"))
                                               .put("parts", {Filling().put("p", QStringLiteral("x")),
                                                              Filling().put("p", QStringLiteral("y"))}),
                                           Filling().put("name", QStringLiteral("two")).put("parts", QList<Filling>())});
        const auto pattern =
            QStringLiteral("<!-- each rows -->[[bench]]:[[name]]<!-- if parts -->(<!-- each parts -->[[p]]<!-- end -->)<!-- end "
                           "--><!-- unless parts -->none<!-- end -->;<!-- end --><!-- if empty -->never<!-- end -->.");
        QCOMPARE(filled(pattern, filling), QStringLiteral("B:one(xy);B:twonone;."));
    }

    void anUnknownNameIsSaid()
    {
        QTest::ignoreMessage(QtWarningMsg, "paper template: nothing is called wrong");
        QCOMPARE(filled(QStringLiteral("a[[wrong]]b"), Filling()), QStringLiteral("ab"));
    }
};

QTEST_GUILESS_MAIN(PaperWords)
#include "test_paper_words.moc"
