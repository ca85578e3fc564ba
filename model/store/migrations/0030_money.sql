-- least-program: 30
-- What a unit's money is worked out from: sales abroad at the rate of their day, how like a sale is, what a fee is for, the three
-- points of a plan and its other ways out, and the decisions that were taken.
-- ;;
ALTER TABLE "comparable" ADD COLUMN "in_bench_currency" BIGINT;
-- ;;
ALTER TABLE "comparable" ADD COLUMN "in_bench_currency_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "comparable" ADD COLUMN "likeness" DOUBLE PRECISION;
-- ;;
ALTER TABLE "fee_rule" ADD COLUMN "kind" TEXT NOT NULL DEFAULT 'commission';
-- ;;
ALTER TABLE "fee_rule" ADD COLUMN "given_back" BIGINT NOT NULL DEFAULT 0;
-- ;;
ALTER TABLE "plan" ADD COLUMN "minutes_low" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "minutes_high" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "parts_low" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "parts_low_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "plan" ADD COLUMN "parts_high" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "parts_high_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "plan" ADD COLUMN "chance" DOUBLE PRECISION;
-- ;;
ALTER TABLE "plan" ADD COLUMN "carriage_charged" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "carriage_charged_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "plan" ADD COLUMN "carriage_in" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "carriage_in_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "plan" ADD COLUMN "days_to_sell" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "parts_value" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "parts_value_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "plan" ADD COLUMN "breaking_minutes" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "return_until" TEXT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "return_refund" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "return_refund_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "plan" ADD COLUMN "return_cost" BIGINT;
-- ;;
ALTER TABLE "plan" ADD COLUMN "return_cost_currency" TEXT NOT NULL DEFAULT '';
-- ;;
CREATE TABLE "decision" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "unit" TEXT NOT NULL REFERENCES "unit" ("id") DEFERRABLE INITIALLY DEFERRED,
    "way" TEXT NOT NULL,
    "asked" TEXT NOT NULL,
    "reason" TEXT NOT NULL DEFAULT '',
    "figures" TEXT NOT NULL DEFAULT '',
    "minutes" BIGINT NOT NULL DEFAULT 0
);
-- ;;
CREATE INDEX "decision_of_unit" ON "decision" ("unit");
