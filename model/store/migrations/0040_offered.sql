-- least-program: 40
-- Where a unit is offered and what is asked for it, and the same of each move to that stage.
-- ;;
ALTER TABLE "unit" ADD COLUMN "channel" TEXT REFERENCES "channel" ("id") DEFERRABLE INITIALLY DEFERRED;
-- ;;
ALTER TABLE "unit" ADD COLUMN "asked" BIGINT;
-- ;;
ALTER TABLE "unit" ADD COLUMN "asked_currency" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "stage_move" ADD COLUMN "channel" TEXT REFERENCES "channel" ("id") DEFERRABLE INITIALLY DEFERRED;
-- ;;
ALTER TABLE "stage_move" ADD COLUMN "asked" BIGINT;
-- ;;
ALTER TABLE "stage_move" ADD COLUMN "asked_currency" TEXT NOT NULL DEFAULT '';
