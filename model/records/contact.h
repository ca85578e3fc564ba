#pragma once

#include "model/records/description.h"

namespace ts {

/// A person or firm: seller, owner, buyer, supplier.
struct Contact : Record<Contact> {
    QString name;
    QString address;
    QString reach; ///< mail, telephone, whatever was given
    QString note;

    bool operator==(const Contact &) const = default;

    static constexpr auto table = "contact";
    template <class Collector>
    static void describe(Collector &fields)
    {
        fields("name", &Contact::name).required().searched();
        fields("address", &Contact::address).searched();
        fields("reach", &Contact::reach).searched();
        fields("note", &Contact::note).searched();
    }
};

} // namespace ts
