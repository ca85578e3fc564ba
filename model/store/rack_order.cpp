#include "model/store/rack_order.h"

#include "model/store/search_index.h"

namespace ts {

Expected<QList<Row>> readRackOrder(Connection &connection, const SearchIndex &search, const QString &words, const QStringList &stages)
{
    const SearchIndex::Among among = search.unitsWith(words);
    QString where;
    QVariantList values;
    if (!stages.isEmpty()) {
        where = QStringLiteral(" AND \"stage\" IN (%1?)").arg(QStringLiteral("?, ").repeated(stages.size() - 1));
        for (const QString &stage : stages)
            values << stage;
    }
    return connection.rows(QStringLiteral("SELECT \"id\", \"stage\", \"tag\", \"stage_since\", \"held_until\", \"name\", "
                                              // A part that has come floats its unit up as a move does. Of a closed unit nobody asks.
                                              "CASE WHEN \"stage\" <> 'closed' THEN (SELECT MAX(n.\"state_since\") FROM \"need\" n WHERE n.\"unit\" = \"unit\".\"id\" AND n.\"removed\" = 0 AND n.\"state\" = 'here') END FROM \"unit\" WHERE \"removed\" = 0") + where +
                               among.condition,
                           values + among.values);
}

Expected<QList<Row>> countRack(Connection &connection, const SearchIndex &search, const QString &words)
{
    const SearchIndex::Among among = search.unitsWith(words);
    return connection.rows(QStringLiteral("SELECT \"stage\", COUNT(*) FROM \"unit\" WHERE \"removed\" = 0%1 GROUP BY \"stage\"").arg(among.condition), among.values);
}

} // namespace ts
