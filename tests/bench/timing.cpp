#include "tests/bench/timing.h"

#include <QElapsedTimer>
#include <QTextStream>

#include <algorithm>

namespace ts::bench {

namespace {

double timed(const std::function<void()> &work)
{
    QElapsedTimer timer;
    timer.start();
    work();
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

double middle(QList<double> values)
{
    std::sort(values.begin(), values.end());
    const auto half = values.size() / 2;
    return values.size() % 2 == 1 ? values.at(half) : (values.at(half - 1) + values.at(half)) / 2;
}

QString shown(double ms)
{
    return ms >= 100 ? QStringLiteral("%1 ms").arg(ms, 0, 'f', 0) : ms >= 1 ? QStringLiteral("%1 ms").arg(ms, 0, 'f', 2)
                                                                           : QStringLiteral("%1 µs").arg(ms * 1000, 0, 'f', 0);
}

} // namespace

double median(int runs, const std::function<void()> &work)
{
    QList<double> times;
    for (int i = 0; i < runs; ++i)
        times << timed(work);
    return middle(times);
}

Pair medians(int runs, const std::function<void()> &ours, const std::function<void()> &floor, int block)
{
    QList<double> a;
    QList<double> b;
    const auto turn = [block](const std::function<void()> &work, QList<double> &times) {
        for (int i = 0; i < block; ++i) {
            const double time = timed(work);
            if (i > 0 || block == 1)
                times << time;
        }
    };
    while (a.size() < runs) {
        turn(ours, a);
        turn(floor, b);
    }
    return {middle(a), middle(b)};
}

void Table::add(const QString &what, const Pair &pair, double aim, const QString &against)
{
    const double ratio = pair.ours / pair.floor;
    const bool met = ratio <= aim;
    m_met = m_met && met;
    m_rows << QStringList{what, shown(pair.ours), shown(pair.floor), QString::number(ratio, 'f', 2), QString::number(aim, 'g', 2), met ? QStringLiteral("yes") : QStringLiteral("NO"),
                          against};
}

void Table::print() const
{
    QList<QStringList> rows = m_rows;
    rows.prepend({QStringLiteral("what"), QStringLiteral("ours"), QStringLiteral("floor"), QStringLiteral("ratio"), QStringLiteral("aim"), QStringLiteral("met"),
                  QStringLiteral("the floor is")});
    QList<qsizetype> widths(rows.first().size(), 0);
    for (const QStringList &row : rows)
        for (qsizetype i = 0; i < row.size(); ++i)
            widths[i] = std::max(widths.at(i), row.at(i).size());
    QTextStream out(stdout);
    for (const QStringList &row : rows) {
        QString line;
        for (qsizetype i = 0; i < row.size(); ++i) {
            const bool number = i >= 1 && i <= 4;
            line += (number ? row.at(i).rightJustified(widths.at(i)) : row.at(i).leftJustified(widths.at(i))) + QStringLiteral("  ");
        }
        out << line.trimmed() << '\n';
    }
    for (const QString &remark : m_remarks)
        out << remark << '\n';
}

} // namespace ts::bench
