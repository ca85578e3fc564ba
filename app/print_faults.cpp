#include "app/print_faults.h"

#include "model/faults/check_next.h"
#include "model/faults/first_power.h"

#include <cmath>

namespace ts {

namespace {

QString percent(double chance)
{
    return QStringLiteral("%1 %").arg(std::lround(chance * 100));
}

void printBoard(QTextStream &out, const FaultBoard &board, const BenchFile &bench)
{
    out << "\nFault-finding: " << (board.symptom.isNull() ? QStringLiteral("without a symptom") : board.text.simplified())
        << '\n';
    for (const BoardCause &cause : board.causes)
        out << "  " << percent(cause.now).rightJustified(5) << "  before " << percent(cause.before).rightJustified(5) << "  "
            << cause.text.simplified() << "\n                       " << cause.reason << '\n';
    for (const BoardCheck &check : board.checks)
        out << "  check " << check.text.simplified() << ": " << toWord(check.cameOut).replace(QLatin1Char('_'), QLatin1Char(' '))
            << (check.result.isEmpty() ? QString() : QStringLiteral(", ") + check.result.simplified()) << '\n';
    const CheckNext next = checkNext(board, bench.hourlyRate());
    constexpr qsizetype few = 3; // all of them are in --json
    for (const NextMove &move : next.moves.mid(0, few))
        out << "  Next could be: " << move.text << QStringLiteral(", %1 min").arg(std::lround(move.minutes))
            << (*move.savesMinutes >= 0.5 ? QStringLiteral(", saves %1 min").arg(std::lround(*move.savesMinutes)) : QString())
            << ". " << move.leavesText << '\n';
    if (!next.moves.isEmpty())
        out << "  " << next.basis.join(QLatin1Char(' ')) << '\n';
}

} // namespace

void printFaults(QTextStream &out, const UnitFile &file, const BenchFile &bench)
{
    QList<FaultBoard> boards;
    for (const FaultBoard &board : boardsOf(file, bench))
        if (!board.closed() && !board.blank())
            boards << board;
    if (boards.isEmpty())
        return;
    const QList<SafetyStep> due = firstPowerDue(file);
    if (!due.isEmpty())
        out << "\nBefore anything else (local codes and licensed practice come first)\n";
    for (const SafetyStep &step : due)
        out << "  " << step.text << '\n';
    for (const FaultBoard &board : boards)
        printBoard(out, board, bench);
}

} // namespace ts
