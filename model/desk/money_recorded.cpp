#include "model/desk/money_recorded.h"

namespace ts {

Expected<bool> moneyIsRecorded(Desk &desk)
{
    for (const Kind *kind : {static_cast<const Kind *>(&description<Spend>()), static_cast<const Kind *>(&description<Need>()),
                             static_cast<const Kind *>(&description<Batch>()), static_cast<const Kind *>(&description<Plan>())}) {
        const auto count = desk.count(*kind);
        if (!count)
            return count.trouble();
        if (*count > 0)
            return true;
    }
    return false;
}

} // namespace ts
