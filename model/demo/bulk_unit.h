#pragma once

#include "model/demo/bulk_words.h"
#include "model/records/all_records.h"
#include "model/records/change.h"
#include "model/records/maker.h"

namespace ts {

/// What the units of a bulk workbook share.
struct BulkBench {
    QList<Meter> meters;
    QList<Channel> channels;
    QList<Contact> people;
    QList<Lot> lots;
    QList<Part> parts;
    QStringList photos; ///< SHA-256 of pictures that are kept
    QString paper;      ///< SHA-256 of a paper that is kept
    Currency currency;
};

/// Writes one made-up unit with all that belongs to it into a change: how much depends on how far its stage is.
class BulkUnit {
public:
    BulkUnit(const BulkBench &bench, Maker maker, SetClock &clock, Dice &dice) : m_bench(bench), m_maker(maker), m_clock(clock), m_dice(dice), m_words(dice) {}

    /// `start` is when it was first seen; nothing is recorded after `today`.
    void write(Change &change, const QDateTime &start, const QDateTime &today);

private:
    template <class R>
    R fresh()
    {
        step();
        R record = m_maker.fresh<R>();
        if constexpr (requires { record.unit; })
            record.unit = m_unit.id;
        return record;
    }
    void step();
    void takeIn();
    void moves();
    void findFaults();
    void measure();
    void work();
    void buyParts();
    void money();
    void proveAndSell();
    [[nodiscard]] Money pounds(double low, double high);
    template <class R>
    const R &any(const QList<R> &list)
    {
        return list.at(m_dice.whole(0, static_cast<int>(list.size()) - 1));
    }

    const BulkBench &m_bench;
    Maker m_maker;
    SetClock &m_clock;
    Dice &m_dice;
    BulkWords m_words;
    Change *m_change = nullptr;
    Unit m_unit;
    QList<Symptom> m_symptoms;
    QDateTime m_today;
};

} // namespace ts
