#pragma once

#include "model/records/description.h"
#include "model/records/channel.h"
#include "model/records/contact.h"
#include "model/records/lot.h"
#include "model/records/unit.h"

namespace ts {

enum class SpendKind { Purchase, CarriageIn, Part, Consumable, OutsideWork, Overhead, Packing, CarriageOut, SellingFee, Sale, Refund, Deposit, Other };

template <>
struct Words<SpendKind> {
    static constexpr std::array list{std::pair{SpendKind::Purchase, "purchase"},
                                     std::pair{SpendKind::CarriageIn, "carriage_in"},
                                     std::pair{SpendKind::Part, "part"},
                                     std::pair{SpendKind::Consumable, "consumable"},
                                     std::pair{SpendKind::OutsideWork, "outside_work"},
                                     std::pair{SpendKind::Overhead, "overhead"},
                                     std::pair{SpendKind::Packing, "packing"},
                                     std::pair{SpendKind::CarriageOut, "carriage_out"},
                                     std::pair{SpendKind::SellingFee, "selling_fee"},
                                     std::pair{SpendKind::Sale, "sale"},
                                     std::pair{SpendKind::Refund, "refund"},
                                     std::pair{SpendKind::Deposit, "deposit"},
                                     std::pair{SpendKind::Other, "other"}};
};

enum class Flow { Out, In };

template <>
struct Words<Flow> {
    static constexpr std::array list{std::pair{Flow::Out, "out"},
                                     std::pair{Flow::In, "in"}};
};

/// Money out or in, on a unit or on the bench as a whole.
struct Spend : Record<Spend> {
    Id<Unit> unit; ///< null: the bench as a whole
    QString text;
    SpendKind kind = SpendKind::Other;
    Flow flow = Flow::Out;
    std::optional<Money> amount; ///< in the currency paid
    std::optional<Money> inBenchCurrency; ///< at the day's rate, as entered
    QDate paidOn;
    Id<Contact> contact;
    Id<Lot> lot;
    Id<Channel> channel;

    bool operator==(const Spend &) const = default;

    static constexpr auto table = "spend";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("unit", &Spend::unit);
        fields("text", &Spend::text).required().searched();
        fields("kind", &Spend::kind);
        fields("flow", &Spend::flow);
        fields("amount", &Spend::amount).required();
        fields("in_bench_currency", &Spend::inBenchCurrency);
        fields("paid_on", &Spend::paidOn);
        fields("contact", &Spend::contact);
        fields("lot", &Spend::lot);
        fields("channel", &Spend::channel);
    }
};

} // namespace ts
