// Where a resale price goes: the parts add up to it, by the definition of a cost sheet; checked with plain additions here.
#include "model/sums/price_parts.h"
#include "tests/testing.h"

#include <QtTest>

using namespace ts;

class TestSumsPriceParts : public QObject {
    Q_OBJECT
    const Currency m_pounds = *Currency::parse(u"GBP");
    Money money(qint64 minor) const { return {minor, m_pounds}; }
    CostSheet sheet(std::optional<Money> resale) const
    {
        CostSheet made;
        made.currency = m_pounds;
        const auto add = [&](CostKey key, std::optional<Money> toDate) { made.lines << CostLine{key, {}, {}, toDate, false}; };
        add(CostKey::BoughtFor, money(3000));
        add(CostKey::CarriageIn, money(840));
        add(CostKey::Parts, money(615));
        add(CostKey::Consumables, money(90));
        add(CostKey::OutsideWork, std::nullopt);
        add(CostKey::Refunds, money(-100));
        add(CostKey::Overhead, money(130));
        add(CostKey::SellingFee, money(1566));
        add(CostKey::CarriageOut, money(1450));
        add(CostKey::Resale, resale);
        return made;
    }

private Q_SLOTS:
    void addUpToThePrice()
    {
        const auto parts = priceParts(sheet(money(12000)));
        QCOMPARE(parts.size(), 5);
        QCOMPARE(parts.at(0), (PricePart{PriceShare::Bought, money(3840)}));
        QCOMPARE(parts.at(1), (PricePart{PriceShare::Work, money(735)}));
        QCOMPARE(parts.at(4), (PricePart{PriceShare::Yours, money(12000 - 3840 - 735 - 1566 - 1450)}));
        Money all = money(0);
        for (const PricePart &part : parts)
            all += part.money;
        QCOMPARE(all, money(12000));
    }

    void sayWhatIsShort()
    {
        const auto parts = priceParts(sheet(money(5000)));
        QCOMPARE(parts.last(), (PricePart{PriceShare::Short, money(3840 + 735 + 1566 + 1450 - 5000)}));
    }

    void areNoneWithoutAPrice() { QVERIFY(priceParts(sheet(std::nullopt)).isEmpty()); }
};

QTEST_APPLESS_MAIN(TestSumsPriceParts)
#include "test_sums_price_parts.moc"
