#include "model/records/named_contact.h"

namespace ts {

Id<Contact> contactNamed(const BenchFile &bench, const QString &name, Change &change, Maker &maker)
{
    const QString wanted = name.simplified();
    if (wanted.isEmpty())
        return {};
    for (const Contact &contact : bench.all<Contact>())
        if (!contact.removed && contact.name.simplified().compare(wanted, Qt::CaseInsensitive) == 0)
            return contact.id;
    Contact fresh = maker.fresh<Contact>();
    fresh.name = wanted;
    change.add(fresh);
    return fresh.id;
}

} // namespace ts
