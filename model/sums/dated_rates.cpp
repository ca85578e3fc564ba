#include "model/sums/dated_rates.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

Expected<DatedRates> DatedRates::parse(const QString &text)
{
    static const QRegularExpression form(QStringLiteral(R"(^(.+?)(?:\s+from\s+(\S+))?$)"), QRegularExpression::CaseInsensitiveOption);
    DatedRates made;
    for (const QString &part : text.split(QLatin1Char(';'), Qt::SkipEmptyParts)) {
        const QString piece = part.simplified();
        if (piece.isEmpty())
            continue;
        const auto match = form.match(piece);
        const auto rate = Rate::parse(match.captured(1));
        if (!rate)
            return rate.trouble();
        if (rate->millionths() < 0 || rate->millionths() > 1'000'000)
            return Trouble{QStringLiteral("\"%1\" is no percentage from 0 to 100").arg(match.captured(1)), {}, {}};
        Step step{{}, *rate};
        if (const QString day = match.captured(2); !day.isEmpty()) {
            step.from = QDate::fromString(day, Qt::ISODate);
            if (!step.from.isValid())
                return Trouble{QStringLiteral("\"%1\" is no day").arg(day), {}, QStringLiteral("write 20 from 2011-01-04")};
        }
        for (const Step &each : made.m_steps)
            if (each.from == step.from)
                return Trouble{QStringLiteral("Two percentages are given for the same day"), {}, QStringLiteral("write 17.5; 20 from 2011-01-04")};
        made.m_steps << step;
    }
    std::stable_sort(made.m_steps.begin(), made.m_steps.end(), [](const Step &a, const Step &b) { return a.from < b.from; });
    return made;
}

std::optional<Rate> DatedRates::on(const QDate &day) const
{
    std::optional<Rate> rate;
    for (const Step &step : m_steps)
        if (!step.from.isValid() || step.from <= day)
            rate = step.rate;
    return rate;
}

std::optional<Rate> DatedRates::newest() const
{
    return m_steps.isEmpty() ? std::nullopt : std::optional(m_steps.last().rate);
}

} // namespace ts
