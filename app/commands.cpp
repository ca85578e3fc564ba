#include "app/commands.h"

namespace ts {

const QList<Command> &commands()
{
    static const QList<Command> all{
        {QStringLiteral("new"), QStringLiteral("BOOK"), QStringLiteral("an empty workbook"), false, runNew},
        {QStringLiteral("demo"), QStringLiteral("BOOK [--units N --seed S]"),
         QStringLiteral("the demo workbook, or a large one for measuring"), true, runDemo},
        {QStringLiteral("take-in"),
         QStringLiteral("BOOK --name N --category C [--maker M] [--model M] [--serial S] [--year Y] [--mains \"230 V 50 Hz\"] "
                        "[--class I|II|III] [--claim T] "
                        "[--paid 30.00] [--carriage 8.40] [--kind to_sell|owners|to_keep] [--owner NAME] [--place P] [--stage S] "
                        "[--accessories T] "
                        "[--looks T] [--function T] [--earlier-work T]"),
         QStringLiteral("takes a unit in and prints its tag"), false, runTakeIn},
        {QStringLiteral("jot"), QStringLiteral("BOOK TAG LINE"), QStringLiteral("records one line as typed in the Log"), false,
         runJot},
        {QStringLiteral("photo"), QStringLiteral("BOOK TAG FILE… [--phase found|during|leaves] [--caption T]"),
         QStringLiteral("keeps photos of a unit"), true, runPhoto},
        {QStringLiteral("stage"), QStringLiteral("BOOK TAG STAGE [--because T] [--until DATE] [--outcome O]"),
         QStringLiteral("moves a unit to a stage"), false, runStage},
        {QStringLiteral("bring-in"), QStringLiteral("BOOK TAG faults|notes|teardown [--for SYMPTOM] [--of TAG]"),
         QStringLiteral("usual causes and checks, what the model's notes know, or another unit's teardown"), false, runBringIn},
        {QStringLiteral("learn"), QStringLiteral("BOOK TAG"), QStringLiteral("what was found on a unit into its model's notes"), false,
         runLearn},
        {QStringLiteral("undo"), QStringLiteral("BOOK"), QStringLiteral("takes the last change back"), false, runUndo},
        {QStringLiteral("redo"), QStringLiteral("BOOK"), QStringLiteral("does it again"), false, runRedo},
        {QStringLiteral("show"), QStringLiteral("BOOK [TAG] [--json]"), QStringLiteral("the rack, or all of one unit"), false,
         runShow},
        {QStringLiteral("bench"), QStringLiteral("BOOK [--json]"), QStringLiteral("what to work on today, and why"), false,
         runBench},
        {QStringLiteral("decide"), QStringLiteral("BOOK TAG WAY [--because T]"),
         QStringLiteral("records which way out was chosen, with the figures: finish_and_sell, sell_as_it_stands …"), false,
         runDecide},
        {QStringLiteral("paper"), QStringLiteral("BOOK TAG|all KIND -o FILE.pdf|FILE.html [--size A4|Letter|62x29 …] [--boxes N] [--bags] [--edition N]"),
         QStringLiteral("writes a paper and keeps it; with --edition, one that was kept, as it was handed over"), true, runPaper},
        {QStringLiteral("judge"),
         QStringLiteral("--want LIMIT [--meter SPEC | --uncertainty U95 | --standard-uncertainty U] [--json] -- VALUE"),
         QStringLiteral("a verdict, without a workbook"), false, runJudge},
        {QStringLiteral("reckon"), QStringLiteral("[SUM key=value …] [--json]"),
         QStringLiteral("a sum by itself; alone, lists them"), false, runReckon},
        {QStringLiteral("meter"), QStringLiteral("ADDRESS [--within SECONDS] [--json] | simulate [--port N] [--value V] [--function F] [--fault F,F]"),
         QStringLiteral("who a meter is and one settled reading, over SCPI; or a simulated meter to try it with"), false, runMeter},
        {QStringLiteral("sound"), QStringLiteral("FILE --test T [--json]"),
         QStringLiteral("measures a recording (not in this version)"), false, runSound},
        {QStringLiteral("import"), QStringLiteral("BOOK FILE --as KIND [--dry-run] [--map \"Their column=ours\"]"),
         QStringLiteral("units, comparables, open-repair-data, json, model-notes, fault-tables"), false, runImport},
        {QStringLiteral("export"), QStringLiteral("BOOK --as KIND -o FILE [--model \"MAKER MODEL\"]"),
         QStringLiteral("csv, json, open-repair-data, model-notes, fault-tables"), false,
         runExport},
        {QStringLiteral("set"), QStringLiteral("BOOK [NAME VALUE]"),
         QStringLiteral("lists the settings, or sets one: bench_name, terms, hourly_rate …"), false, runSet},
        {QStringLiteral("verify"), QStringLiteral("BOOK"), QStringLiteral("says whether it is sound, and what is not"), false,
         runVerify},
        {QStringLiteral("backup"), QStringLiteral("BOOK -o FILE"), QStringLiteral("a checked copy"), false, runBackup},
    };
    return all;
}

} // namespace ts
