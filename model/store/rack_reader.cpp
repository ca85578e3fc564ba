#include "model/store/rack_reader.h"

#include <algorithm>
#include <vector>

namespace ts {

namespace {

// %1 narrows the units, %2 orders and cuts the page; %3 is the milliseconds from where a span begins to count to its end; %4 keeps
// SQLite from working out what covers a span once for each place that names it; %5 are more columns. Each sum is of one unit of
// the page, found by its index: for a page and for a whole rack alike that is quicker than grouping whole tables. A sum without
// currency is one in the bench's.
const char *const rackQuery = R"(
WITH page AS (
    SELECT "id", "tag", "name", "category", "kind", "stage", "stage_since", "held_because", "held_until", "outcome", "source_id",
        "at", "mains", "protection_class", "claim", "channel", "asked", "asked_currency",
        CASE "stage" WHEN 'bench' THEN 0 WHEN 'held' THEN 1 WHEN 'proving' THEN 2 WHEN 'ready' THEN 3 WHEN 'offered' THEN 4
                     WHEN 'shelved' THEN 5 WHEN 'inbound' THEN 6 WHEN 'scouted' THEN 7 ELSE 8 END AS place_of_stage
    FROM "unit" WHERE "removed" = 0 %1 %2
)
SELECT p."id", p."tag", p."name", p."category", p."kind", p."stage", p."stage_since", p."held_because", p."held_until", p."outcome", p."source_id",
    CAST(COALESCE((SELECT SUM(CASE WHEN "flow" = 'out' THEN 1 WHEN "kind" = 'refund' THEN -1 ELSE 0 END
                   * CASE WHEN "amount_currency" IN ('', ?) THEN COALESCE("amount", 0)
                          WHEN "amount" IS NOT NULL AND "in_bench_currency_currency" IN ('', ?) THEN COALESCE("in_bench_currency", 0) ELSE 0 END)
              FROM "spend" WHERE "unit" = p."id" AND "removed" = 0), 0)
       + COALESCE((SELECT SUM("price" * "quantity") FROM "need"
              WHERE "unit" = p."id" AND "removed" = 0 AND "state" <> 'needed' AND "price_currency" IN ('', ?)), 0) AS BIGINT),
    (SELECT CAST(COALESCE(SUM("counted_minutes"), 0) AS BIGINT)
            + (CAST(COALESCE(SUM(CASE WHEN "counted_minutes" IS NULL AND ended > begins THEN %3 ELSE 0 END), 0) AS BIGINT) + 30000) / 60000
        FROM (SELECT "counted_minutes", ended, CASE WHEN covered > "started_at" THEN covered ELSE "started_at" END AS begins
            FROM (SELECT s."counted_minutes", s."started_at", COALESCE(s."ended_at", ?) AS ended,
                    (SELECT MAX(COALESCE(c."ended_at", ?)) FROM "clock_span" c
                        WHERE c."unit" = p."id" AND c."removed" = 0 AND (c."started_at", c."id") < (s."started_at", s."id")) AS covered
                FROM "clock_span" s WHERE s."unit" = p."id" AND s."removed" = 0 %4) AS spans) AS stretches)
    + CAST(COALESCE((SELECT SUM("minutes") FROM "step" t WHERE t."unit" = p."id" AND t."removed" = 0 AND t."minutes" IS NOT NULL
            AND NOT EXISTS (SELECT 1 FROM "clock_span" c WHERE c."unit" = p."id" AND c."removed" = 0 AND t."at" >= c."started_at"
                            AND (t."at" = c."started_at" OR t."at" <= COALESCE(c."ended_at", ?)))), 0) AS BIGINT),
    (SELECT y."text" FROM "symptom" y WHERE y."unit" = p."id" AND y."removed" = 0 AND y."state" = 'open' ORDER BY y."at" DESC, y."id" DESC LIMIT 1),
    (SELECT 1 FROM "left_off" l WHERE l."unit" = p."id" AND l."removed" = 0 AND l."do_not_power" <> '')%5
FROM page p)";

// What a tag says beside, for the units that are looked at.
const char *const tagColumns = R"(,
    p."at", p."mains", p."protection_class", p."claim", p."asked", p."asked_currency", (SELECT c."name" FROM "channel" c WHERE c."id" = p."channel"),
    (SELECT l."next" FROM "left_off" l WHERE l."unit" = p."id" AND l."removed" = 0),
    (SELECT COUNT(*) FROM "symptom" y WHERE y."unit" = p."id" AND y."removed" = 0 AND y."state" = 'open'),
    (SELECT COUNT(*) FROM "teardown_item" t WHERE t."unit" = p."id" AND t."removed" = 0 AND t."state" = 'off'),
    (SELECT o."name" FROM "soak" o WHERE o."unit" = p."id" AND o."removed" = 0 AND o."ended_at" IS NULL ORDER BY o."started_at" DESC, o."id" DESC LIMIT 1),
    (SELECT MAX(o."started_at") FROM "soak" o WHERE o."unit" = p."id" AND o."removed" = 0 AND o."ended_at" IS NULL),
    (SELECT MIN(n."due") FROM "need" n WHERE n."unit" = p."id" AND n."removed" = 0 AND n."state" IN ('needed', 'ordered') AND n."due" IS NOT NULL),
    (SELECT COUNT(*) FROM "photo" f WHERE f."unit" = p."id" AND f."removed" = 0),
    (SELECT COUNT(*) FROM "paper" a WHERE a."unit" = p."id" AND a."removed" = 0 AND a."kind" = 'restoration'),
    (SELECT CAST(SUM(CASE WHEN "amount_currency" IN ('', ?) THEN COALESCE("amount", 0)
                          WHEN "amount" IS NOT NULL AND "in_bench_currency_currency" IN ('', ?) THEN COALESCE("in_bench_currency", 0) ELSE 0 END) AS BIGINT)
        FROM "spend" WHERE "unit" = p."id" AND "removed" = 0 AND "kind" = 'sale' AND "flow" = 'in'),
    (SELECT CASE WHEN SUM(CASE WHEN n."state" = 'here' THEN 1 ELSE 0 END) > 0 AND SUM(CASE WHEN n."state" IN ('needed', 'ordered') THEN 1 ELSE 0 END) = 0
        THEN 1 ELSE 0 END FROM "need" n WHERE n."unit" = p."id" AND n."removed" = 0))";

// A statement is kept for each number of units asked for at once: so there are two of them, for one and for a page.
constexpr int unitsAtOnce = 50;

// The engines need not keep the order of the page, and sorting whole rows costs them a tenth of the time.
QList<Row> inOrder(QList<Row> rows)
{
    // As in the statement above; closed is last.
    static const QStringList stages = QStringLiteral("bench held proving ready offered shelved inbound scouted").split(QLatin1Char(' '));
    struct Key {
        qsizetype place;
        QString since;
        qint64 tag;
        qsizetype index;
    };
    std::vector<Key> keys;
    keys.reserve(static_cast<size_t>(rows.size()));
    for (qsizetype i = 0; i < rows.size(); ++i) {
        const auto at = [&row = rows.at(i)](RackColumn column) { return row.at(static_cast<int>(column)); };
        const qsizetype place = stages.indexOf(at(RackColumn::Stage).toString());
        keys.push_back({place < 0 ? stages.size() : place, at(RackColumn::StageSince).toString(), at(RackColumn::Tag).toLongLong(), i});
    }
    std::sort(keys.begin(), keys.end(), [](const Key &a, const Key &b) {
        if (a.place != b.place)
            return a.place < b.place;
        const int since = QString::compare(a.since, b.since);
        return since != 0 ? since > 0 : a.tag > b.tag;
    });
    QList<Row> sorted;
    sorted.reserve(rows.size());
    for (const Key &key : keys)
        sorted << std::move(rows[key.index]);
    return sorted;
}

QString statement(const Connection &connection, const QString &which, const QString &page, const QString &more)
{
    return QString::fromLatin1(rackQuery).arg(which, page, connection.milliseconds(QStringLiteral("begins"), QStringLiteral("ended")),
                                              connection.pick("LIMIT -1", ""), more);
}

} // namespace

Expected<QList<Row>> readRack(Connection &connection, const QString &currency, const QString &now, const QString &stage, int offset, int limit)
{
    QVariantList values;
    if (!stage.isEmpty())
        values << stage;
    if (limit >= 0)
        values << limit << offset;
    values << currency << currency << currency << now << now << now;
    const QString page = QStringLiteral("ORDER BY place_of_stage, COALESCE(\"stage_since\", '') DESC, \"tag\" DESC LIMIT ? OFFSET ?");
    auto rows = connection.rows(statement(connection, stage.isEmpty() ? QString() : QStringLiteral("AND \"stage\" = ?"), limit < 0 ? QString() : page, {}), values);
    return rows ? inOrder(*std::move(rows)) : rows;
}

Expected<QList<Row>> readRackUnits(Connection &connection, const QString &currency, const QString &now, const QStringList &units)
{
    QList<Row> all;
    for (qsizetype from = 0; from < units.size(); from += unitsAtOnce) {
        const QStringList some = units.mid(from, unitsAtOnce);
        const qsizetype places = some.size() == 1 ? 1 : unitsAtOnce;
        QVariantList values;
        for (qsizetype i = 0; i < places; ++i)
            values << some.value(i); // the rest are the empty text, which is no unit's id
        values << currency << currency << currency << now << now << now << currency << currency;
        const QString among = QStringLiteral("AND \"id\" IN (%1?)").arg(QStringLiteral("?, ").repeated(places - 1));
        const auto rows = connection.rows(statement(connection, among, {}, QString::fromLatin1(tagColumns)), values);
        if (!rows)
            return rows.trouble();
        all += *rows;
    }
    return all;
}

} // namespace ts
