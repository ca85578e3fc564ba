#include "model/exchange/write_units.h"

#include "model/exchange/csv_writer.h"
#include "model/records/tag_text.h"

#include <QHash>

namespace ts {

void writeUnits(QIODevice &device, const QList<Unit> &units, const QList<RackRow> &rows)
{
    QHash<QUuid, const RackRow *> rack;
    for (const RackRow &row : rows)
        rack.insert(row.id.value, &row);
    CsvWriter csv(device, CsvFor::Spreadsheet);
    csv.row(
        QStringLiteral(
            "tag,name,maker,model,category,kind,stage,since,outcome,serial,year,mains,class,claim,place,spent,currency,minutes,"
            "source_id")
            .split(QLatin1Char(',')));
    for (const Unit &unit : units) {
        const RackRow *figures = rack.value(unit.id.value);
        csv.row({tagText(unit.tag), unit.name, unit.maker, unit.makerModel, toWord(unit.category), toWord(unit.kind),
                 toWord(unit.stage), unit.stageSince.isValid() ? unit.stageSince.date().toString(Qt::ISODate) : QString(),
                 unit.outcome ? toWord(*unit.outcome) : QString(), unit.serial,
                 unit.year ? QString::number(*unit.year) : QString(), unit.mains,
                 unit.protectionClass ? toWord(*unit.protectionClass) : QString(), unit.claim, unit.place,
                 figures ? figures->spent.decimal() : QString(), figures ? figures->spent.currency().code() : QString(),
                 figures ? QString::number(figures->minutes) : QString(), unit.sourceId});
    }
}

} // namespace ts
