#include "model/exchange/open_repair.h"
#include "tests/testing.h"

using namespace ts;

class TestExchangeCategories : public QObject {
    Q_OBJECT
private Q_SLOTS:
    // The words of the standard's version 0.3.
    void everyCategoryOfOursIsOneOfTheStandards()
    {
        for (const auto &[category, word] : Words<Category>::list) {
            const auto product = openrepair::productCategory(category);
            QCOMPARE(openrepair::categoryNumber(product.name), product.number);
        }
        QCOMPARE(openrepair::categoryNumber(QStringLiteral("Aircon/dehumidifier")), 1);
        QCOMPARE(openrepair::categoryNumber(QStringLiteral("Printer / Scanner")), 25);
        QCOMPARE(openrepair::categoryNumber(QStringLiteral("Iron")), 40);
        QCOMPARE(openrepair::categoryNumber(QStringLiteral("Ironing board")), 0);
    }

    void categories_data()
    {
        QTest::addColumn<QString>("product");
        QTest::addColumn<QString>("partner");
        QTest::addColumn<QString>("problem");
        QTest::addColumn<Category>("category");
        const auto row = [](const char *product, const char *partner, const char *problem, Category category) {
            QTest::addRow("%s | %s | %s", product, partner, problem)
                << QString::fromUtf8(product) << QString::fromUtf8(partner) << QString::fromUtf8(problem) << category;
        };
        row("Hi-Fi separates", "Hi-Fi separates ~ Turntable", "", Category::Turntable);
        row("Hi-Fi separates", "Electrical ~ Record deck", "", Category::Turntable);
        row("Hi-Fi separates", "Hi-Fi separates ~ tourne disque portable", "", Category::Turntable);
        row("Hi-Fi separates", "Hi-Fi separates ~ cassette deck", "", Category::CassetteDeck);
        row("Hi-Fi separates", "Electrical ~ DVD/CD player", "", Category::DiscPlayer);
        row("Hi-Fi separates", "Electrical ~ CD/cassette player", "", Category::Other);
        row("Hi-Fi separates", "Hi-Fi separates ~ amplifier", "", Category::AmplifierReceiver);
        row("Hi-Fi separates", "Hi-Fi separates ~ receiver", "", Category::AmplifierReceiver);
        row("Hi-Fi separates", "Hi-Fi separates ~ guitar amp", "", Category::Other);
        row("Hi-Fi separates", "Hi-Fi separates ~ speaker", "", Category::Loudspeaker);
        row("Hi-Fi separates", "Other ~ speaker cable", "", Category::Other);
        row("Hi-Fi separates", "Electrical ~ tuner", "", Category::Tuner);
        row("Hi-Fi separates", "Electrical ~ valve radio", "", Category::Radio);
        row("Hi-Fi separates", "Electrical Item ~ Hi-Fi Separates", "Amplifier - one channel dead", Category::AmplifierReceiver);
        row("Hi-Fi separates", "Hi-Fi separates", "Crackling noise from one speaker", Category::Other);
        row("Hi-Fi separates", "Hi-Fi separates ~ stereo", "Turntable dead", Category::Other);
        row("Hi-Fi integrated", "Hi-Fi integrated", "CD player dead", Category::Other);
        row("Hi-Fi integrated", "Hi-Fi integrated ~ cassette deck", "", Category::CassetteDeck);
        row("TV and gaming-related accessories", "Electrical ~ DVD player", "", Category::DiscPlayer);
        row("TV and gaming-related accessories", "Electrical ~ DVD remote", "", Category::Other);
        row("TV and gaming-related accessories", "x ~ games console controller", "", Category::Other);
        row("Handheld entertainment device", "x ~ games console", "", Category::GameConsole);
        row("Portable radio", "Electrical ~ CD radio", "", Category::Radio);
        row("Games console", "", "", Category::GameConsole);
        row("Desktop computer", "IT/Phone ~ PC", "", Category::OldComputer);
        row("Musical instrument", "Electrical ~ turntable", "", Category::Other);
        row("Toaster", "Electrical ~ radio", "", Category::Other);
    }
    void categories()
    {
        QFETCH(QString, product);
        QFETCH(QString, partner);
        QFETCH(QString, problem);
        QFETCH(Category, category);
        QCOMPARE(openrepair::category(product, partner, problem), category);
    }
};

QTEST_GUILESS_MAIN(TestExchangeCategories)
#include "test_exchange_categories.moc"
