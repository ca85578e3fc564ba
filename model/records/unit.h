#pragma once

#include "model/records/description.h"
#include "model/records/channel.h"
#include "model/records/contact.h"
#include "model/records/lot.h"

namespace ts {

enum class Category { DiscPlayer, CassetteDeck, Turntable, AmplifierReceiver, Tuner, ReelRecorder, Loudspeaker, Radio, GameConsole, OldComputer, TestGear, Other };

template <>
struct Words<Category> {
    static constexpr std::array list{std::pair{Category::DiscPlayer, "disc_player"},
                                     std::pair{Category::CassetteDeck, "cassette_deck"},
                                     std::pair{Category::Turntable, "turntable"},
                                     std::pair{Category::AmplifierReceiver, "amplifier_receiver"},
                                     std::pair{Category::Tuner, "tuner"},
                                     std::pair{Category::ReelRecorder, "reel_recorder"},
                                     std::pair{Category::Loudspeaker, "loudspeaker"},
                                     std::pair{Category::Radio, "radio"},
                                     std::pair{Category::GameConsole, "game_console"},
                                     std::pair{Category::OldComputer, "old_computer"},
                                     std::pair{Category::TestGear, "test_gear"},
                                     std::pair{Category::Other, "other"}};
};

enum class UnitKind { ToSell, Owners, ToKeep };

template <>
struct Words<UnitKind> {
    static constexpr std::array list{std::pair{UnitKind::ToSell, "to_sell"},
                                     std::pair{UnitKind::Owners, "owners"},
                                     std::pair{UnitKind::ToKeep, "to_keep"}};
};

enum class Stage { Scouted, Inbound, Shelved, Bench, Held, Proving, Ready, Offered, Closed };

template <>
struct Words<Stage> {
    static constexpr std::array list{std::pair{Stage::Scouted, "scouted"},
                                     std::pair{Stage::Inbound, "inbound"},
                                     std::pair{Stage::Shelved, "shelved"},
                                     std::pair{Stage::Bench, "bench"},
                                     std::pair{Stage::Held, "held"},
                                     std::pair{Stage::Proving, "proving"},
                                     std::pair{Stage::Ready, "ready"},
                                     std::pair{Stage::Offered, "offered"},
                                     std::pair{Stage::Closed, "closed"}};
};

enum class Outcome { Sold, ReturnedToOwner, Kept, BrokenForParts, Scrapped };

template <>
struct Words<Outcome> {
    static constexpr std::array list{std::pair{Outcome::Sold, "sold"},
                                     std::pair{Outcome::ReturnedToOwner, "returned_to_owner"},
                                     std::pair{Outcome::Kept, "kept"},
                                     std::pair{Outcome::BrokenForParts, "broken_for_parts"},
                                     std::pair{Outcome::Scrapped, "scrapped"}};
};

enum class ProtectionClass { I, II, III };

template <>
struct Words<ProtectionClass> {
    static constexpr std::array list{std::pair{ProtectionClass::I, "I"},
                                     std::pair{ProtectionClass::II, "II"},
                                     std::pair{ProtectionClass::III, "III"}};
};

/// One piece of equipment.
struct Unit : Record<Unit> {
    int tag = 0; ///< four digits, never used again; 0 asks the store for the next
    QString name; ///< as it is called: "Pellworth KD-7 cassette deck"
    QString maker;
    QString makerModel;
    Category category = Category::Other;
    UnitKind kind = UnitKind::ToSell;
    Stage stage = Stage::Shelved;
    QDateTime stageSince;
    QString heldBecause;
    QDate heldUntil;
    std::optional<Outcome> outcome; ///< set when Closed
    QString serial;
    std::optional<int> year; ///< made in, or about
    QString yearBasis; ///< how the year is known
    QString mains; ///< as on the plate: "230 V 50 Hz"
    std::optional<ProtectionClass> protectionClass; ///< IEC 61140
    QString claim; ///< what the seller or owner says is wrong
    QString place; ///< where it stands
    QString accessories; ///< what came with it, what is missing
    QString looks; ///< condition grade, looks alone
    QString function; ///< condition grade, function alone
    QString earlierWork; ///< evidence that somebody has been in
    Id<Contact> owner; ///< whose it is, for an owner's unit
    Id<Lot> lot;
    QString sourceId; ///< its id where it was imported from
    Id<Channel> channel; ///< where it is, or was last, offered
    std::optional<Money> asked; ///< the price asked there

    bool operator==(const Unit &) const = default;

    static constexpr auto table = "unit";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("tag", &Unit::tag).searched();
        fields("name", &Unit::name).required().searched();
        fields("maker", &Unit::maker).searched();
        fields("maker_model", &Unit::makerModel).searched();
        fields("category", &Unit::category);
        fields("kind", &Unit::kind);
        fields("stage", &Unit::stage);
        fields("stage_since", &Unit::stageSince);
        fields("held_because", &Unit::heldBecause).searched();
        fields("held_until", &Unit::heldUntil);
        fields("outcome", &Unit::outcome);
        fields("serial", &Unit::serial).searched();
        fields("year", &Unit::year);
        fields("year_basis", &Unit::yearBasis);
        fields("mains", &Unit::mains);
        fields("protection_class", &Unit::protectionClass);
        fields("claim", &Unit::claim).searched();
        fields("place", &Unit::place).searched();
        fields("accessories", &Unit::accessories).searched();
        fields("looks", &Unit::looks);
        fields("function", &Unit::function);
        fields("earlier_work", &Unit::earlierWork).searched();
        fields("owner", &Unit::owner);
        fields("lot", &Unit::lot);
        fields("source_id", &Unit::sourceId).searched();
        fields("channel", &Unit::channel);
        fields("asked", &Unit::asked);
    }
};

} // namespace ts
