#include "model/records/unit_file.h"

#include "model/records/settings.h"

namespace ts {

QString BenchFile::setting(QStringView name, const QString &fallback) const
{
    for (const Setting &each : all<Setting>())
        if (each.name == name)
            return each.value;
    return fallback;
}

Currency BenchFile::currency() const
{
    const auto fallback = Currency::parse(u"GBP");
    const auto set = Currency::parse(setting(settings::currency));
    return set ? *set : *fallback;
}

std::optional<Money> BenchFile::hourlyRate() const
{
    const QString text = setting(settings::hourlyRate);
    if (text.isEmpty())
        return std::nullopt;
    const auto money = Money::parse(text, currency());
    return money ? std::optional(*money) : std::nullopt;
}

} // namespace ts
