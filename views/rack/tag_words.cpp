#include "views/rack/tag_words.h"

#include "model/records/tag_text.h"
#include "model/sums/category_facts.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/stage_names.h"

#include <QCoreApplication>

namespace ts {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

QString symptoms(const RackRow &row)
{
    if (row.openSymptoms > 1)
        return tr("%1, and %2 more").arg(row.symptom, shown::count(row.openSymptoms - 1));
    return row.symptom;
}

// The first that says something.
QString firstOf(const QStringList &texts)
{
    for (const QString &text : texts)
        if (!text.isEmpty())
            return text;
    return {};
}

QString claimOf(const RackRow &row)
{
    if (row.claim.isEmpty())
        return {};
    return (row.kind == UnitKind::Owners ? tr("Owner’s words: “%1”") : tr("Seller’s words: “%1”")).arg(row.claim);
}

QString soakOf(const RackRow &row, const QDateTime &now)
{
    if (!row.soakSince.isValid())
        return {};
    const QString hours = shown::duration(qMax<qint64>(0, row.soakSince.secsTo(now)) / 60);
    return row.soak.isEmpty() ? tr("Soak runs for %1").arg(hours) : tr("Soak %1, %2").arg(hours, row.soak);
}

QString matterOf(const RackRow &row, const QDateTime &now)
{
    const QString next = row.next.isEmpty() ? QString() : tr("Next: %1").arg(row.next);
    switch (row.stage) {
    case Stage::Held:
        if (row.partsHere)
            return tr("Parts are here: %1").arg(row.next.isEmpty() ? row.heldBecause : row.next);
        return row.heldBecause.isEmpty() ? symptoms(row) : tr("Waiting: %1").arg(row.heldBecause);
    case Stage::Proving:
        return firstOf({soakOf(row, now), symptoms(row), next});
    case Stage::Ready:
        if (row.openSymptoms > 0)
            return symptoms(row);
        return (row.sheets > 0 ? tr("Sheet made; photos %1") : tr("No sheet yet; photos %1")).arg(shown::count(row.photos));
    case Stage::Offered:
        if (row.asked)
            return row.channel.isEmpty() ? tr("Asked %1").arg(shown::money(*row.asked)) : tr("Asked %1 on %2").arg(shown::money(*row.asked), row.channel);
        return row.channel.isEmpty() ? symptoms(row) : tr("On %1").arg(row.channel);
    case Stage::Closed: {
        const QString outcome = row.outcome ? shown::outcome(*row.outcome) : QString();
        if (row.outcome == Outcome::Sold && row.soldFor)
            return tr("Sold for %1").arg(shown::money(*row.soldFor));
        return outcome.isEmpty() ? outcome : outcome.at(0).toUpper() + outcome.mid(1);
    }
    case Stage::Scouted:
    case Stage::Inbound:
        return firstOf({next, claimOf(row), symptoms(row)});
    case Stage::Shelved:
    case Stage::Bench:
        break;
    }
    return firstOf({soakOf(row, now), symptoms(row), next, claimOf(row)});
}

QString daysOf(const RackRow &row, const QDateTime &now)
{
    const QDate today = now.toLocalTime().date();
    if (row.stage == Stage::Closed)
        return row.stageSince.isValid() ? shown::day(row.stageSince.toLocalTime().date(), today) : QString();
    const QDate due = row.stage == Stage::Held && row.heldUntil.isValid() ? row.heldUntil : row.due;
    if (due.isValid() && (row.stage == Stage::Held || row.stage == Stage::Shelved))
        return due < today ? tr("was due %1").arg(shown::day(due, today)) : tr("due %1").arg(shown::day(due, today));
    const qint64 days = row.taken.isValid() ? row.taken.toLocalTime().date().daysTo(today) : 0;
    return tr("day %1").arg(shown::count(qMax<qint64>(0, days)));
}

} // namespace

QString TagWords::spoken() const
{
    QStringList parts{tag, name, matter, days};
    for (const Mark &mark : marks)
        parts << mark.word;
    parts << spent << hours;
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

TagWords tagWords(const RackRow &row, const QDateTime &now)
{
    TagWords words{.tag = tagText(row.tag), .name = row.name, .matter = matterOf(row, now), .days = daysOf(row, now), .marks = {}, .spent = {}, .hours = {}};
    const bool closed = row.stage == Stage::Closed;
    Unit unit;
    unit.category = row.category;
    unit.mains = row.mains;
    unit.protectionClass = row.protectionClass;
    if (row.doNotPower && !closed)
        words.marks << TagWords::Mark{tr("do not power"), Tone::Outside};
    // Something is off it: what carries mains can be touched. (What must not be powered at all says more than that.)
    else if (row.loose > 0 && !closed && mainsPowered(unit))
        words.marks << TagWords::Mark{tr("mains caution"), Tone::Outside};
    if (row.loose > 0 && (row.stage == Stage::Ready || row.stage == Stage::Offered || closed))
        words.marks << TagWords::Mark{tr("%1 loose").arg(shown::count(row.loose)), Tone::TooClose};
    if (row.spent.minor() != 0 || row.minutes != 0)
        words.spent = shown::money(row.spent);
    if (row.minutes != 0)
        words.hours = shown::duration(row.minutes);
    return words;
}

} // namespace ts
