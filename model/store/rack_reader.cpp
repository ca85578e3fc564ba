#include "model/store/rack_reader.h"

namespace ts {

namespace {

// %1 narrows the units, %2 the page; %3 and %4 are the milliseconds of a span's end and of where it begins to count. Only units of
// the page are summed. A sum without currency is one in the bench's.
const char *const rackQuery = R"(
WITH page AS (
    SELECT "id", "tag", "name", "category", "kind", "stage", "stage_since", "held_because", "held_until", "outcome", "source_id",
        CASE "stage" WHEN 'bench' THEN 0 WHEN 'held' THEN 1 WHEN 'proving' THEN 2 WHEN 'ready' THEN 3 WHEN 'offered' THEN 4
                     WHEN 'shelved' THEN 5 WHEN 'inbound' THEN 6 WHEN 'scouted' THEN 7 ELSE 8 END AS place_of_stage
    FROM "unit" WHERE "removed" = 0 %1
    ORDER BY place_of_stage, "stage_since" DESC, "tag" DESC %2
), money AS (
    SELECT "unit" AS of_unit, SUM(CASE WHEN "flow" = 'out' THEN 1 WHEN "kind" = 'refund' THEN -1 ELSE 0 END
        * CASE WHEN "amount_currency" IN ('', ?) THEN COALESCE("amount", 0)
                 WHEN "amount" IS NOT NULL AND "in_bench_currency_currency" IN ('', ?) THEN COALESCE("in_bench_currency", 0) ELSE 0 END) AS total
    FROM "spend" WHERE "removed" = 0 AND "unit" IN (SELECT "id" FROM page) GROUP BY "unit"
), parts AS (
    SELECT "unit" AS of_unit, SUM("price" * "quantity") AS total
    FROM "need" WHERE "removed" = 0 AND "state" <> 'needed' AND "price_currency" IN ('', ?) AND "unit" IN (SELECT "id" FROM page) GROUP BY "unit"
), ends AS (
    SELECT "id", "unit", "started_at", "counted_minutes", COALESCE("ended_at", ?) AS ended
    FROM "clock_span" WHERE "removed" = 0 AND "unit" IN (SELECT "id" FROM page)
), spans AS (
    SELECT "unit", "counted_minutes", ended, "started_at",
        MAX(ended) OVER (PARTITION BY "unit" ORDER BY "started_at", "id" ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING) AS covered
    FROM ends
), clocked AS (
    SELECT "unit" AS of_unit, SUM(COALESCE("counted_minutes", 0)) AS counted,
        SUM(CASE WHEN "counted_minutes" IS NOT NULL OR ended <= COALESCE(covered, "started_at") OR ended <= "started_at" THEN 0
                 ELSE %3 - %4 END) AS measured
    FROM spans GROUP BY "unit"
), besides AS (
    SELECT s."unit" AS of_unit, SUM(s."minutes") AS total
    FROM "step" s WHERE s."removed" = 0 AND s."minutes" IS NOT NULL AND s."unit" IN (SELECT "id" FROM page)
        AND NOT EXISTS (SELECT 1 FROM "clock_span" c WHERE c."unit" = s."unit" AND c."removed" = 0
                        AND s."at" >= c."started_at" AND (s."at" = c."started_at" OR s."at" <= COALESCE(c."ended_at", ?)))
    GROUP BY s."unit"
)
SELECT p."id", p."tag", p."name", p."category", p."kind", p."stage", p."stage_since", p."held_because", p."held_until", p."outcome", p."source_id",
    CAST(COALESCE(m.total, 0) + COALESCE(n.total, 0) AS BIGINT),
    CAST(COALESCE(c.counted, 0) + COALESCE(b.total, 0) AS BIGINT) + (CAST(COALESCE(c.measured, 0) AS BIGINT) + 30000) / 60000,
    (SELECT y."text" FROM "symptom" y WHERE y."unit" = p."id" AND y."removed" = 0 AND y."state" = 'open' ORDER BY y."at" DESC, y."id" DESC LIMIT 1),
    (SELECT 1 FROM "left_off" l WHERE l."unit" = p."id" AND l."removed" = 0 AND l."do_not_power" <> '')
FROM page p LEFT JOIN money m ON m.of_unit = p."id" LEFT JOIN parts n ON n.of_unit = p."id"
    LEFT JOIN clocked c ON c.of_unit = p."id" LEFT JOIN besides b ON b.of_unit = p."id"
ORDER BY p.place_of_stage, p."stage_since" DESC, p."tag" DESC)";

} // namespace

Expected<QList<Row>> readRack(Connection &connection, const QString &currency, const QString &now, const QString &stage, int offset, int limit)
{
    QVariantList values;
    if (!stage.isEmpty())
        values << stage;
    if (limit >= 0)
        values << limit << offset;
    values << currency << currency << currency << now << now;
    const QString from = QStringLiteral("(CASE WHEN covered > \"started_at\" THEN covered ELSE \"started_at\" END)");
    return connection.rows(QString::fromLatin1(rackQuery)
                               .arg(stage.isEmpty() ? QString() : QStringLiteral("AND \"stage\" = ?"),
                                    limit < 0 ? QString() : QStringLiteral("LIMIT ? OFFSET ?"), connection.milliseconds(QStringLiteral("ended")), connection.milliseconds(from)),
                           values);
}

} // namespace ts
