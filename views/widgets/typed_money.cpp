#include "views/widgets/typed_money.h"

#include "views/widgets/locale_text.h"

namespace ts::typed {

Expected<std::optional<Money>> moneyOrNone(const QString &field, const QString &text, const Currency &currency)
{
    if (text.trimmed().isEmpty())
        return std::optional<Money>();
    const auto money = shown::parseMoney(text, currency);
    return money ? Expected<std::optional<Money>>(*money) : inField(field, money.trouble());
}

} // namespace ts::typed
