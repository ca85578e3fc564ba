// The screens in another language, and plurals in English: what translators find is what the screens ask for.
#include "tests/testing.h"
#include "views/settings/language.h"
#include "views/unit/unit_pane.h"
#include "views/widgets/locale_text.h"

#include <QFile>
#include <QXmlStreamReader>
#include <QtTest>

using namespace ts;

class TestViewLanguage : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { QLocale::setDefault(QLocale::c()); }

    // A text that was added or changed since the translation was made is named here; tests/translations gathers it.
    void everyTextIsTranslated_data()
    {
        QTest::addColumn<QString>("file");
        QTest::newRow("German") << QStringLiteral(SOURCE_DIR "/resources/i18n/turnscrew_de.ts");
        QTest::newRow("English plurals") << QStringLiteral(SOURCE_DIR "/resources/i18n/turnscrew_en.ts");
    }
    void everyTextIsTranslated()
    {
        QFETCH(QString, file);
        QFile source(file);
        QVERIFY(source.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&source);
        QString text;
        int finished = 0;
        while (!xml.atEnd()) {
            if (xml.readNext() != QXmlStreamReader::StartElement)
                continue;
            if (xml.name() == QLatin1String("source"))
                text = xml.readElementText();
            else if (xml.name() == QLatin1String("translation")) {
                QVERIFY2(!xml.attributes().hasAttribute(QStringLiteral("type")), qPrintable(text));
                ++finished;
            }
        }
        QVERIFY2(!xml.hasError(), qPrintable(xml.errorString()));
        QVERIFY(finished > 0);
    }

    void germanIsSpokenWhereItIsChosen()
    {
        const QString english = UnitPane::pageName(PageKey::Money);
        QCOMPARE(english, QStringLiteral("Money"));
        {
            const Language german(QStringLiteral("de"));
            QCOMPARE(UnitPane::pageName(PageKey::Money), QStringLiteral("Geld"));
            QVERIFY(shown::percent(0.5).startsWith(QLatin1String("50"))); // a free function's text is found, too
            QCOMPARE(QLocale().language(), QLocale::German);
        }
        QCOMPARE(UnitPane::pageName(PageKey::Money), english);
    }
};

QTEST_MAIN(TestViewLanguage)
#include "test_view_language.moc"
