#pragma once

#include "model/records/description.h"
#include "model/values/clock.h"

namespace ts {

/// Makes new records: gives them their id and the time they were recorded.
class Maker {
public:
    explicit Maker(IdMaker &ids) : m_ids(ids) {}

    template <class R>
    [[nodiscard]] R fresh()
    {
        R record;
        record.id = m_ids.next<R>();
        record.at = now();
        return record;
    }
    [[nodiscard]] QDateTime now() const { return m_ids.clock().now(); }

private:
    IdMaker &m_ids;
};

} // namespace ts
