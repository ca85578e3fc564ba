#include "model/exchange/year_files.h"

#include "model/exchange/csv_writer.h"

namespace ts {

Expected<qint64> writeYearCsv(QIODevice &device, const YearBooks &books)
{
    CsvWriter csv(device, CsvFor::Spreadsheet);
    csv.row({QStringLiteral("day"), QStringLiteral("tag"), QStringLiteral("unit"), QStringLiteral("what"), QStringLiteral("with"), QStringLiteral("kind"), QStringLiteral("out"), QStringLiteral("in"),
             QStringLiteral("currency"), QStringLiteral("paid"), QStringLiteral("paid_currency")});
    for (const BookLine &line : books.lines) {
        const QString worth = line.worth ? line.worth->decimal() : QString();
        csv.row({line.day.toString(Qt::ISODate), line.tag > 0 ? QString::number(line.tag) : QString(), line.unit, line.text, line.with, toWord(line.kind), line.flow == Flow::Out ? worth : QString(),
                 line.flow == Flow::In ? worth : QString(), books.currency.code(), line.amount.decimal(), line.amount.currency().code()});
    }
    csv.flush();
    return static_cast<qint64>(books.lines.size());
}

} // namespace ts
