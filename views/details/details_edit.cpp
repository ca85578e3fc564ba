// What becomes of what is typed in the details: each field a change of its own, with its own sentence.
#include "model/records/named_contact.h"
#include "model/records/tag_text.h"
#include "model/records/taking_in.h"
#include "model/values/plain_text.h"
#include "model/values/quoted.h"
#include "views/details/detail_field.h"
#include "views/details/details_page.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/names.h"
#include "views/widgets/typed_money.h"

namespace ts {

namespace {
constexpr qsizetype longestSaid = 100; // of a value, in the sentence
}

DetailField *DetailsPage::text(QString Unit::*member, const QString &label, const QString &noun, bool lines)
{
    auto *field = new DetailField(label, lines ? DetailField::Form::Text : DetailField::Form::Line,
                                  [this, member, label, noun](const QString &typed) { return takeText(member, label, noun, typed); });
    return add(field, [this, member] { return unit().*member; });
}

DetailField *DetailsPage::purchase(const QString &label, const QString &noun, Shows shows, SetsPurchase set)
{
    auto *field = new DetailField(label, DetailField::Form::Line, [this, label, noun, shows, set = std::move(set)](const QString &typed) {
        Purchase wish = purchaseOf(file(), bench());
        if (const auto read = set(wish, typed); !read) {
            work().refuse(read.trouble());
            return false;
        }
        Maker maker = work().maker();
        auto change = purchaseChange(file(), bench(), wish, maker);
        if (!change) {
            work().refuse(typed::inField(label, change.trouble()));
            return false;
        }
        change->setSentence(sentence(noun, typed.simplified()));
        return work().record(*change);
    });
    return add(field, std::move(shows));
}

Expected<void> DetailsPage::takeSum(Purchase &wish, std::optional<Money> Purchase::*sum, const QString &label, const QString &typed) const
{
    const auto read = typed::moneyOrNone(label, typed, work().currency());
    if (!read)
        return read.trouble();
    // Until somebody says when, it was bought when it came in.
    if (*read && !wish.price && !wish.carriage && !wish.boughtOn.isValid())
        wish.boughtOn = unit().at.toLocalTime().date();
    wish.*sum = *read;
    return {};
}

Expected<void> DetailsPage::takeSeller(Purchase &wish, const QString &typed) const
{
    const auto name = plainText(typed, tr("Bought from"), shortText);
    if (!name)
        return name.trouble();
    wish.seller = *name;
    return {};
}

Expected<void> DetailsPage::takeDay(Purchase &wish, const QString &typed) const
{
    const auto day = typed::inField(tr("Bought on"), typed::dayOrNone(typed, work().today()));
    if (!day)
        return day.trouble();
    wish.boughtOn = *day;
    return {};
}

bool DetailsPage::takeText(QString Unit::*member, const QString &label, const QString &noun, const QString &typed)
{
    const auto text = plainText(typed, label, member == &Unit::claim || member == &Unit::accessories || member == &Unit::earlierWork ? longText : shortText);
    if (!text) {
        work().refuse(text.trouble());
        return false;
    }
    if (member == &Unit::name && text->isEmpty()) {
        work().refuse(tr("Name: a unit has one; call it what it is: maker, model, what kind of thing."));
        return false;
    }
    Unit after = unit();
    after.*member = *text;
    return record(after, noun, *text);
}

bool DetailsPage::takeYear(const QString &typed)
{
    const QString figures = typed.trimmed();
    bool isNumber = false;
    const int year = figures.toInt(&isNumber);
    if (!figures.isEmpty() && (!isNumber || !canBeMadeIn(year, work().today()))) {
        work().refuse(Trouble{tr("Year made: %1 is no year that a unit can be made in").arg(quoted(figures)), {}, tr("type it like 1979")});
        return false;
    }
    Unit after = unit();
    after.year = figures.isEmpty() ? std::nullopt : std::optional(year);
    return record(after, tr("Year"), figures);
}

bool DetailsPage::takeCategory(const QString &word)
{
    Unit after = unit();
    after.category = fromWord<Category>(word).value_or(after.category);
    return record(after, tr("Category"), categoryName(after.category));
}

bool DetailsPage::takeClass(const QString &word)
{
    Unit after = unit();
    after.protectionClass = fromWord<ProtectionClass>(word);
    return record(after, tr("Protection class"), word);
}

// Whose it was is nothing that is kept of a unit that is not an owner's any more.
bool DetailsPage::takeKind(const QString &word)
{
    Unit after = unit();
    after.kind = fromWord<UnitKind>(word).value_or(after.kind);
    if (after.kind != UnitKind::Owners)
        after.owner = {};
    return record(after, tr("Kind"), kindName(after.kind));
}

bool DetailsPage::takeOwner(const QString &typed)
{
    const auto name = plainText(typed, tr("Owner’s name"), shortText);
    if (!name) {
        work().refuse(name.trouble());
        return false;
    }
    Change change;
    Maker maker = work().maker();
    Unit after = unit();
    after.owner = contactNamed(bench(), *name, change, maker); // a new one stands before what refers to it
    return record(after, tr("Owner"), *name, std::move(change));
}

bool DetailsPage::record(const Unit &after, const QString &noun, const QString &value, Change change)
{
    change.setSentence(sentence(noun, value));
    return work().record(change.edit(unit(), after));
}

QString DetailsPage::sentence(const QString &noun, const QString &value) const
{
    const QString tag = tagText(unit().tag);
    if (value.isEmpty())
        return tr("%1 of unit %2 taken out").arg(noun, tag);
    return tr("%1 of unit %2: %3").arg(noun, tag, value.size() > longestSaid ? value.left(longestSaid) + QStringLiteral("…") : value);
}

} // namespace ts
