-- least-program: 1
-- Which clock runs is looked for at every start, among the spans of all years.
-- ;;
CREATE INDEX "clock_span_running" ON "clock_span" ("at", "id") WHERE "removed" = 0 AND "ended_at" IS NULL;
