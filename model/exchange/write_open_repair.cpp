#include "model/exchange/write_open_repair.h"

#include "model/exchange/open_repair.h"
#include "model/records/tag_text.h"

namespace ts {

namespace {

using openrepair::Status;

/// A unit that nobody is done with has no status yet, whatever is known of its faults.
Status statusOf(const RepairFacts &facts)
{
    const bool open = !facts.openSymptoms.isEmpty();
    switch (facts.unit.stage) {
    case Stage::Held:
        return Status::Repairable;
    case Stage::Ready:
    case Stage::Offered:
        return open ? Status::Repairable : Status::Fixed;
    case Stage::Closed:
        if (facts.unit.outcome == Outcome::Scrapped || facts.unit.outcome == Outcome::BrokenForParts)
            return Status::EndOfLife;
        return open ? Status::Repairable : Status::Fixed;
    default:
        return Status::Unknown;
    }
}

QString heading(Category category)
{
    QString text = toWord(category).replace(QLatin1Char('_'), QLatin1Char(' '));
    text[0] = text.at(0).toUpper();
    return text;
}

/// How the record stood when it came in; a field that is still so goes out verbatim.
struct AsImported {
    explicit AsImported(const SourceRecord &source, const QString &problem)
        : status(openrepair::status(source.repairStatus).value_or(Status::Unknown)), place(openrepair::place(status)),
          made(openrepair::made(source)), maker(openrepair::maker(source)),
          category(openrepair::category(source.productCategory, source.partnerProductCategory, problem))
    {
    }
    Status status;
    openrepair::Place place;
    openrepair::Made made;
    QString maker;
    Category category;
};

SourceRecord ownRecord(const RepairFacts &facts, const RepairProvider &provider)
{
    const Unit &unit = facts.unit;
    const openrepair::ProductCategory category = openrepair::productCategory(unit.category);
    SourceRecord record;
    record.dataProvider = provider.name;
    record.country = provider.country;
    record.partnerProductCategory = heading(unit.category);
    record.productCategory = category.name;
    record.productCategoryId = QString::number(category.number);
    record.brand = unit.maker.isEmpty() ? QStringLiteral("Unknown") : unit.maker;
    return record;
}

void writeStage(SourceRecord &record, const RepairFacts &facts)
{
    const Status status = statusOf(facts);
    record.repairStatus = openrepair::word(status);
    record.repairBarrier = status == Status::EndOfLife ? openrepair::barrier(facts.lastBecause) : QString();
    const QDateTime since = facts.unit.stageSince.isValid() ? facts.unit.stageSince : facts.unit.at;
    record.eventDate = since.toUTC().date().toString(Qt::ISODate);
}

void writeYear(SourceRecord &record, const Unit &unit)
{
    record.yearOfManufacture = unit.year ? QString::number(*unit.year) : QString();
    const QDate event = QDate::fromString(record.eventDate.trimmed(), Qt::ISODate);
    record.productAge = unit.year && event.year() >= *unit.year ? QString::number(event.year() - *unit.year) : QString();
}

QString problemOf(const RepairFacts &facts)
{
    if (facts.source || !facts.unit.claim.isEmpty())
        return facts.unit.claim;
    return facts.openSymptoms.join(QStringLiteral("; "));
}

} // namespace

QStringList openRepairRow(const RepairFacts &facts, const RepairProvider &provider)
{
    const Unit &unit = facts.unit;
    const SourceRecord own = ownRecord(facts, provider);
    SourceRecord record = facts.source.value_or(own);
    if (!facts.source) {
        writeStage(record, facts);
        writeYear(record, unit);
    } else {
        // The category is told from the problem too, so an edited claim alone must not look like an edited category.
        const AsImported then(*facts.source, unit.claim);
        if (unit.stage != then.place.stage || unit.outcome != then.place.outcome)
            writeStage(record, facts);
        if (unit.year != then.made.year)
            writeYear(record, unit);
        if (unit.maker != then.maker)
            record.brand = own.brand;
        const int number = openrepair::categoryNumber(record.productCategory);
        if (unit.category != then.category && unit.category != Category::Other &&
            number != openrepair::productCategory(unit.category).number) {
            record.productCategory = own.productCategory;
            record.productCategoryId = own.productCategoryId;
        }
    }
    const QString id = unit.sourceId.isEmpty() ? QStringLiteral("turnscrew_") + tagText(unit.tag) : unit.sourceId;
    return {id,
            record.dataProvider,
            record.country,
            record.partnerProductCategory,
            record.productCategory,
            record.productCategoryId,
            record.brand,
            record.yearOfManufacture,
            record.productAge,
            record.repairStatus,
            record.repairBarrier,
            record.groupIdentifier,
            record.eventDate,
            problemOf(facts)};
}

} // namespace ts
