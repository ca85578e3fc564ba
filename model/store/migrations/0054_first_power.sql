-- least-program: 54
-- The ladder before and at first power, and what an electrical safety test measured.
-- ;;
CREATE TABLE "rung" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "unit" TEXT NOT NULL REFERENCES "unit" ("id") DEFERRABLE INITIALLY DEFERRED,
    "step" TEXT NOT NULL,
    "came_out" TEXT NOT NULL,
    "saw" TEXT NOT NULL DEFAULT '',
    "asked" TEXT NOT NULL DEFAULT '',
    "value" DOUBLE PRECISION,
    "value_unit" TEXT NOT NULL DEFAULT '',
    "value_sense" TEXT,
    "wanted" TEXT NOT NULL DEFAULT '',
    "uncertainty" DOUBLE PRECISION,
    "meter" TEXT REFERENCES "meter" ("id") DEFERRABLE INITIALLY DEFERRED,
    "meter_name" TEXT NOT NULL DEFAULT '',
    "initials" TEXT NOT NULL DEFAULT ''
);
-- ;;
CREATE INDEX "rung_of_unit" ON "rung" ("unit");
-- ;;
ALTER TABLE "proof" ADD COLUMN "test" TEXT;
-- ;;
ALTER TABLE "proof" ADD COLUMN "value" DOUBLE PRECISION;
-- ;;
ALTER TABLE "proof" ADD COLUMN "value_unit" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "proof" ADD COLUMN "value_sense" TEXT;
-- ;;
ALTER TABLE "proof" ADD COLUMN "wanted" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "proof" ADD COLUMN "limit_source" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "proof" ADD COLUMN "uncertainty" DOUBLE PRECISION;
-- ;;
ALTER TABLE "proof" ADD COLUMN "meter" TEXT REFERENCES "meter" ("id") DEFERRABLE INITIALLY DEFERRED;
