#pragma once

#include "model/records/unit_file.h"
#include "model/sums/dated_rates.h"
#include "model/sums/money/margin_tax.h"

namespace ts {

/// What a year's books are made from.
struct BooksInput {
    QList<Unit> units;
    QList<Spend> spends;
    QList<Need> needs;
    QHash<Id<Contact>, QString> contacts;
    QHash<Id<Channel>, QString> channels;
    Currency currency; ///< the bench's
    DatedRates rates;  ///< on the margin of second-hand goods; empty: not sold under such a scheme
};

/// One movement of money.
struct BookLine {
    QDate day;
    int tag = 0; ///< 0: the bench as a whole
    Id<Unit> unitId;
    Id<Spend> spend;
    QString unit;
    QString text;
    QString with; ///< the contact or the channel
    SpendKind kind = SpendKind::Other;
    Flow flow = Flow::Out;
    Money amount;               ///< in the currency paid
    std::optional<Money> worth; ///< in the bench's currency; none where no rate was entered
};

/// One unit in the stock book: what a seller of second-hand goods keeps of each item (Directive 2006/112/EC, article 324: purchase and
/// sale side by side).
struct StockLine {
    int tag = 0;
    Id<Unit> unit;
    QString name;
    QString serial;
    QString from;
    QDate boughtOn;
    std::optional<Money> bought; ///< what the seller got, and nothing else
    QDate goneOn;                ///< invalid: in stock
    QString how;                 ///< "sold", "for_parts", … empty while in stock
    QString to;                  ///< the channel or the buyer
    std::optional<Money> sold;   ///< all that the buyer paid
    std::optional<Rate> rate;    ///< of the day of the sale
    std::optional<MarginTax> margin; ///< where it was sold under the scheme
    Money costs;                 ///< everything else that was spent on it, refunds taken off
    std::optional<Money> profit; ///< sold less bought, costs and tax on the margin
};

/// The books of one year, everything in the bench's currency but the amounts as they were paid.
struct YearBooks {
    int year = 0; ///< 0: all years
    Currency currency;
    QList<BookLine> lines; ///< by day
    QList<StockLine> stock; ///< in stock at any time of the year, by day bought
    Money out;
    Money in;
    QList<std::pair<SpendKind, Money>> byKind; ///< out less in for costs, in less out for sales and deposits; only what occurs
    int withoutRate = 0;                       ///< foreign sums that are in no total
    Money margin; ///< of what was sold in the year, losses as nothing
    Money tax;
    Money stockAtCost; ///< bought and costs of what was in stock at the year's end
};

/// The books of a year from its records. A unit is in stock from its purchase (else from being recorded) until it was closed; owners'
/// units are in no stock book, their money is among the lines.
[[nodiscard]] YearBooks yearBooks(int year, const BooksInput &input);

} // namespace ts
