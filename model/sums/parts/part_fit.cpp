#include "model/sums/parts/part_fit.h"

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

namespace {

constexpr double electrolyticBand = 0.20; // letter M of IEC 60062
constexpr double dust = 1e-9;

/// Whether a text says a word, or several, as whole words: "low, glass" says "low".
bool saysAs(const QString &text, const QString &words)
{
    const auto plain = [](QString of) { return u' ' + of.replace(u',', u' ').simplified().toLower() + u' '; };
    return plain(text).contains(plain(words));
}

/// One attribute of the part against the same of the need.
PartFit compared(const RatingField &field, const RatingValue &needed, const RatingValue *has, bool capacitance)
{
    if (!has)
        return {FitWord::LookFirst, {u"its %1 is not recorded"_s.arg(field.key)}};
    if (!needed.amount || !has->amount) {
        const QString a = needed.text(), b = has->text();
        if (needed.amount || has->amount)
            return {FitWord::LookFirst, {u"%1 %2, needed %3"_s.arg(field.key, b, a)}};
        if (saysAs(b, a))
            return {FitWord::Fits, {}};
        return {field.words.isEmpty() ? FitWord::LookFirst : FitWord::DoesNot, {u"%1 %2, needed %3"_s.arg(field.key, b, a)}};
    }
    if (!has->amount->measure().comparableWith(needed.amount->measure()))
        return {FitWord::LookFirst, {u"%1 %2, needed %3"_s.arg(field.key, has->text(), needed.text())}};
    const double want = needed.amount->base(), is = has->amount->base(), play = dust * std::abs(want);
    const QString said = u"%1 %2, needed %3"_s.arg(field.key, has->text(), needed.text());
    switch (field.rule) {
    case RatingRule::AtLeast:
        return is < want - play ? PartFit{FitWord::DoesNot, {said}} : is > want + play ? PartFit{FitWord::Fits, {u"%1 %2"_s.arg(field.key, has->text())}} : PartFit{FitWord::Fits, {}};
    case RatingRule::AtMost:
        return is > want + play ? PartFit{FitWord::DoesNot, {said}} : PartFit{FitWord::Fits, {}};
    case RatingRule::Same: {
        const double off = std::abs(is - want);
        if (off <= play)
            return {FitWord::Fits, {}};
        if (off <= want * field.percent / 100 + play)
            return {FitWord::Fits, {said}};
        return {capacitance && off <= want * electrolyticBand + play ? FitWord::LookFirst : FitWord::DoesNot, {said}};
    }
    case RatingRule::Remark:
        break;
    }
    return {FitWord::Fits, {}};
}

} // namespace

PartFit fitOf(const ReadRating &part, const ReadRating &needed)
{
    if (!part.kind || !needed.kind || needed.rating.values.isEmpty())
        return {FitWord::DoesNot, {u"too little is recorded to compare"_s}};
    const bool capacitors = part.kind->family == u"capacitor" && needed.kind->family == u"capacitor";
    if (!isOfKind(*part.kind, *needed.kind) && !isOfKind(*needed.kind, *part.kind))
        return {FitWord::DoesNot, {u"it is another kind of part"_s}};
    const RatingValue *safety = needed.rating.find(u"class");
    const bool safe = needed.kind->name == u"safety capacitor" || (capacitors && safety);
    if (capacitors && safe && part.kind->name != u"safety capacitor" && !part.rating.find(u"class"))
        return {FitWord::DoesNot, {u"it is no safety capacitor"_s}};
    PartFit fit{FitWord::Fits, {}};
    for (const RatingValue &value : needed.rating.values) {
        const RatingField *field = needed.kind->field(value.key);
        if (!field || field->rule == RatingRule::Remark)
            continue;
        const bool electrolytic = part.kind->name == u"electrolytic" && field->key == u"capacitance";
        const PartFit one = compared(*field, value, part.rating.find(field->key), electrolytic);
        if (one.word == FitWord::DoesNot)
            return one;
        if (one.word == FitWord::LookFirst)
            fit.word = one.word;
        fit.why << one.why;
    }
    return fit;
}

QList<ShelfPart> shelfFor(const Need &need, const QList<Part> &parts, const QList<Batch> &batches)
{
    const ReadRating needed = ratingInText(need.text);
    QList<ShelfPart> found;
    for (const Part &part : parts) {
        const int left = part.removed ? 0 : leftOf(part.id, batches);
        if (left <= 0)
            continue;
        PartFit fit;
        if (need.part == part.id || part.name.compare(need.text.simplified(), Qt::CaseInsensitive) == 0)
            fit = {FitWord::Fits, {}}; // it is the very part that was meant
        else if (needed.kind)
            fit = fitOf(ratingOfPart(part), needed);
        if (fit.word != FitWord::DoesNot)
            found << ShelfPart{part, left, fit};
    }
    std::stable_sort(found.begin(), found.end(), [](const ShelfPart &a, const ShelfPart &b) {
        return a.fit.word != b.fit.word ? a.fit.word < b.fit.word : a.left > b.left;
    });
    return found;
}

} // namespace ts
