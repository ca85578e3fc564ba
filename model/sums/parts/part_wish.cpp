// How a line that looks for parts is read.
#include "model/sums/parts/part_search.h"

#include "model/values/limit.h"
#include "model/values/quoted.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double sameWithin = 0.01; // of a plain amount

/// The names that an attribute can be asked for by, longest first, as one alternative of a pattern.
QString namesPattern(const PartKind *kind)
{
    QStringList names;
    for (const PartKind &each : kind ? QList<PartKind>{*kind} : partKinds())
        for (const RatingField &field : each.fields)
            if (!field.isWord())
                names << field.key << field.shorter;
    names.removeDuplicates();
    std::sort(names.begin(), names.end(), [](const QString &a, const QString &b) { return a.size() > b.size(); });
    for (QString &name : names)
        name = QRegularExpression::escape(name);
    return names.join(u'|');
}

const RatingField *fieldNamed(const PartKind *kind, const QString &name)
{
    if (kind)
        return kind->field(name);
    for (const PartKind &each : partKinds())
        if (const RatingField *field = each.field(name); field && !field->isWord())
            return field;
    return nullptr;
}

/// Without a name: the field of the kind whose measure it is, the first of them; of a bare number the first of all.
const RatingField *fieldMeasuredIn(const PartKind &kind, const Measure &measure)
{
    for (const RatingField &field : kind.fields) {
        const auto own = field.isWord() ? Expected<Measure>(Trouble{}) : Measure::parse(field.measure);
        if (own && (measure.isNone() || own->comparableWith(measure)))
            return &field;
    }
    return nullptr;
}

QString boundsText(const PartCondition &condition, const Limit &limit)
{
    return (condition.key.isEmpty() ? QString() : condition.key + u' ') + limit.display();
}

Expected<PartCondition> conditionOf(const PartKind *kind, const QString &name, const QString &bounds, bool signAlone)
{
    const RatingField *field = name.isEmpty() ? nullptr : fieldNamed(kind, name);
    const auto expected = field ? Measure::parse(field->measure) : Expected<Measure>(Measure());
    auto limit = Limit::parse(bounds, expected ? *expected : Measure());
    if (!limit)
        return limit.trouble();
    if (!field && kind && (!limit->measure().isNone() || !signAlone)) {
        field = fieldMeasuredIn(*kind, limit->measure());
        if (!field)
            return Trouble{u"A %1 has nothing that is given in %2"_s.arg(kind->name, limit->measure().symbol()), {}, {}};
        if (limit->measure().isNone())
            limit = Limit::parse(bounds, *Measure::parse(field->measure));
    }
    if (!limit)
        return limit.trouble();
    if (limit->measure().isNone())
        return Trouble{u"%1 does not say of what"_s.arg(quoted(bounds)), {}, u"write it as in d<=10mm or >=63V"_s};
    if (field)
        if (const auto own = Measure::parse(field->measure); own && !own->comparableWith(limit->measure()))
            return Trouble{u"%1 is no %2"_s.arg(quoted(bounds), field->key), u"it is not given in %1"_s.arg(own->symbol()), {}};
    PartCondition condition{field ? field->key : QString(), {}, {}, limit->measure().symbol(), {}, {}};
    const auto base = [&](std::optional<double> bound) {
        return bound ? std::optional(Quantity(*bound, limit->measure()).base()) : std::nullopt;
    };
    condition.low = base(limit->low());
    condition.high = base(limit->high());
    condition.shown = boundsText(condition, *limit);
    return condition;
}

PartCondition sameAs(const QString &key, const Quantity &amount)
{
    return {key, amount.base() * (1 - sameWithin), amount.base() * (1 + sameWithin), amount.measure().symbol(), {}, (key + u' ' + amount.text()).trimmed()};
}

/// Takes every span that the pattern finds out of the line as a condition: its first capture is a name, its second the bounds.
Expected<void> takeSpans(QString &line, const QRegularExpression &pattern, PartWish &wish, bool signAlone)
{
    for (auto found = pattern.match(line); found.hasMatch(); found = pattern.match(line)) {
        const auto condition = conditionOf(wish.kind, found.captured(1).trimmed(), found.captured(2).trimmed(), signAlone);
        if (!condition)
            return condition.trouble();
        wish.conditions << *condition;
        line.replace(found.capturedStart(), found.capturedLength(), u" "_s);
    }
    return {};
}

/// "78x4x0.6 ± 2 mm": the first of the size may be off by so much.
Expected<void> takeSize(QString &line, PartWish &wish)
{
    if (!wish.kind || wish.kind->sizes.isEmpty())
        return {};
    static const QRegularExpression size(u"([0-9.,]+)(\\s*[x×*][0-9.,x×*\\s]*[0-9])\\s*(?:mm)?\\s*±\\s*([0-9.,]+)\\s*(?:mm)?(?!\\w)"_s);
    const auto found = size.match(line);
    if (!found.hasMatch())
        return {};
    const auto condition = conditionOf(wish.kind, wish.kind->sizes.first(), u"%1 mm ± %2 mm"_s.arg(found.captured(1), found.captured(3)), false);
    if (!condition)
        return condition.trouble();
    wish.conditions << *condition;
    line.replace(found.capturedStart(), found.capturedLength(), u' ' + found.captured(1) + found.captured(2) + u' ');
    return {};
}

void takeRest(const QString &line, PartWish &wish)
{
    ReadRating read = ratingInText(line, wish.kind);
    const auto asked = [&](const QString &key) {
        return std::any_of(wish.conditions.begin(), wish.conditions.end(), [&](const PartCondition &each) { return each.key == key; });
    };
    for (const RatingValue &value : read.rating.values) {
        if (asked(value.key))
            continue;
        if (value.amount)
            wish.conditions << sameAs(value.key, *value.amount);
        else
            wish.conditions << PartCondition{value.key, {}, {}, {}, value.word, value.key + u' ' + value.word};
    }
    for (qsizetype i = 0; i < read.rest.size(); ++i) {
        const QString &word = read.rest.at(i);
        const auto joined = i + 1 < read.rest.size() && parseNumber(word) ? Quantity::parse(word + u' ' + read.rest.at(i + 1)) : Quantity::parse(word);
        const bool isAmount = !wish.kind && joined && !joined->measure().isNone() && joined->measure().symbol().size() <= 2;
        if (isAmount) {
            wish.conditions << sameAs({}, *joined);
            i += parseNumber(word) ? 1 : 0;
        } else {
            wish.words << word;
        }
    }
}

} // namespace

QString PartWish::text() const
{
    QStringList parts;
    if (kind)
        parts << kind->name;
    for (const PartCondition &condition : conditions)
        parts << condition.shown;
    for (const QString &word : words)
        parts << quoted(word);
    return parts.join(u" · "_s);
}

Expected<PartWish> readPartWish(const QString &typed)
{
    QString line = typed.simplified();
    for (const auto &[written, sign] : {std::pair{u"at least "_s, u">="_s}, std::pair{u"at most "_s, u"<="_s}, std::pair{u"≥"_s, u">="_s}, std::pair{u"≤"_s, u"<="_s},
                                        std::pair{u"+/-"_s, u"±"_s}, std::pair{u"+-"_s, u"±"_s}})
        line.replace(written, sign, Qt::CaseInsensitive);
    PartWish wish;
    wish.kind = partKindIn(line);
    const QString name = u"(?:(?<![\\w])((?:%1))\\s*)?"_s.arg(namesPattern(wish.kind));
    const auto number = u"[0-9][0-9.,]*?"_s;
    const auto unit = u"(?:\\s*(?:[pnuµmkMc]?(?:F|V|A|W|Ω|[oO]hm|R|Ah|m)|%|°C|h|[pnuµkM])(?![\\w]))?"_s;
    const auto pattern = [](const QString &text) { return QRegularExpression(text, QRegularExpression::UseUnicodePropertiesOption); };
    if (auto taken = takeSize(line, wish); !taken)
        return taken.trouble();
    if (auto taken = takeSpans(line, pattern(name + u"("_s + number + unit + u"\\s*±\\s*"_s + number + unit + u")(?![\\w.,])"_s), wish, false); !taken)
        return taken.trouble();
    if (auto taken = takeSpans(line, pattern(name + u"("_s + number + unit + u"\\s*\\.\\.\\s*"_s + number + unit + u")(?![\\w.,])"_s), wish, false); !taken)
        return taken.trouble();
    if (auto taken = takeSpans(line, pattern(name + u"([<>]=?\\s*"_s + number + unit + u")(?![\\w.,])"_s), wish, true); !taken)
        return taken.trouble();
    static const QRegularExpression sign(u"[<>±]\\s*\\S*"_s);
    if (const auto left = sign.match(line); left.hasMatch())
        return Trouble{u"%1 cannot be read"_s.arg(quoted(left.captured())), {}, u"write it as in d<=10mm, >=63V or 78mm ± 2mm"_s};
    // "h=11mm": a name and an equals sign say no more than the amount after the name
    static const QRegularExpression equals(u"(\\S*)\\s*=\\s*"_s);
    for (auto found = equals.match(line); found.hasMatch(); found = equals.match(line)) {
        const RatingField *field = fieldNamed(wish.kind, found.captured(1));
        const QString rest = line.mid(found.capturedEnd());
        const QString amountText = rest.section(u' ', 0, 0);
        const auto value = field ? typedRating(*field, amountText) : Expected<RatingValue>(Trouble{u"%1 is no attribute"_s.arg(quoted(found.captured(1))), {}, {}});
        if (!value)
            return value.trouble();
        if (value->amount)
            wish.conditions << sameAs(value->key, *value->amount);
        else
            wish.conditions << PartCondition{value->key, {}, {}, {}, value->word, value->key + u' ' + value->word};
        line.replace(found.capturedStart(), found.capturedLength() + amountText.size(), u" "_s);
    }
    takeRest(line, wish);
    return wish;
}

} // namespace ts
