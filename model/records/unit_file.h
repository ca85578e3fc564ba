#pragma once

#include "model/records/all_records.h"

#include <concepts>
#include <tuple>

namespace ts {

namespace detail {
template <class... Rs>
using Lists = std::tuple<QList<Rs>...>;

/// Lists of those among Rs for which Pick says so.
template <template <class> class Pick, class... Rs>
using PickedLists = decltype(std::tuple_cat(std::declval<std::conditional_t<Pick<Rs>::value, Lists<Rs>, std::tuple<>>>()...));

template <class R>
struct OfUnit {
    static constexpr bool value = requires(R r) { { r.unit } -> std::same_as<Id<Unit> &>; };
};
template <class R>
struct OfNotes {
    static constexpr bool value = requires(R r) { { r.modelNotes } -> std::same_as<Id<ModelNotes> &>; };
};
template <class R>
struct OfBench {
    // What is not a unit's and is small enough to be held whole. Parts, batches, comparables and what is known of one model are asked for when needed.
    static constexpr bool value = !OfUnit<R>::value && !OfNotes<R>::value && !std::is_same_v<R, Unit> && !std::is_same_v<R, Part> && !std::is_same_v<R, Batch>;
};
} // namespace detail

#define TS_LIST_TYPE(R) , R
/// All records of one unit, as plain copies: what every sum, paper and page is made from. Each list is in order of
/// time recorded; removed ones are not in it.
struct UnitFile {
    template <template <class> class Pick, class Ignored, class... Rs>
    using From = detail::PickedLists<Pick, Rs...>;

    Unit unit;
    From<detail::OfUnit, void TS_RECORDS(TS_LIST_TYPE)> lists;

    template <class R>
    [[nodiscard]] const QList<R> &all() const
    {
        return std::get<QList<R>>(lists);
    }
    template <class R>
    [[nodiscard]] QList<R> &all()
    {
        return std::get<QList<R>>(lists);
    }
    /// The record of that id, or nullptr.
    template <class R>
    [[nodiscard]] const R *find(const Id<R> &id) const
    {
        for (const R &record : all<R>())
            if (record.id == id)
                return &record;
        return nullptr;
    }
};

/// What belongs to the bench and not to one unit: settings, meters with their ranges, channels with their rules,
/// contacts, lots, model notes.
struct BenchFile {
    UnitFile::From<detail::OfBench, void TS_RECORDS(TS_LIST_TYPE)> lists;

    template <class R>
    [[nodiscard]] const QList<R> &all() const
    {
        return std::get<QList<R>>(lists);
    }
    template <class R>
    [[nodiscard]] QList<R> &all()
    {
        return std::get<QList<R>>(lists);
    }
    template <class R>
    [[nodiscard]] const R *find(const Id<R> &id) const
    {
        for (const R &record : all<R>())
            if (record.id == id)
                return &record;
        return nullptr;
    }

    /// The value of a setting, or the fallback. Names are those of settings.h.
    [[nodiscard]] QString setting(QStringView name, const QString &fallback = {}) const;
    /// The bench's currency (setting "currency"); GBP where none was set.
    [[nodiscard]] Currency currency() const;
    /// The owner's hourly rate (setting "hourly_rate") in the bench's currency; none where none was set.
    [[nodiscard]] std::optional<Money> hourlyRate() const;
};
#undef TS_LIST_TYPE

} // namespace ts
