#include "model/sums/resale.h"

#include "model/sums/looks.h"
#include "model/sums/money_settings.h"
#include "model/sums/normal.h"

#include <algorithm>
#include <cmath>

namespace ts {

namespace {

constexpr int enough = 5;               // sold ones that an estimate wants (common practice of the trade)
constexpr double makersLikeness = 0.35; // the same maker and category
constexpr double kindsLikeness = 0.15;  // the same category alone
constexpr double likeEnough = 0.5;      // counts towards the five

/// A model's name without what people write differently: "KD-7", "kd 7".
QString plain(const QString &name)
{
    QString kept;
    for (const QChar c : name.toLower())
        if (c.isLetterOrNumber())
            kept += c;
    return kept;
}

double likenessOf(const Comparable &sale, const Unit &unit)
{
    if (sale.likeness)
        return std::clamp(*sale.likeness, 0.0, 1.0);
    const QString model = plain(sale.makerModel);
    const bool unitsOwn = sale.unit == unit.id;
    const bool maker = plain(sale.maker) == plain(unit.maker);
    if ((unitsOwn && model.isEmpty()) || (!model.isEmpty() && model == plain(unit.makerModel) && (maker || sale.maker.isEmpty())))
        return 1;
    if (sale.category != unit.category)
        return 0;
    return maker && !sale.maker.isEmpty() ? makersLikeness : kindsLikeness;
}

QString counted(int count, const QString &one, const QString &many)
{
    return count == 1 ? QStringLiteral("1 ") + one : QStringLiteral("%1 %2").arg(count).arg(many);
}

class Estimate {
public:
    Estimate(const UnitFile &file, const BenchFile &bench, const ResaleTerms &terms)
        : m_unit(file.unit), m_terms(terms), m_looks(looksGrade(file.unit.looks))
    {
        m_made.currency = bench.currency();
        m_made.working = terms.working;
    }

    void take(const Comparable &sale)
    {
        if (sale.removed || !sale.price)
            return;
        const double likeness = likenessOf(sale, m_unit);
        if (likeness <= 0)
            return;
        if ((sale.working == false) == m_terms.working) {
            ++(sale.working == false ? m_notWorking : m_workingOnes);
            return;
        }
        const auto price = inOurs(sale);
        if (!price) {
            ++m_foreign;
            return;
        }
        Taken taken{adjusted(sale, *price), likeness, 0};
        const qint64 age = sale.soldOn.isValid() ? std::max<qint64>(0, sale.soldOn.daysTo(m_terms.day)) : m_terms.halfLife;
        taken.weight = likeness * std::exp2(-static_cast<double>(age) / m_terms.halfLife);
        taken.counted.why.prepend(ageText(sale, age) + QStringLiteral(", ") + likenessText(likeness));
        if (sale.asking)
            m_made.asking << taken.counted;
        else
            m_taken << taken;
    }

    Resale made()
    {
        keepTheLike();
        const auto byPrice = [](const CountedSale &a, const CountedSale &b) { return a.price < b.price; };
        std::stable_sort(m_taken.begin(), m_taken.end(),
                         [&](const Taken &a, const Taken &b) { return byPrice(a.counted, b.counted); });
        std::stable_sort(m_made.asking.begin(), m_made.asking.end(), byPrice);
        double sum = 0;
        QList<Weighted> values;
        int like = 0;
        for (const Taken &each : m_taken) {
            sum += each.weight;
            like += each.likeness >= likeEnough ? 1 : 0;
            values << Weighted{static_cast<double>(each.counted.price.minor()), each.weight};
        }
        for (const Taken &each : m_taken) {
            m_made.sold << each.counted;
            m_made.sold.last().share = each.weight / sum;
        }
        m_made.count = static_cast<int>(m_taken.size());
        m_made.sample = WeightedSample(values);
        m_made.effective = m_made.sample.effectiveNumber();
        m_made.guessing = like < enough;
        if (m_made.count > 0) {
            m_made.low = at(0.1);
            m_made.quarter = at(0.25);
            m_made.middle = at(0.5);
            m_made.threeQuarters = at(0.75);
            m_made.high = at(0.9);
            // Few sales, or sales by chance all alike, know less of the spread than their own would say: at least a sixth of the
            // middle where it is a guess, a thirtieth otherwise (starting values of ours).
            m_made.width = std::max(m_made.sample.bandwidth(), m_made.sample.quantile(0.5) / (m_made.guessing ? 6 : 30));
            m_made.width = std::max(m_made.width, 1.0);
            addBars();
        }
        say();
        return std::move(m_made);
    }

private:
    struct Taken {
        CountedSale counted;
        double likeness = 0;
        double weight = 0;
    };

    [[nodiscard]] std::optional<Money> inOurs(const Comparable &sale) const
    {
        for (const auto &money : {sale.price, sale.inBenchCurrency})
            if (money && (money->currency().isNull() || money->currency() == m_made.currency))
                return Money(money->minor(), m_made.currency);
        return std::nullopt;
    }

    [[nodiscard]] CountedSale adjusted(const Comparable &sale, Money price) const
    {
        QStringList remarks;
        if (sale.carriageIncluded && m_terms.carriage) {
            price = std::max(Money(0, m_made.currency), price - *m_terms.carriage);
            remarks << QStringLiteral("carriage of %1 taken off").arg(m_terms.carriage->display());
        } else if (sale.carriageIncluded) {
            remarks << QStringLiteral("carriage is in it");
        }
        const auto theirs = looksGrade(sale.condition);
        if (theirs && m_looks && *theirs != *m_looks && m_terms.looksStep > 0) {
            const int better = *theirs - *m_looks;
            const qint64 share = std::clamp<qint64>(better * m_terms.looksStep, -500'000, 500'000);
            price = price.scaled(1'000'000 - share, 1'000'000, Rounding::HalfUp);
            remarks << QStringLiteral("looks %1 %2: %3 % %4")
                           .arg(counted(std::abs(better), QStringLiteral("grade"), QStringLiteral("grades")),
                                better > 0 ? QStringLiteral("better") : QStringLiteral("worse"), Rate(std::abs(share)).percent(),
                                better > 0 ? QStringLiteral("off") : QStringLiteral("on"));
        }
        CountedSale made{sale.id, sale.soldOn, *sale.price, price, 0, {}};
        if (!remarks.isEmpty())
            made.why = QStringLiteral("; ") + remarks.join(QStringLiteral("; "));
        return made;
    }

    [[nodiscard]] static QString ageText(const Comparable &sale, qint64 age)
    {
        return sale.soldOn.isValid() ? counted(static_cast<int>(age), QStringLiteral("day old"), QStringLiteral("days old"))
                                     : QStringLiteral("no date");
    }
    [[nodiscard]] static QString likenessText(double likeness)
    {
        if (likeness >= 1)
            return QStringLiteral("same model");
        return QStringLiteral("counts %1 % for likeness").arg(std::lround(likeness * 100));
    }

    /// Where five are alike, those that are not would only blur them.
    void keepTheLike()
    {
        int like = 0;
        for (const Taken &each : m_taken)
            like += each.likeness >= likeEnough ? 1 : 0;
        if (like < enough)
            return;
        m_taken.removeIf([](const Taken &each) { return each.likeness < likeEnough; });
    }

    [[nodiscard]] Money at(double p) const { return {std::llround(m_made.sample.quantile(p)), m_made.currency}; }

    void addBars()
    {
        const auto &values = m_made.sample.values();
        const double from = std::max(0.0, values.first().value - m_made.width);
        const double to = values.last().value + m_made.width;
        // The least round width (1, 2 or 5 times a power of ten) that makes no more than ten bars.
        double step = 1;
        for (int turn = 0; (to - from) / step > 10; ++turn)
            step *= turn % 3 == 1 ? 2.5 : 2;
        for (double at = std::floor(from / step) * step; at < to; at += step) {
            double share = 0;
            for (const Weighted &each : values)
                share += each.weight *
                         (normalCdf((at + step - each.value) / m_made.width) - normalCdf((at - each.value) / m_made.width));
            m_made.bars << PriceBar{Money(std::llround(at), m_made.currency), Money(std::llround(at + step), m_made.currency),
                                    share};
        }
    }

    void say()
    {
        const auto leave = [this](int count, const QString &one, const QString &many) {
            if (count > 0)
                m_made.leftOut << counted(count, one, many);
        };
        leave(static_cast<int>(m_made.asking.size()), QStringLiteral("asking price"), QStringLiteral("asking prices"));
        leave(m_notWorking, QStringLiteral("sold as not working"), QStringLiteral("sold as not working"));
        leave(m_workingOnes, QStringLiteral("sold as working"), QStringLiteral("sold as working"));
        leave(m_foreign, QStringLiteral("sold in another currency"), QStringLiteral("sold in another currency"));

        const QString sales = counted(m_made.count, QStringLiteral("sold comparable"), QStringLiteral("sold comparables"));
        if (m_made.count > 0)
            m_made.from = m_made.count == 1 ? sales : QStringLiteral("median of ") + sales;
        m_made.heading = m_made.count == 0
                             ? QStringLiteral("No comparable sales")
                             : counted(m_made.count, QStringLiteral("comparable sale"), QStringLiteral("comparable sales")) +
                                   (m_made.count > 1 ? QStringLiteral(", newest counts most") : QString());
        QStringList sentences;
        if (m_made.guessing)
            sentences << QStringLiteral("This is a guess: %1, and at least five of the same or a like model are wanted.")
                             .arg(m_made.count == 0 ? QStringLiteral("there are no sold comparables")
                                                    : QStringLiteral("it rests on ") + sales);
        if (m_made.count > 1)
            sentences << QStringLiteral("A sale counts half after %1 days; these tell as much as %2 of equal weight.")
                             .arg(m_terms.halfLife)
                             .arg(m_made.effective, 0, 'f', 1);
        if (m_made.count > 0)
            sentences << QStringLiteral("The figures are weighted quantiles of type 8.");
        if (!m_made.leftOut.isEmpty())
            sentences << QStringLiteral("Not counted: %1.").arg(m_made.leftOut.join(QStringLiteral(", ")));
        m_made.why = sentences.join(QLatin1Char(' '));
    }

    const Unit &m_unit;
    const ResaleTerms &m_terms;
    std::optional<int> m_looks;
    Resale m_made;
    QList<Taken> m_taken;
    int m_notWorking = 0;
    int m_workingOnes = 0;
    int m_foreign = 0;
};

} // namespace

double Resale::density(double minor) const
{
    return sample.isEmpty() || width <= 0 ? 0 : sample.density(minor, width);
}

ResaleTerms ResaleTerms::of(const UnitFile &file, const BenchFile &bench, const QDate &day)
{
    ResaleTerms terms;
    terms.day = day;
    const MoneySettings set = MoneySettings::of(bench);
    terms.halfLife = set.resaleHalfLife;
    terms.looksStep = set.looksStep.millionths();
    for (const Plan &plan : file.all<Plan>())
        if (!plan.removed && plan.carriageOut && plan.carriageOut->currency() == bench.currency())
            terms.carriage = plan.carriageOut;
    return terms;
}

Resale resaleOf(const UnitFile &file, const BenchFile &bench, const QList<Comparable> &others, const ResaleTerms &terms)
{
    Estimate estimate(file, bench, terms);
    for (const Comparable &sale : file.all<Comparable>())
        estimate.take(sale);
    for (const Comparable &sale : others)
        if (!file.find(sale.id))
            estimate.take(sale);
    return estimate.made();
}

} // namespace ts
