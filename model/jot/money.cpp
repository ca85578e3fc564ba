#include "model/jot/families.h"
#include "model/jot/phrase.h"
#include "model/jot/price.h"

#include <array>

namespace ts {

namespace {

struct Meaning {
    const char *stem;
    SpendKind kind;
};

/// The first word of a spend that begins with one of these says what it was for.
constexpr std::array meanings{Meaning{"carriage", SpendKind::CarriageIn},   Meaning{"postage", SpendKind::CarriageIn},
                              Meaning{"shipping", SpendKind::CarriageIn},   Meaning{"courier", SpendKind::CarriageIn},
                              Meaning{"freight", SpendKind::CarriageIn},    Meaning{"cleaner", SpendKind::Consumable},
                              Meaning{"solder", SpendKind::Consumable},     Meaning{"alcohol", SpendKind::Consumable},
                              Meaning{"isopropyl", SpendKind::Consumable},  Meaning{"grease", SpendKind::Consumable},
                              Meaning{"oil", SpendKind::Consumable},        Meaning{"flux", SpendKind::Consumable},
                              Meaning{"glue", SpendKind::Consumable},       Meaning{"swab", SpendKind::Consumable},
                              Meaning{"consumable", SpendKind::Consumable}, Meaning{"packing", SpendKind::Packing},
                              Meaning{"packaging", SpendKind::Packing},     Meaning{"carton", SpendKind::Packing},
                              Meaning{"bubble", SpendKind::Packing},        Meaning{"fee", SpendKind::SellingFee},
                              Meaning{"fees", SpendKind::SellingFee},       Meaning{"purchase", SpendKind::Purchase},
                              Meaning{"bought", SpendKind::Purchase},       Meaning{"parts", SpendKind::Part},
                              Meaning{"rent", SpendKind::Overhead},         Meaning{"electricity", SpendKind::Overhead},
                              Meaning{"insurance", SpendKind::Overhead},    Meaning{"rewind", SpendKind::OutsideWork},
                              Meaning{"machining", SpendKind::OutsideWork}};

constexpr std::array takings{Meaning{"refund", SpendKind::Refund}, Meaning{"sale", SpendKind::Sale},
                             Meaning{"sold", SpendKind::Sale}, Meaning{"deposit", SpendKind::Deposit}};

template <size_t N>
SpendKind kindOf(const std::array<Meaning, N> &table, const QString &text)
{
    for (const QString &word : wordsOf(text))
        for (const Meaning &meaning : table) {
            const QLatin1String stem(meaning.stem);
            // A short stem must be the whole word: "fee" is not "feet", "oil" is not "oiler".
            if (stem.size() <= 4 ? word == stem : word.startsWith(stem))
                return meaning.kind;
        }
    return SpendKind::Other;
}

QString kindText(SpendKind kind)
{
    return kind == SpendKind::Other ? QString() : toWord(kind).replace(QLatin1Char('_'), QLatin1Char(' '));
}

/// "= 7.10" behind a foreign amount: what it came to at the bench.
struct Split {
    QString text;
    QString came;
};

Split splitEquals(const QString &text)
{
    const qsizetype at = text.lastIndexOf(QLatin1Char('='));
    return at > 0 ? Split{text.left(at).trimmed(), text.mid(at + 1).trimmed()} : Split{text, {}};
}

Jotted spendOf(const Jotting &jotting, Flow flow, const Taken<Money> &taken, const std::optional<Money> &came)
{
    const Currency bench = jotting.bench.currency();
    Spend spend = jotting.fresh<Spend>();
    spend.text = taken.rest.isEmpty() ? (flow == Flow::Out ? QStringLiteral("payment") : QStringLiteral("money in")) : taken.rest;
    spend.flow = flow;
    spend.kind = flow == Flow::Out ? kindOf(meanings, spend.text) : kindOf(takings, spend.text);
    if (spend.kind == SpendKind::CarriageIn && jotting.file.unit.stage >= Stage::Offered)
        spend.kind = SpendKind::CarriageOut;
    spend.amount = taken.value;
    spend.paidOn = jotting.today();
    QString aside;
    if (taken.value.currency() != bench) {
        spend.inBenchCurrency = came;
        aside = came ? QStringLiteral(" = ") + came->display()
                     : QStringLiteral(" · add \"= AMOUNT\" to say what it came to in ") + bench.code();
    }
    const QString sentence =
        QStringLiteral("%1 %2: %3")
            .arg(flow == Flow::Out ? QStringLiteral("Paid") : QStringLiteral("Got"), taken.value.display(), shown(spend.text));
    const QString kind = kindText(spend.kind);
    return {QStringLiteral("spend"),
            QStringLiteral("spend, ") + toWord(flow),
            sentence + aside + (kind.isEmpty() ? QString() : QStringLiteral(" · ") + kind),
            {},
            Change(sentence).add(spend)};
}

Jotted jotMoney(const Jotting &jotting, Flow flow, Amounts amounts)
{
    const Currency bench = jotting.bench.currency();
    const Split split = splitEquals(jotting.text);
    std::optional<Money> came;
    if (!split.came.isEmpty()) {
        const auto money = Money::parse(split.came, bench);
        if (!money || money->currency() != bench || money->minor() < 0)
            return asNote(jotting, inQuotes(split.came) + QStringLiteral(" is no amount in ") + bench.code());
        came = *money;
    }
    auto taken = takePrice(split.text, bench, amounts);
    if (!taken)
        taken = takeLeadingPrice(split.text, bench, amounts);
    if (!taken)
        return asNote(jotting, flow == Flow::Out ? QStringLiteral("it ends in no amount of money") : QString());
    return spendOf(jotting, flow, *taken, came);
}

} // namespace

Jotted jotPaid(const Jotting &jotting)
{
    return jotMoney(jotting, Flow::Out, Amounts::Any);
}

Jotted jotGot(const Jotting &jotting)
{
    // "got it working at 3" is no money in; a bare number counts only beside a word that means money.
    return jotMoney(jotting, Flow::In, kindOf(takings, jotting.text) == SpendKind::Other ? Amounts::Marked : Amounts::Any);
}

} // namespace ts
