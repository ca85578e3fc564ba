#include "model/sums/soaking/thinning.h"

#include <algorithm>
#include <array>

namespace ts {

namespace {

/// The four points of a column that a line through all of it touches.
class Column {
public:
    void take(qsizetype i, double y)
    {
        if (m_count++ == 0) {
            m_first = m_lowest = m_highest = i;
            m_low = m_high = y;
        }
        if (y < m_low) {
            m_low = y;
            m_lowest = i;
        }
        if (y > m_high) {
            m_high = y;
            m_highest = i;
        }
        m_last = i;
    }
    void pourInto(QList<QPointF> &kept, const QList<QPointF> &points)
    {
        if (m_count == 0)
            return;
        std::array places{m_first, m_lowest, m_highest, m_last};
        std::sort(places.begin(), places.end());
        qsizetype before = -1;
        for (const qsizetype place : places)
            if (std::exchange(before, place) != place)
                kept << points.at(place);
        m_count = 0;
    }

private:
    qsizetype m_count = 0;
    qsizetype m_first = 0, m_lowest = 0, m_highest = 0, m_last = 0;
    double m_low = 0, m_high = 0;
};

} // namespace

QList<QPointF> thinned(const QList<QPointF> &points, double from, double to, int columns)
{
    columns = std::max(1, columns);
    const auto byX = [](const QPointF &point, double x) { return point.x() < x; };
    const auto begin = std::lower_bound(points.begin(), points.end(), from, byX);
    const auto end = std::upper_bound(begin, points.end(), to, [](double x, const QPointF &point) { return x < point.x(); });
    const qsizetype first = std::max<qsizetype>(0, begin - points.begin() - 1);
    const qsizetype past = std::min(points.size(), end - points.begin() + 1);
    if (past - first <= 4LL * columns + 2 || !(to > from))
        return points.mid(first, past - first);
    QList<QPointF> kept;
    kept.reserve(4LL * columns + 2);
    if (begin != points.begin())
        kept << *(begin - 1);
    const double perColumn = columns / (to - from);
    Column column;
    int at = 0;
    for (qsizetype i = begin - points.begin(); i < end - points.begin(); ++i) {
        const int its = std::min(columns - 1, static_cast<int>((points.at(i).x() - from) * perColumn));
        if (its != at) {
            column.pourInto(kept, points);
            at = its;
        }
        column.take(i, points.at(i).y());
    }
    column.pourInto(kept, points);
    if (end != points.end())
        kept << *end;
    return kept;
}

} // namespace ts
