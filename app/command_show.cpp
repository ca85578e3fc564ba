// show: the rack, or all of one unit with what is computed from it.
#include "app/commands.h"
#include "app/money_facts.h"
#include "app/print_faults.h"
#include "app/safety_document.h"
#include "app/unit_document.h"

#include "model/records/stage_change.h"
#include "model/records/tag_text.h"
#include "model/sums/standing.h"
#include "model/sums/timeline.h"
#include "model/worth/money_asked.h"

namespace ts {

namespace {

void printRack(QTextStream &out, const QList<RackRow> &rack)
{
    std::optional<Stage> stage;
    for (const RackRow &row : rack) {
        if (stage != row.stage) {
            stage = row.stage;
            out << (row.stage == Stage::Bench ? QStringLiteral("On the bench") : stageText(row.stage)) << '\n';
        }
        out << "  " << tagText(row.tag) << "  " << row.name.simplified().left(44).leftJustified(44) << "  "
            << row.spent.display().rightJustified(10) << "  " << durationText(static_cast<int>(row.minutes)).rightJustified(9);
        if (row.doNotPower)
            out << "  do not power";
        else if (row.stage == Stage::Held)
            out << "  " << row.heldBecause.simplified().left(40);
        else if (!row.symptom.isEmpty())
            out << "  " << row.symptom.simplified().left(40);
        out << '\n';
    }
    out << (rack.size() == 1 ? QStringLiteral("1 unit") : QStringLiteral("%1 units").arg(rack.size())) << '\n';
}

void printStanding(QTextStream &out, const Standing &stand)
{
    if (!stand.doNotPower.isEmpty())
        out << "Do not power: " << stand.doNotPower << '\n';
    if (!stand.next.isEmpty())
        out << "Next: " << stand.next << '\n';
    QStringList loose;
    for (const TeardownItem &item : stand.loose)
        loose << item.what;
    if (!stand.otherLoose.isEmpty())
        loose << stand.otherLoose;
    if (!loose.isEmpty())
        out << "Loose: " << loose.join(QStringLiteral(", "))
            << (stand.counted.count > 0 ? QStringLiteral(" (%1)").arg(stand.counted.text()) : QString()) << '\n';
    for (const Symptom &symptom : stand.openSymptoms)
        out << "Open symptom: " << symptom.text << '\n';
    for (const OutOfSpec &point : stand.outside)
        out << "Outside: " << point.reading.name << '\n';
    for (const OutOfSpec &point : stand.tooClose)
        out << "Too close to call: " << point.reading.name << '\n';
    for (const Need &need : stand.awaited)
        out << "Part " << toWord(need.state) << ": " << need.text << '\n';
}

/// How many proofs from an entry on only say that they are to be made: a list that came in with the unit.
qsizetype untestedFrom(const QList<Event> &events, qsizetype first)
{
    const auto untested = [](const Event &event) {
        return event.what == EventKind::Proof && event.text.startsWith(QLatin1String("Proof not tested: "));
    };
    qsizetype end = first;
    while (end < events.size() && untested(events.at(end)) && events.at(first).at.secsTo(events.at(end).at) < 60)
        ++end;
    return end - first;
}

void printLog(QTextStream &out, const QList<Event> &events)
{
    QDate day;
    for (qsizetype i = 0; i < events.size(); ++i) {
        const Event &event = events.at(i);
        const QDateTime local = event.at.toLocalTime();
        if (local.date() != day) {
            day = local.date();
            out << '\n' << QLocale(QLocale::English).toString(day, QStringLiteral("dddd d MMMM yyyy")) << '\n';
        }
        out << "  " << local.toString(QStringLiteral("HH:mm")) << "  ";
        if (const qsizetype untested = untestedFrom(events, i); untested > 1) {
            out << untested << " proofs to be made before handover\n";
            i += untested - 1;
            continue;
        }
        out << event.text;
        if (event.verdict && *event.verdict != Verdict::NoLimit)
            out << " [" << verdictText(*event.verdict) << ']';
        if (!event.detail.isEmpty())
            out << "\n         " << event.detail;
        out << '\n';
    }
}

/// "Closed: sold", "Held, waiting for belt until 2026-11-28".
QString stageLine(const Unit &unit)
{
    QString line = stageText(unit.stage);
    if (unit.outcome)
        line += QStringLiteral(": ") + toWord(*unit.outcome).replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!unit.heldBecause.isEmpty())
        line += QStringLiteral(", waiting for ") + unit.heldBecause;
    if (unit.heldUntil.isValid())
        line += QStringLiteral(" until ") + unit.heldUntil.toString(Qt::ISODate);
    return line;
}

void printUnit(QTextStream &out, const UnitFile &file, const BenchFile &bench, const UnitMoney &money)
{
    const Unit &unit = file.unit;
    out << tagText(unit.tag) << "  " << unit.name << "  (" << stageLine(unit) << ")\n";
    QStringList identity;
    if (!unit.serial.isEmpty())
        identity << QStringLiteral("serial ") + unit.serial;
    if (!unit.mains.isEmpty())
        identity << unit.mains;
    if (unit.protectionClass)
        identity << QStringLiteral("class ") + toWord(*unit.protectionClass);
    if (!unit.place.isEmpty())
        identity << unit.place;
    if (!identity.isEmpty())
        out << identity.join(QStringLiteral(" · ")) << '\n';
    if (!unit.claim.isEmpty())
        out << "Said to be: " << unit.claim << '\n';
    const Standing stand = standing(file, bench);
    printStanding(out, stand);
    printLog(out, timeline(file, bench));
    printFaults(out, file, bench);
    printSafety(out, file, bench);
    const CostSheet &sheet = money.sheet;
    out << "\nHours to date: " << durationText(sheet.hours.minutes()) << '\n';
    for (const CostLine &line : sheet.lines)
        if (line.toDate)
            out << "  " << line.text.leftJustified(36) << line.toDate->display().rightJustified(12) << '\n';
    for (const QString &remark : sheet.remarks)
        out << "  " << remark << '\n';
    printMoney(out, money);
    if (!stand.cautions.isEmpty())
        out << "\nCautions\n";
    for (const QString &caution : stand.cautions)
        out << "  " << caution << '\n';
}

} // namespace

Exit runShow(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("json"));
    if (auto read = options.read(run.arguments(), 1, 2); !read)
        return run.misuse(read.trouble().sentence());
    const bool json = options.has(QStringLiteral("json"));
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    if (options.places().size() == 1) {
        const auto rack = (*desk)->rack();
        if (!rack)
            return run.refuse(rack.trouble());
        if (json)
            run.print(rackDocument(*rack, bench->currency()));
        else
            printRack(run.out(), *rack);
        return Exit::Done;
    }
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto file = (*desk)->unitFile(*id);
    if (!file)
        return run.refuse(file.trouble());
    const auto asked = moneyQuestion(**desk, *file, *bench, run.clock().now());
    if (!asked)
        return run.refuse(asked.trouble());
    const UnitMoney money = unitMoney(*asked);
    if (json)
        run.print(unitDocument(*file, *bench, money, run.clock().now()));
    else
        printUnit(run.out(), *file, *bench, money);
    return Exit::Done;
}

} // namespace ts
