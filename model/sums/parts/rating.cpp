#include "model/sums/parts/rating.h"

#include "model/values/quoted.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

std::optional<Measure> measureOf(const RatingField &field)
{
    const auto measure = field.isWord() ? Expected<Measure>(Trouble{}) : Measure::parse(field.measure);
    return measure ? std::optional(*measure) : std::nullopt;
}

/// "275 V AC": the amount that it begins with, and what stands after it.
RatingValue valueOf(const QString &key, const QString &text)
{
    if (const auto whole = Quantity::parse(text); whole && !whole->measure().isNone())
        return {key, *whole, {}};
    static const QRegularExpression parts(u"^(\\S+)(?:\\s+(\\S+))?(?:\\s+(.*))?$"_s);
    const auto match = parts.match(text);
    const QString second = match.captured(2);
    if (const auto one = Quantity::parse(match.captured(1)); one && !one->measure().isNone())
        return {key, *one, QString(second + u' ' + match.captured(3)).trimmed()};
    if (const auto two = Quantity::parse(match.captured(1) + u' ' + second); !second.isEmpty() && two && !two->measure().isNone())
        return {key, *two, match.captured(3)};
    return {key, std::nullopt, text};
}

/// "5 x 20 mm", "78x4x0.6": the fields that the kind names by a size, in millimetres.
bool putSizes(Rating &rating, const PartKind &kind, const QString &text)
{
    static const QRegularExpression apart(u"\\s*[x×*]\\s*"_s);
    QString figures = text.trimmed();
    if (figures.endsWith(u"mm"_s, Qt::CaseInsensitive))
        figures.chop(2);
    QStringList each = figures.trimmed().split(apart);
    if (each.size() < 2 || each.size() > kind.sizes.size())
        return false;
    QList<double> numbers;
    for (const QString &one : each) {
        const auto number = parseNumber(one);
        if (!number || *number <= 0)
            return false;
        numbers << *number;
    }
    for (qsizetype i = 0; i < numbers.size(); ++i)
        if (!rating.find(kind.sizes.at(i)))
            rating.put({kind.sizes.at(i), Quantity(numbers.at(i), *Measure::parse(u"mm")), {}});
    return true;
}

/// The longest key of the kind that a line begins with, else its first word.
QString keyOf(const QString &line, const PartKind *kind)
{
    QString key = line.section(u' ', 0, 0);
    if (kind)
        for (const RatingField &field : kind->fields)
            if (line.startsWith(field.key + u' ', Qt::CaseInsensitive) && field.key.size() >= key.size())
                key = field.key;
    return key;
}

/// The first field of the kind that is given in this measure and is not said yet.
const RatingField *openField(const PartKind &kind, const Rating &rating, const Measure &measure)
{
    for (const RatingField &field : kind.fields)
        if (const auto own = measureOf(field); own && own->comparableWith(measure) && !rating.find(field.key))
            return &field;
    return nullptr;
}

/// A word that one of the kind's fields knows: "X2", "axial"; single letters as they are written.
bool putWord(Rating &rating, const PartKind &kind, const QString &word)
{
    for (const RatingField &field : kind.fields) {
        const auto sensitivity = word.size() <= 2 ? Qt::CaseSensitive : Qt::CaseInsensitive;
        const auto known = std::find_if(field.words.begin(), field.words.end(), [&](const QString &each) { return each.compare(word, sensitivity) == 0; });
        if (known == field.words.end() || rating.find(field.key))
            continue;
        rating.put({field.key, std::nullopt, *known});
        return true;
    }
    return false;
}

/// A bare amount with the prefix of its field: "1000u" of a capacitor, "4k7" of a resistor.
bool putCode(Rating &rating, const PartKind &kind, const QString &word)
{
    static const QRegularExpression code(u"^[0-9.,]*[pnuµmkKMR][0-9]*$"_s);
    static const QRegularExpression figure(u"[0-9]"_s);
    if (!code.match(word).hasMatch() || !word.contains(figure))
        return false;
    for (const RatingField &field : kind.fields) {
        const auto own = measureOf(field);
        if (!own || (own->symbol() != u"F" && own->symbol() != u"Ω") || rating.find(field.key))
            continue;
        const auto amount = Quantity::parse(word, *own);
        if (!amount || !amount->measure().comparableWith(*own))
            continue;
        rating.put({field.key, *amount, {}});
        return true;
    }
    return false;
}

bool putAmount(Rating &rating, const PartKind &kind, const QString &text)
{
    const auto amount = Quantity::parse(text);
    if (!amount || amount->measure().isNone() || amount->sense() != Sense::Plain)
        return false;
    const RatingField *field = openField(kind, rating, amount->measure());
    if (!field)
        return false;
    rating.put({field->key, *amount, {}});
    return true;
}

} // namespace

QString RatingValue::text() const
{
    return amount ? QString(amount->text() + u' ' + word).trimmed() : word;
}

const RatingValue *Rating::find(QStringView key) const
{
    const auto found = std::find_if(values.begin(), values.end(), [&](const RatingValue &each) { return each.key.compare(key, Qt::CaseInsensitive) == 0; });
    return found == values.end() ? nullptr : &*found;
}

void Rating::put(const RatingValue &value)
{
    const bool says = value.amount || !value.word.isEmpty();
    for (qsizetype i = 0; i < values.size(); ++i) {
        if (values.at(i).key.compare(value.key, Qt::CaseInsensitive) != 0)
            continue;
        if (says)
            values[i] = value;
        else
            values.removeAt(i);
        return;
    }
    if (says)
        values << value;
}

QString Rating::lines() const
{
    QStringList lines;
    for (const RatingValue &value : values)
        lines << value.key + u' ' + value.text();
    return lines.join(u'\n');
}

Rating ratingOfLines(const QString &lines, const PartKind *kind)
{
    Rating rating;
    for (const QString &each : lines.split(u'\n', Qt::SkipEmptyParts)) {
        const QString line = each.simplified();
        if (line.isEmpty())
            continue;
        const QString key = keyOf(line, kind);
        const QString text = line.mid(key.size()).trimmed();
        if (kind && key.compare(u"size"_s, Qt::CaseInsensitive) == 0 && putSizes(rating, *kind, text))
            continue;
        const RatingField *field = kind ? kind->field(key) : nullptr;
        rating.put(field && field->isWord() ? RatingValue{field->key, std::nullopt, text} : valueOf(field ? field->key : key, text));
    }
    return rating;
}

Expected<RatingValue> typedRating(const RatingField &field, const QString &typed)
{
    const QString text = typed.simplified();
    if (text.isEmpty() || field.isWord())
        return RatingValue{field.key, std::nullopt, text};
    const QString did = u"%1 is no %2"_s.arg(quoted(text), field.key);
    const Measure own = *measureOf(field);
    RatingValue value = valueOf(field.key, text);
    if (!value.amount) {
        const auto amount = Quantity::parse(text, own);
        if (!amount)
            return Trouble{did, {}, u"type it as in \"10 %1\""_s.arg(field.measure)};
        value = {field.key, *amount, {}};
    }
    if (!value.amount->measure().comparableWith(own))
        return Trouble{did, u"it is not given in %1"_s.arg(own.symbol()), u"type it as in \"10 %1\""_s.arg(field.measure)};
    if (value.amount->sense() != Sense::Plain)
        return Trouble{did, u"a part has one rating"_s, u"leave the sign out"_s};
    if (value.amount->value() <= 0)
        return Trouble{did, u"it has to be above zero"_s, {}};
    return value;
}

ReadRating ratingInText(const QString &text, const PartKind *kind)
{
    ReadRating read{kind ? kind : partKindIn(text), {}, {}};
    static const QRegularExpression spaces(u"[\\s;]+|,\\s+"_s);
    QString whole = text.simplified();
    if (!read.kind) {
        read.rest = whole.split(spaces, Qt::SkipEmptyParts);
        return read;
    }
    static const QRegularExpression size(u"(?<![\\w.,])(\\d+(?:[.,]\\d+)?(?:\\s*[x×*]\\s*\\d+(?:[.,]\\d+)?){1,2})(?:\\s*mm)?(?![\\w.])"_s);
    for (auto found = size.match(whole); found.hasMatch() && putSizes(read.rating, *read.kind, found.captured(1)); found = size.match(whole))
        whole.replace(found.capturedStart(), found.capturedLength(), u" "_s);
    const QStringList words = whole.split(spaces, Qt::SkipEmptyParts);
    for (qsizetype i = 0; i < words.size(); ++i) {
        const QString &word = words.at(i);
        if (i + 1 < words.size() && parseNumber(word) && putAmount(read.rating, *read.kind, word + u' ' + words.at(i + 1))) {
            ++i;
            continue;
        }
        if (!putCode(read.rating, *read.kind, word) && !putAmount(read.rating, *read.kind, word) && !putWord(read.rating, *read.kind, word))
            read.rest << word;
    }
    // A square or round section is as thick as it is wide.
    const RatingValue *section = read.rating.find(u"section");
    const RatingValue *width = read.rating.find(u"width");
    if (section && width && (section->word == u"square" || section->word == u"round"))
        if (!read.rating.find(u"thickness"))
            read.rating.put({u"thickness"_s, width->amount, {}});
    QStringList own;
    for (const QString &name : QStringList(read.kind->name) + read.kind->names)
        own += name.split(u' ');
    read.rest.removeIf([&](const QString &word) {
        return own.contains(word, Qt::CaseInsensitive) || (word.endsWith(u's') && own.contains(word.chopped(1), Qt::CaseInsensitive));
    });
    return read;
}

ReadRating ratingOfPart(const Part &part)
{
    const PartKind *kind = part.kind.isEmpty() ? nullptr : partKindNamed(part.kind);
    ReadRating read = ratingInText(part.name, kind ? kind : partKindIn(part.kind + u' ' + part.name));
    Rating own = ratingOfLines(part.rating, read.kind);
    for (const RatingValue &value : read.rating.values)
        if (!own.find(value.key))
            own.put(value);
    read.rating = own;
    return read;
}

} // namespace ts
