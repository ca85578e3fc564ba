#include "model/jot/belonging.h"
#include "model/jot/families.h"
#include "model/jot/likeness.h"
#include "model/jot/part_line.h"

#include <algorithm>

namespace ts {

namespace {

/// "2 × fuse T 315 mA at C3, £0.40 each, was T 630 mA, due 28 Nov".
QString described(const Need &need, QDate today)
{
    QString text = need.quantity > 1 ? QStringLiteral("%1 × ").arg(need.quantity) : QString();
    text += shown(need.text);
    if (!need.position.isEmpty() && need.position != need.text)
        text += QStringLiteral(" at ") + need.position;
    if (need.price)
        text += QStringLiteral(", ") + need.price->display() + (need.quantity > 1 ? QStringLiteral(" each") : QString());
    if (!need.oldValue.isEmpty())
        text += QStringLiteral(", was ") + shown(need.oldValue);
    if (!need.supplier.isEmpty() && need.state == NeedState::Ordered)
        text += QStringLiteral(", from ") + shown(need.supplier);
    if (need.due.isValid() && need.state == NeedState::Ordered)
        text += QStringLiteral(", due ") + dateText(need.due, today);
    return text;
}

QString label(NeedState state)
{
    switch (state) {
    case NeedState::Needed:
        return QStringLiteral("Part needed: ");
    case NeedState::Ordered:
        return QStringLiteral("Part ordered: ");
    case NeedState::Here:
        return QStringLiteral("Part here: ");
    case NeedState::Fitted:
        break;
    }
    return QStringLiteral("Fitted ");
}

bool hasDigit(const QString &text)
{
    return std::any_of(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
}

/// The need that a part line means: the one at its place, else the one named best. A need of fewer words is meant where only
/// figures were added ("belt", then "belt 78x4x0.6"), not where another noun was ("fuse", then "fuse holder").
Named<Need> meant(const QList<Need> &needs, const PartLine &part, NeedState state)
{
    const auto fits = [&](const Need &need) { return need.state == state; };
    if (!part.position.isEmpty())
        if (const Need *there = newest(needs, [&](const Need &need) {
                return need.state == state &&
                       (nameKey(need.position) == nameKey(part.position) || nameKey(need.text) == nameKey(part.position));
            }))
            return {there, Likeness::Same, 0};
    Named<Need> named = bestNamed(
        needs, part.text, &Need::text,
        [&](const Need &need) { return fits(need) && (part.position.isEmpty() || need.position.isEmpty()); }, Likeness::Holds);
    if (named && named.how == Likeness::Holds) {
        const QStringList known = wordsOf(named.record->text);
        for (const QString &word : wordsOf(part.text))
            if (!known.contains(word) && !hasDigit(word) && word.size() > 2)
                return {};
    }
    return named;
}

void fill(Need &need, const PartLine &part)
{
    if (!part.position.isEmpty())
        need.position = part.position;
    if (!part.oldValue.isEmpty())
        need.oldValue = part.oldValue;
    if (!part.supplier.isEmpty())
        need.supplier = part.supplier;
    if (part.due.isValid())
        need.due = part.due;
    if (part.price)
        need.price = part.price;
    // What was typed says more where the need had but its place, or fewer words.
    if (need.text.isEmpty() || (part.text != part.position && (nameKey(need.text) == nameKey(need.position) ||
                                                               likeness(part.text, need.text) == Likeness::Holds)))
        need.text = part.text;
}

Jotted wordsFor(const Need &need, const Jotting &jotting, const QString &aside)
{
    const QString sentence = label(need.state) + described(need, jotting.today());
    return {QStringLiteral("part"), QStringLiteral("part, ") + toWord(need.state), sentence + aside, {}, Change(sentence)};
}

/// The symptom that a part line names, and the line without it. "for SYMPTOM" may be followed by what else such a line ends with:
/// "felt for reel stops 2.50", "felt for reel stops from the lot due 28 Nov".
Belonging aimOf(const Jotting &jotting)
{
    const QString &text = jotting.text;
    Belonging to = plainlyNamed(text, jotting.file);
    const qsizetype at = text.lastIndexOf(QLatin1String(" for "), -1, Qt::CaseInsensitive);
    if (to.text != text || at <= 0)
        return to;
    QList<qsizetype> ends;
    if (const auto price = takePrice(text, jotting.bench.currency(), Amounts::Marked))
        ends << price->rest.size();
    for (const auto word : {QLatin1String(" due "), QLatin1String(" from "), QLatin1String(" was ")})
        ends << text.indexOf(word, at, Qt::CaseInsensitive);
    std::sort(ends.begin(), ends.end(), std::greater<>());
    for (const qsizetype end : std::as_const(ends)) {
        if (end <= at)
            continue;
        const QString upTo = text.left(end).trimmed();
        if (const Belonging named = plainlyNamed(upTo, jotting.file); named.text != upTo)
            return {named.symptom, named.text + QLatin1Char(' ') + text.mid(end).trimmed()};
    }
    return to;
}

Jotted addNeed(const Jotting &jotting, const PartLine &part, NeedState state)
{
    Need need = jotting.fresh<Need>();
    fill(need, part);
    need.quantity = part.quantity.value_or(1);
    need.state = state;
    need.stateSince = need.at;
    const Belonging to = aimOf(jotting);
    need.symptom = to.id();
    Jotted jotted = wordsFor(need, jotting, to.text == jotting.text ? QString() : to.words());
    jotted.change.add(need);
    return jotted;
}

/// Brings a recorded need into a later state; of a larger number only as many as were typed.
Jotted move(const Jotting &jotting, const PartLine &part, const Named<Need> &named, NeedState state)
{
    const Need &before = *named.record;
    Need after = before;
    const int count = part.quantity.value_or(before.quantity);
    QString aside = QStringLiteral(" · was ") + toWord(before.state);
    if (named.rivals)
        aside += QStringLiteral(" · the newest of %1 that read so").arg(named.rivals + 1);
    const bool some = count < before.quantity;
    if (some) {
        const Need fresh = jotting.fresh<Need>();
        after.id = fresh.id;
        after.at = fresh.at;
        after.version = 0;
        aside += QStringLiteral(" · %1 of %2").arg(count).arg(before.quantity);
    }
    fill(after, part);
    if (const Belonging aimed = aimOf(jotting); aimed.text != jotting.text)
        after.symptom = aimed.id();
    after.quantity = count;
    after.state = state;
    after.stateSince = jotting.maker.now();
    Jotted jotted = wordsFor(after, jotting, aside);
    if (some) {
        Need left = before;
        left.quantity -= count;
        jotted.change.edit(before, left).add(after);
    } else {
        jotted.change.edit(before, after);
    }
    return jotted;
}

PartLine partOf(const Jotting &jotting, bool ordering)
{
    return splitPart(aimOf(jotting).text, jotting.bench.currency(), jotting.today(), ordering);
}

} // namespace

Jotted jotNeed(const Jotting &jotting)
{
    if (jotting.text.startsWith(QLatin1String("to "), Qt::CaseInsensitive))
        return asNote(jotting); // "need to look at the tuner" is no part
    return addNeed(jotting, partOf(jotting, false), NeedState::Needed);
}

Jotted jotOrdered(const Jotting &jotting)
{
    const PartLine part = partOf(jotting, true);
    if (const auto named = meant(jotting.file.all<Need>(), part, NeedState::Needed))
        return move(jotting, part, named, NeedState::Ordered);
    return addNeed(jotting, part, NeedState::Ordered);
}

Jotted jotHere(const Jotting &jotting)
{
    const PartLine part = partOf(jotting, false);
    for (const NeedState state : {NeedState::Ordered, NeedState::Needed})
        if (const auto named = meant(jotting.file.all<Need>(), part, state))
            return move(jotting, part, named, NeedState::Here);
    return asNote(jotting, QStringLiteral("no part is awaited that reads ") + inQuotes(part.text));
}

Jotted jotFitted(const Jotting &jotting)
{
    const PartLine part = partOf(jotting, false);
    for (const NeedState state : {NeedState::Here, NeedState::Ordered, NeedState::Needed})
        if (const auto named = meant(jotting.file.all<Need>(), part, state))
            return move(jotting, part, named, NeedState::Fitted);
    return addNeed(jotting, part, NeedState::Fitted);
}

} // namespace ts
