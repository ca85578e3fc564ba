#include "model/exchange/read_open_repair.h"

#include "model/exchange/csv_reader.h"
#include "model/exchange/list_columns.h"
#include "model/exchange/open_repair.h"
#include "model/records/stage_move.h"
#include "model/values/quoted.h"

#include <array>

namespace ts {

namespace {

enum Column {
    Id_,
    Provider,
    Country,
    PartnerCategory,
    ProductCategory,
    ProductCategoryId,
    Brand,
    Year,
    Age,
    Status,
    Barrier,
    Group,
    EventDate,
    Problem,
    columnCount
};

/// Where the standard's columns stand in this file; -1 where it lacks one.
using Places = std::array<qsizetype, columnCount>;

Expected<Places> placesOf(const QStringList &header, const QString &did, LineList &warnings)
{
    const QStringList &names = openrepair::columns();
    Places places;
    places.fill(-1);
    QStringList found;
    for (qsizetype i = 0; i < header.size(); ++i) {
        const qsizetype at = names.indexOf(header.at(i).trimmed().toLower());
        if (at >= 0 && places.at(static_cast<size_t>(at)) < 0)
            places.at(static_cast<size_t>(at)) = i;
        else
            warnings.add(
                1, QStringLiteral("the column %1 is not one of the standard's and is not taken in").arg(quoted(header.at(i))));
        if (i < 40)
            found << quoted(header.at(i));
    }
    QStringList missing;
    for (const QString &name : openrepair::requiredColumns())
        if (places.at(static_cast<size_t>(names.indexOf(name))) < 0)
            missing << name;
    if (missing.isEmpty())
        return places;
    return Trouble{did,
                   QStringLiteral("the header has no %1; the columns found are %2")
                       .arg(missing.join(QStringLiteral(", ")), found.join(QStringLiteral(", "))),
                   QStringLiteral("the standard's columns are ") + names.join(QStringLiteral(", "))};
}

class Reader {
public:
    Reader(const Places &places, const QSet<QString> &known, Maker &maker)
        : m_places(places), m_known(known), m_maker(maker), m_tomorrow(maker.now().date().addDays(1))
    {
    }

    Imported imported;

    void take(const QStringList &cells, qint64 line)
    {
        const QString id = cell(cells, Id_).trimmed();
        if (id.isEmpty())
            return imported.problems.add(line, QStringLiteral("the id is missing"));
        if (m_known.contains(id)) {
            ++imported.skipped;
            return;
        }
        if (const auto seen = m_seen.constFind(id); seen != m_seen.constEnd()) {
            if (seen->cells != cells)
                return imported.problems.add(
                    line,
                    QStringLiteral("the id %1 stands already on line %2, with other content").arg(quoted(id)).arg(seen->line));
            ++imported.skipped;
            return imported.warnings.add(line, QStringLiteral("the same record stands already on line %1").arg(seen->line));
        }
        m_seen.insert(id, {line, cells});
        add(id, sourceOf(cells), cell(cells, Problem), line);
    }

private:
    struct Seen {
        qint64 line = 0;
        QStringList cells;
    };

    QString cell(const QStringList &cells, Column column) const
    {
        const qsizetype at = m_places.at(static_cast<size_t>(column));
        return at < 0 ? QString() : cells.at(at);
    }

    SourceRecord sourceOf(const QStringList &cells) const
    {
        SourceRecord source;
        source.dataProvider = cell(cells, Provider);
        source.country = cell(cells, Country);
        source.partnerProductCategory = cell(cells, PartnerCategory);
        source.productCategory = cell(cells, ProductCategory);
        source.productCategoryId = cell(cells, ProductCategoryId);
        source.brand = cell(cells, Brand);
        source.yearOfManufacture = cell(cells, Year);
        source.productAge = cell(cells, Age);
        source.repairStatus = cell(cells, Status);
        source.repairBarrier = cell(cells, Barrier);
        source.groupIdentifier = cell(cells, Group);
        source.eventDate = cell(cells, EventDate);
        return source;
    }

    /// Dates and numbers: what is wrong there is a mistake in the file, and nothing can be made of it.
    bool checkNumbers(const SourceRecord &source, QDate event, qint64 line)
    {
        bool good = true;
        const auto wrong = [&](const QString &text) {
            imported.problems.add(line, text);
            good = false;
        };
        if (!event.isValid() || source.eventDate.trimmed().size() != 10)
            wrong(QStringLiteral("event_date %1 is no date; write it as 2026-11-28").arg(quoted(source.eventDate)));
        else if (event > m_tomorrow)
            wrong(QStringLiteral("event_date %1 lies in the future").arg(quoted(source.eventDate)));
        if (const QString year = source.yearOfManufacture.trimmed(); !year.isEmpty()) {
            bool ok = false;
            const int number = year.toInt(&ok);
            if (!ok || number < 1850) // before there was anything electric to repair
                wrong(QStringLiteral("year_of_manufacture %1 is no year").arg(quoted(year)));
            else if (event.isValid() && number > event.year() + 1)
                wrong(QStringLiteral("year_of_manufacture %1 is after the event").arg(quoted(year)));
        }
        if (const QString age = source.productAge.trimmed(); !age.isEmpty()) {
            bool ok = false;
            const double number = age.toDouble(&ok);
            if (!ok || !(number >= 0 && number <= 200))
                wrong(QStringLiteral("product_age %1 is no age in years").arg(quoted(age)));
        }
        return good;
    }

    /// Words that are not the standard's: kept as they are, and named.
    void checkWords(const SourceRecord &source, qint64 line)
    {
        const auto odd = [&](const QString &text) { imported.warnings.add(line, text); };
        const int number = openrepair::categoryNumber(source.productCategory);
        const QString given = source.productCategoryId.trimmed();
        if (number == 0)
            odd(QStringLiteral("product_category %1 is not one of the standard's; kept as it is, category other")
                    .arg(quoted(source.productCategory)));
        else if (!given.isEmpty() && given != QString::number(number))
            odd(QStringLiteral("product_category_id %1 is not that of %2, which is %3")
                    .arg(quoted(given), quoted(source.productCategory))
                    .arg(number));
        if (!openrepair::status(source.repairStatus))
            odd(QStringLiteral("repair_status %1 is not one of the standard's; kept as it is, taken as Unknown")
                    .arg(quoted(source.repairStatus)));
        if (!source.repairBarrier.trimmed().isEmpty() && openrepair::barrier(source.repairBarrier).isEmpty())
            odd(QStringLiteral("repair_barrier_if_end_of_life %1 is not one of the standard's; kept as it is")
                    .arg(quoted(source.repairBarrier)));
    }

    static QString because(openrepair::Status status, const SourceRecord &source)
    {
        const QString known = openrepair::barrier(source.repairBarrier);
        const QString barrier = known.isEmpty() ? source.repairBarrier.trimmed() : known;
        switch (status) {
        case openrepair::Status::EndOfLife:
            return barrier.isEmpty() ? QStringLiteral("given up, no reason recorded") : barrier;
        case openrepair::Status::Repairable:
            return QStringLiteral("was left repairable on ") + source.eventDate.trimmed() +
                   (barrier.isEmpty() ? QString() : QStringLiteral(": ") + barrier);
        case openrepair::Status::Fixed:
        case openrepair::Status::Unknown:
            break;
        }
        return barrier;
    }

    void add(const QString &id, SourceRecord source, const QString &problem, qint64 line)
    {
        const QDate event = QDate::fromString(source.eventDate.trimmed(), Qt::ISODate);
        checkWords(source, line);
        if (!checkNumbers(source, event, line))
            return;
        const openrepair::Status status = openrepair::status(source.repairStatus).value_or(openrepair::Status::Unknown);
        const openrepair::Place place = openrepair::place(status);
        const openrepair::Made made = openrepair::made(source);
        const QDateTime at(event, QTime(0, 0), Qt::UTC);

        Unit unit = m_maker.fresh<Unit>();
        unit.at = at;
        unit.kind = UnitKind::Owners;
        unit.sourceId = id;
        unit.name = openrepair::itemName(source.productCategory, source.partnerProductCategory);
        if (unit.name.isEmpty())
            unit.name = QStringLiteral("Item ") + id;
        unit.maker = openrepair::maker(source);
        unit.category = openrepair::category(source.productCategory, source.partnerProductCategory, problem);
        unit.stage = place.stage;
        unit.stageSince = at;
        unit.outcome = place.outcome;
        unit.year = made.year;
        unit.yearBasis = made.basis;
        unit.claim = problem;
        if (place.stage == Stage::Held)
            unit.heldBecause = because(status, source);

        source.id = m_maker.fresh<SourceRecord>().id;
        source.at = at;
        source.unit = unit.id;
        imported.change.add(unit).add(source);
        if (place.stage != Stage::Shelved) {
            StageMove move = m_maker.fresh<StageMove>();
            move.at = at;
            move.unit = unit.id;
            move.toStage = place.stage;
            move.outcome = place.outcome;
            move.because = because(status, source);
            imported.change.add(move);
        }
        ++imported.added;
    }

    const Places &m_places;
    const QSet<QString> &m_known;
    Maker &m_maker;
    QDate m_tomorrow;
    QHash<QString, Seen> m_seen;
};

} // namespace

Expected<Imported> readOpenRepair(QIODevice &device, const QString &did, const QSet<QString> &known, Maker &maker)
{
    CsvReader csv(device, did, CsvFor::Standard);
    const auto first = csv.next();
    if (!first)
        return first.trouble();
    if (!*first)
        return Trouble{did, QStringLiteral("the file is empty"), {}};
    const QStringList header = csv.cells();
    LineList strangers;
    const auto places = placesOf(header, did, strangers);
    if (!places)
        return places.trouble();
    Reader reader(*places, known, maker);
    reader.imported.warnings = strangers;
    while (true) {
        const auto more = csv.next();
        if (!more)
            return more.trouble();
        if (!*more)
            break;
        if (csv.cells().size() != header.size())
            reader.imported.problems.add(csv.line(), wrongWidth(csv.cells().size(), header.size()));
        else
            reader.take(csv.cells(), csv.line());
    }
    return std::move(reader.imported);
}

} // namespace ts
