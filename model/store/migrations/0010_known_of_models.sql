-- least-program: 10
-- What is known of a model, as records; where a cause's weight comes from; what a good unit shows at a check.
-- ;;
ALTER TABLE "cause" ADD COLUMN "weight_from" TEXT NOT NULL DEFAULT '';
-- ;;
ALTER TABLE "check" ADD COLUMN "wanted" TEXT NOT NULL DEFAULT '';
-- ;;
CREATE TABLE "known_cause" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "symptom" TEXT NOT NULL DEFAULT '',
    "text" TEXT NOT NULL DEFAULT '',
    "weight" DOUBLE PRECISION,
    "fix_minutes" BIGINT,
    "fix_cost" BIGINT,
    "fix_cost_currency" TEXT NOT NULL DEFAULT '',
    "fix_odds" DOUBLE PRECISION,
    "note" TEXT NOT NULL DEFAULT ''
);
-- ;;
CREATE INDEX "known_cause_of_notes" ON "known_cause" ("model_notes");
-- ;;
CREATE TABLE "known_check" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "symptom" TEXT NOT NULL DEFAULT '',
    "text" TEXT NOT NULL DEFAULT '',
    "minutes" BIGINT,
    "wanted" TEXT NOT NULL DEFAULT ''
);
-- ;;
CREATE INDEX "known_check_of_notes" ON "known_check" ("model_notes");
-- ;;
CREATE TABLE "known_mark" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "check" TEXT NOT NULL REFERENCES "known_check" ("id") DEFERRABLE INITIALLY DEFERRED,
    "cause" TEXT NOT NULL REFERENCES "known_cause" ("id") DEFERRABLE INITIALLY DEFERRED,
    "abnormal_if" DOUBLE PRECISION NOT NULL DEFAULT 0,
    "abnormal_if_not" DOUBLE PRECISION NOT NULL DEFAULT 0
);
-- ;;
CREATE INDEX "known_mark_of_notes" ON "known_mark" ("model_notes");
-- ;;
CREATE TABLE "known_teardown" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "position" BIGINT NOT NULL DEFAULT 0,
    "what" TEXT NOT NULL DEFAULT '',
    "fasteners" TEXT NOT NULL DEFAULT '',
    "fastener_count" BIGINT,
    "connectors" TEXT NOT NULL DEFAULT '',
    "springs" TEXT NOT NULL DEFAULT '',
    "marks" TEXT NOT NULL DEFAULT '',
    "caution" TEXT NOT NULL DEFAULT ''
);
-- ;;
CREATE INDEX "known_teardown_of_notes" ON "known_teardown" ("model_notes");
-- ;;
CREATE TABLE "known_part" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "position" TEXT NOT NULL DEFAULT '',
    "text" TEXT NOT NULL DEFAULT '',
    "rating" TEXT NOT NULL DEFAULT '',
    "quantity" BIGINT NOT NULL DEFAULT 0,
    "note" TEXT NOT NULL DEFAULT ''
);
-- ;;
CREATE INDEX "known_part_of_notes" ON "known_part" ("model_notes");
-- ;;
CREATE TABLE "known_proof" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "text" TEXT NOT NULL DEFAULT '',
    "kind" TEXT NOT NULL,
    "position" BIGINT NOT NULL DEFAULT 0
);
-- ;;
CREATE INDEX "known_proof_of_notes" ON "known_proof" ("model_notes");
-- ;;
CREATE TABLE "known_paper" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "version" BIGINT NOT NULL DEFAULT 0,
    "at" TEXT NOT NULL,
    "removed" BIGINT NOT NULL DEFAULT 0,
    "model_notes" TEXT NOT NULL REFERENCES "model_notes" ("id") DEFERRABLE INITIALLY DEFERRED,
    "title" TEXT NOT NULL DEFAULT '',
    "link" TEXT NOT NULL DEFAULT '',
    "sha256" TEXT NOT NULL DEFAULT '',
    "format" TEXT NOT NULL DEFAULT ''
);
-- ;;
CREATE INDEX "known_paper_of_notes" ON "known_paper" ("model_notes");
