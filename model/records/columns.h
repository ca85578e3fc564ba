#pragma once

#include "model/records/codec.h"
#include "model/values/money.h"
#include "model/values/quantity.h"

namespace ts {

template <>
struct Words<Sense> {
    static constexpr std::array list{std::pair{Sense::Plain, "plain"}, std::pair{Sense::About, "about"}, std::pair{Sense::Below, "below"},
                                     std::pair{Sense::Above, "above"}, std::pair{Sense::OverRange, "over_range"}};
};

/// One of several columns that a value stands in.
struct ColumnPart {
    const char *suffix;
    FieldType type;
    bool nullable;
    QVariant (*put)(const void *place);
    bool (*get)(const QVariant &stored, void *place);
};

/// The columns of a type that takes more than one; read in their order, each adding to what the one before left.
template <class T>
struct Columns;

/// Money: minor units, and name_currency.
template <>
struct Columns<std::optional<Money>> {
    static QVariant putMinor(const void *place);
    static bool getMinor(const QVariant &stored, void *place);
    static QVariant putCurrency(const void *place);
    static bool getCurrency(const QVariant &stored, void *place);
    static constexpr std::array list{ColumnPart{"", FieldType::Minor, true, putMinor, getMinor},
                                     ColumnPart{"_currency", FieldType::Text, false, putCurrency, getCurrency}};
};

/// A quantity: the number, name_unit and name_sense.
template <>
struct Columns<std::optional<Quantity>> {
    static QVariant putValue(const void *place);
    static bool getValue(const QVariant &stored, void *place);
    static QVariant putUnit(const void *place);
    static bool getUnit(const QVariant &stored, void *place);
    static QVariant putSense(const void *place);
    static bool getSense(const QVariant &stored, void *place);
    static constexpr std::array list{ColumnPart{"", FieldType::Real, true, putValue, getValue},
                                     ColumnPart{"_unit", FieldType::Text, false, putUnit, getUnit},
                                     ColumnPart{"_sense", FieldType::Word, true, putSense, getSense}};
};

} // namespace ts
