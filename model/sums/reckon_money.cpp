#include "model/sums/reckon_money.h"

#include "model/sums/money/bid.h"
#include "model/sums/money/break_even.h"
#include "model/sums/money/given_money.h"
#include "model/sums/money/margin_tax.h"
#include "model/sums/number_column.h"
#include "model/sums/three_point.h"

#include <QJsonArray>
#include <QRegularExpression>

#include <cmath>

namespace ts {

namespace {

QString key(const char *name)
{
    return QString::fromLatin1(name);
}

SumKey money(const char *name, const char *meaning, bool required = true)
{
    return {key(name), QStringLiteral("money, ") + QString::fromUtf8(meaning), required};
}

Expected<SumOutput> threePointOf(const SumInput &input)
{
    Given given(key("three-point"), input);
    const auto points = ThreePoint::of(given.number(u"low"), given.number(u"likely"), given.number(u"high"));
    if (given.wrong())
        return *given.wrong();
    if (!points)
        return points.trouble();
    return SumOutput{{key("mean"), points->mean()},           {key("sd"), points->deviation()},
                     {key("alpha"), orNull(points->alpha())}, {key("beta"), orNull(points->beta())},
                     {key("p10"), points->quantile(0.1)},     {key("p50"), points->quantile(0.5)},
                     {key("p90"), points->quantile(0.9)}};
}

Expected<SumOutput> marginTaxOf(const SumInput &input)
{
    MoneyGiven given(key("margin-tax"), input);
    const Money bought = given.notNegative(u"bought");
    const Money sold = given.notNegative(u"sold");
    const Rate rate = given.percent(u"rate");
    const bool whole = given.choice(u"scheme", {key("margin"), key("none")}) == 1;
    if (given.wrong())
        return *given.wrong();
    const MarginTax made = whole ? wholePriceTax(sold, rate) : marginTax(bought, sold, rate);
    SumOutput out{{key("margin"), (sold - bought).decimal()},
                  {key("tax"), made.tax.decimal()},
                  {key("sale_less_tax"), made.saleLessTax.decimal()}};
    given.addCurrency(out);
    return out;
}

Expected<SumOutput> breakEvenOf(const SumInput &input)
{
    MoneyGiven given(key("break-even"), input);
    const Money costs = given.notNegative(u"costs");
    const QList<FeeRule> rules = given.rules(u"rules");
    const Money carriage = given.notNegative(u"carriage");
    const Rate tax = given.percent(u"tax");
    if (given.wrong())
        return *given.wrong();
    const auto price = breakEven(costs, rules, carriage, tax);
    if (!price)
        return price.trouble();
    SumOutput out{{key("price"), price->decimal()}};
    given.addCurrency(out);
    return out;
}

/// "1/6", "0.1667", "16.67 %".
void readFraction(MoneyGiven &given, BidTerms &terms)
{
    if (!given.has(u"tax_fraction"))
        return;
    static const QRegularExpression shape(QStringLiteral("^([0-9]{1,6})\\s*/\\s*([0-9]{1,6})$"));
    if (const auto match = shape.match(given.text(u"tax_fraction")); match.hasMatch()) {
        terms.taxNumerator = match.captured(1).toLongLong();
        terms.taxDenominator = match.captured(2).toLongLong();
        return;
    }
    constexpr double parts = 1e9;
    terms.taxNumerator = std::llround(given.chance(u"tax_fraction") * parts);
    terms.taxDenominator = std::llround(parts);
}

Expected<SumOutput> bidOf(const SumInput &input)
{
    MoneyGiven given(key("bid"), input);
    BidTerms terms;
    terms.price = given.notNegative(u"price");
    terms.carriagePaid = given.notNegative(u"carriage_paid");
    terms.rules = given.rules(u"rules");
    terms.carriage = given.notNegative(u"carriage");
    terms.packing = given.notNegative(u"packing");
    terms.returns = given.notNegative(u"returns");
    terms.chance = std::llround(given.chance(u"chance") * 1e6);
    terms.salvage = given.sum(u"salvage");
    terms.costs = given.notNegative(u"costs");
    terms.hours = given.hours(u"hours");
    terms.rate = given.notNegative(u"rate");
    terms.gain = given.sum(u"gain");
    terms.envelopeParts = given.maybeSum(u"parts");
    readFraction(given, terms);
    if (given.wrong())
        return *given.wrong();
    const auto made = highestBid(terms);
    if (!made)
        return made.trouble();
    SumOutput out{{key("bid"), made->bid.decimal()},
                  {key("bid_without_hours"), made->withoutHours.decimal()},
                  {key("back_of_envelope"), made->backOfEnvelope.decimal()},
                  {key("net"), made->net.decimal()},
                  {key("expected"), made->expected.decimal()}};
    given.addCurrency(out);
    return out;
}

Expected<SumOutput> apportionOf(const SumInput &input)
{
    MoneyGiven given(key("apportion"), input);
    const Money total = given.sum(u"total");
    const auto weights = numbersOf(given.text(u"by"));
    if (given.wrong())
        return *given.wrong();
    if (!weights)
        return weights.trouble();
    const auto shares = total.shared(*weights);
    if (!shares)
        return shares.trouble();
    QJsonArray list;
    for (const Money &share : *shares)
        list << share.decimal();
    SumOutput out{{key("shares"), list}};
    given.addCurrency(out);
    return out;
}

} // namespace

Sum threePointSum()
{
    const auto number = [](const char *name, const char *meaning) { return SumKey{key(name), QString::fromUtf8(meaning)}; };
    return {key("three-point"),
            QStringLiteral("an estimate in three points, read as a beta distribution (beta-PERT)"),
            {number("low", "hardly less than this"), number("likely", "most likely"), number("high", "hardly more than this")},
            {number("mean", "in the unit of the points"), number("sd", "standard deviation of the beta distribution itself"),
             number("alpha", "its first shape; null where the three are one"), number("beta", "its second shape"),
             number("p10", "1 in 10 is less"), number("p50", "the middle"), number("p90", "1 in 10 is more")},
            QStringLiteral("Malcolm and others, Operations Research 7, 1959; beta-PERT with lambda 4 (Vose, Risk Analysis)"),
            threePointOf,
            QStringLiteral("mean = (low + 4 likely + high) / 6, sd = √((mean − low)(high − mean) / 7)")};
}

Sum marginTaxSum()
{
    return {key("margin-tax"),
            QStringLiteral("tax on the margin of one second-hand item; not tax advice"),
            {money("bought", "what the seller got; parts and repairs do not belong in it"),
             money("sold", "all that the buyer paid, carriage included"),
             {key("rate"), QStringLiteral("percent of tax"), true, QStringLiteral("%")},
             {key("scheme"),
              QStringLiteral("margin, or none for an item that may not be sold under it: tax on the whole price"),
              false,
              {},
              key("margin"),
              {key("margin"), key("none")}},
             MoneyGiven::currencyKey()},
            {money("margin", "sold less bought"), money("tax", "half up to the minor unit; 0 for a loss"),
             money("sale_less_tax", "what a return shows as the sale"), MoneyGiven::currencyGiven()},
            QStringLiteral("Directive 2006/112/EC, articles 312 to 325"),
            marginTaxOf,
            QStringLiteral("tax = (sold − bought) × rate / (100 + rate)")};
}

Sum breakEvenSum()
{
    return {key("break-even"),
            QStringLiteral("the least item price that covers the costs after the fees"),
            {money("costs", "all of them, your own carriage and packing included"),
             MoneyGiven::rulesKey(),
             money("carriage", "what the buyer pays for it beside the price", false),
             {key("tax"), QStringLiteral("percent charged on top and passed on"), false, QStringLiteral("%")},
             MoneyGiven::currencyKey()},
            {money("price", "item without carriage"), MoneyGiven::currencyGiven()},
            QStringLiteral("definition: least P with P + carriage − fees ≥ costs"),
            breakEvenOf};
}

Sum bidSum()
{
    return {
        key("bid"),
        QStringLiteral("the highest sensible bid: own hours in, without them, and by the back of the envelope"),
        {money("price", "what it fetches when repaired"),
         money("carriage_paid", "by the buyer, beside the price", false),
         MoneyGiven::rulesKey(),
         money("carriage", "your own, out", false),
         money("packing", "material", false),
         money("returns", "allowance for sales that come back", false),
         {key("chance"), QStringLiteral("of full repair, 0 to 1 or a percentage"), false, {}, key("1")},
         money("salvage", "what it is worth where it cannot be repaired", false),
         money("costs", "to come, all but your hours: parts, consumables, carriage in, overhead", false),
         {key("hours"), QStringLiteral("your own, to come: 4, 2.5 h, 150 min"), false, QStringLiteral("h")},
         money("rate", "of an hour of yours", false),
         money("gain", "wanted beside", false),
         {key("tax_fraction"), QStringLiteral("tax within the margin, rate/(1 + rate): 1/6 at 20 %"), false},
         money("parts", "of the costs, those that the back of the envelope counts, with the gain; left out: all costs", false),
         MoneyGiven::currencyKey()},
        {money("bid", "own hours in; below zero: leave it"), money("bid_without_hours", "own hours for nothing"),
         money("back_of_envelope", "price less the first rule's percentage and the costs"), money("net", "what a sale leaves"),
         money("expected", "chance taken in"), MoneyGiven::currencyGiven()},
        QStringLiteral("expected value of the trade's notes; the tax on the margin taken on price and carriage"),
        bidOf,
        QStringLiteral("B = [p(N − t(P + S)) + (1 − p)V − C − G] / (1 − pt)")};
}

Sum apportionSum()
{
    return {key("apportion"),
            QStringLiteral("a sum shared out to the last minor unit"),
            {money("total", "to be shared"),
             {key("by"), QStringLiteral("numbers, comma-separated: values, weights, or the same for all")},
             MoneyGiven::currencyKey()},
            {{key("shares"), QStringLiteral("money, in the order given; they add up to the total")}, MoneyGiven::currencyGiven()},
            QStringLiteral("largest remainder (Hamilton); ties to the earlier"),
            apportionOf};
}

} // namespace ts
