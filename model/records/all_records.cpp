#include "model/records/all_records.h"

namespace ts {

template <class R>
const Description<R> &description()
{
    static const Description<R> the;
    return the;
}

#define TS_INSTANTIATE(R) template const Description<R> &description<R>();
TS_RECORDS(TS_INSTANTIATE)
#undef TS_INSTANTIATE

const QList<const Kind *> &allKinds()
{
#define TS_LIST(R) &description<R>(),
    static const QList<const Kind *> kinds{TS_RECORDS(TS_LIST)};
#undef TS_LIST
    return kinds;
}

const Kind *kindNamed(QStringView table)
{
    for (const Kind *kind : allKinds())
        if (kind->table() == table)
            return kind;
    return nullptr;
}

} // namespace ts
