#include "model/store/discard.h"

#include "model/records/all_records.h"
#include "model/store/book_file.h"
#include "model/store/connection.h"
#include "model/store/migrations.h"
#include "model/store/transaction.h"

namespace ts {

Expected<void> discardNewBook(const BookAddress &address)
{
    if (address.engine == BookAddress::Engine::Sqlite) {
        removeBookFile(address.file);
        return {};
    }
    const auto connection = Connection::open(address, Connection::Mode::Existing);
    if (!connection)
        return connection.trouble();
    const auto step = schemaStep(**connection);
    if (!step)
        return step.trouble();
    if (step->value_or(0) == 0)
        return Trouble{QStringLiteral("Cannot remove %1").arg(address.display()), QStringLiteral("there is no workbook in it"), {}};
    // A workbook is made in an empty schema only, so what is in it now is the workbook's.
    QStringList tables;
    const auto read = (*connection)->forEach(QStringLiteral("SELECT tablename FROM pg_tables WHERE schemaname = current_schema()"), {},
                                             [&tables](const Statement &row) {
                                                 tables << QLatin1Char('"') +
                                                               row.value(0).toString().replace(QLatin1Char('"'), QStringLiteral("\"\"")) +
                                                               QLatin1Char('"');
                                                 return true;
                                             });
    if (!read)
        return read.trouble();
    return (*connection)->plain(QStringLiteral("DROP TABLE ") + tables.join(QStringLiteral(", ")));
}

} // namespace ts
