#include "model/sums/parts/part_search.h"

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double dust = 1e-9; // 4 mm of a part and 0.004 m of a wish are the same

bool between(double value, const PartCondition &condition)
{
    const double play = dust * std::abs(value);
    return (!condition.low || value >= *condition.low - play) && (!condition.high || value <= *condition.high + play);
}

Match fits(const RatingValue &value, const PartCondition &condition)
{
    if (!condition.word.isEmpty())
        return value.word.contains(condition.word, Qt::CaseInsensitive) ? Match::Yes : Match::No;
    if (!value.amount || value.amount->measure().symbol() != condition.symbol)
        return Match::NotSaid;
    return between(value.amount->base(), condition) ? Match::Yes : Match::No;
}

/// Without a name any attribute of that measure will do.
Match fitsAny(const Rating &rating, const PartCondition &condition)
{
    Match match = Match::NotSaid;
    for (const RatingValue &value : rating.values) {
        const Match one = fits(value, condition);
        if (one == Match::Yes)
            return one;
        if (one == Match::No)
            match = one;
    }
    return match;
}

} // namespace

PartMatch matches(const Part &part, const PartWish &wish)
{
    const ReadRating read = ratingOfPart(part);
    PartMatch match;
    if (wish.kind && !(read.kind && isOfKind(*read.kind, *wish.kind)))
        return match;
    for (const QString &word : wish.words) {
        const auto fields = {part.name, part.kind, part.rating, part.place, part.supplier, part.note};
        if (std::none_of(fields.begin(), fields.end(), [&](const QString &text) { return text.contains(word, Qt::CaseInsensitive); }))
            return match;
    }
    for (const PartCondition &condition : wish.conditions) {
        const RatingValue *value = condition.key.isEmpty() ? nullptr : read.rating.find(condition.key);
        const Match one = condition.key.isEmpty() ? fitsAny(read.rating, condition) : value ? fits(*value, condition) : Match::NotSaid;
        if (one == Match::No)
            return match;
        if (one == Match::NotSaid)
            match.notSaid << (condition.key.isEmpty() ? condition.symbol : condition.key);
    }
    match.match = match.notSaid.isEmpty() ? Match::Yes : Match::NotSaid;
    return match;
}

int leftOf(const Id<Part> &part, const QList<Batch> &batches)
{
    int left = 0;
    for (const Batch &batch : batches)
        if (!batch.removed && batch.part == part)
            left += batch.left;
    return left;
}

QList<ShortPart> belowMinimum(const QList<Part> &parts, const QList<Batch> &batches)
{
    QList<ShortPart> found;
    for (const Part &part : parts) {
        if (part.removed || !part.minimumStock)
            continue;
        const int left = leftOf(part.id, batches);
        if (left < *part.minimumStock)
            found << ShortPart{part, left, *part.minimumStock - left};
    }
    std::stable_sort(found.begin(), found.end(), [](const ShortPart &a, const ShortPart &b) {
        return qint64(a.missing) * *b.part.minimumStock > qint64(b.missing) * *a.part.minimumStock;
    });
    return found;
}

} // namespace ts
