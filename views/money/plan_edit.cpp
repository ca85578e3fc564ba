#include "views/money/plan_edit.h"

#include "views/widgets/locale_text.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

} // namespace

Expected<int> minutesTyped(const QString &typed)
{
    static const QRegularExpression hoursAndMinutes(QStringLiteral("^(\\d{1,5})\\s*(?:h|:)\\s*(?:(\\d{1,2})\\s*(?:m|min)?)?$"), QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression minutes(QStringLiteral("^(\\d{1,6})\\s*(?:m|min)?$"), QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression decimal(QStringLiteral("^(\\d{1,5}[.,]\\d{1,2})\\s*h$"), QRegularExpression::CaseInsensitiveOption);
    const QString text = typed.trimmed();
    int made = -1;
    if (const auto match = hoursAndMinutes.match(text); match.hasMatch())
        made = match.captured(1).toInt() * 60 + match.captured(2).toInt();
    else if (const auto plain = minutes.match(text); plain.hasMatch())
        made = plain.captured(1).toInt();
    else if (const auto parts = decimal.match(text); parts.hasMatch())
        made = qRound(parts.captured(1).replace(QLatin1Char(','), QLatin1Char('.')).toDouble() * 60);
    if (made < 0 || made > 600'000)
        return Trouble{tr("“%1” is no time").arg(text), {}, tr("write it as 4 h 30 m, 4:30 or 270")};
    return made;
}

Expected<Change> planWith(const UnitFile &file, const BenchFile &bench, CostKey key, const QString &typed, Maker &maker)
{
    const QList<Plan> &plans = file.all<Plan>();
    Plan before;
    if (!plans.isEmpty())
        before = plans.last();
    Plan after = before;
    if (plans.isEmpty()) {
        after = maker.fresh<Plan>();
        after.unit = file.unit.id;
    }
    const bool none = typed.trimmed().isEmpty();
    if (key == CostKey::YourHours) {
        after.minutes.reset();
        if (!none) {
            const auto minutes = minutesTyped(typed);
            if (!minutes)
                return minutes.trouble();
            after.minutes = *minutes;
        }
    } else {
        std::optional<Money> money;
        if (!none) {
            const auto read = shown::parseMoney(typed, bench.currency());
            if (!read)
                return read.trouble();
            if (read->minor() < 0)
                return Trouble{tr("“%1” is below zero").arg(typed.trimmed()), {}, {}};
            money = *read;
        }
        if (key == CostKey::Parts)
            after.parts = money;
        else if (key == CostKey::Resale)
            after.resaleLikely = money;
        else if (key == CostKey::CarriageOut) {
            // The line is carriage and packing together; packing that was planned apart stays, as far as the sum has room for it.
            after.carriageOut = money;
            if (money && after.packing) {
                if (after.packing->minor() <= money->minor())
                    after.carriageOut = *money - *after.packing;
                else
                    after.packing.reset();
            } else if (!money) {
                after.packing.reset();
            }
        } else {
            return Trouble{tr("This line is not planned"), {}, {}};
        }
    }
    Change change(tr("Plan: %1").arg(none ? tr("a figure taken out") : typed.trimmed()));
    return plans.isEmpty() ? change.add(after) : change.edit(before, after);
}

} // namespace ts
