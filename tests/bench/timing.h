#pragma once

#include <QList>
#include <QString>

#include <functional>

namespace ts::bench {

/// The middle of how long `work` took, in milliseconds, over so many runs.
[[nodiscard]] double median(int runs, const std::function<void()> &work);

/// Ours and the floor, run in turn so that a busy moment hits both.
struct Pair {
    double ours = 0;
    double floor = 0;
};
/// `block`: how many of one before it is the other's turn; the first of a block is not counted where there are several.
[[nodiscard]] Pair medians(int runs, const std::function<void()> &ours, const std::function<void()> &floor, int block = 1);

/// One table, printed when all is measured.
class Table {
public:
    /// aim: at most so many times the floor.
    void add(const QString &what, const Pair &pair, double aim, const QString &against = QStringLiteral("plain calls"));
    void remark(const QString &line) { m_remarks << line; }
    void print() const;
    [[nodiscard]] bool allMet() const { return m_met; }

private:
    QList<QStringList> m_rows;
    QStringList m_remarks;
    bool m_met = true;
};

} // namespace ts::bench
