#include "tests/bench/rack_floor.h"

#include <sqlite3.h>

#include <algorithm>
#include <string_view>
#include <unordered_map>

namespace ts::bench {

namespace {

std::string_view view(sqlite3_stmt *row, int column)
{
    const auto *bytes = reinterpret_cast<const char *>(sqlite3_column_text(row, column));
    return bytes ? std::string_view(bytes, static_cast<size_t>(sqlite3_column_bytes(row, column))) : std::string_view();
}

/// Milliseconds of "2026-11-25T09:00:00.000Z" since the beginning of 1970; the days by the usual count from March on.
qint64 instant(std::string_view text)
{
    const auto number = [text](size_t from, size_t length) {
        qint64 value = 0;
        for (const char digit : text.substr(from, length))
            value = value * 10 + (digit - '0');
        return value;
    };
    if (text.size() < 24)
        return 0;
    qint64 year = number(0, 4);
    const qint64 month = number(5, 2);
    year -= month <= 2 ? 1 : 0;
    const qint64 century = year / 400;
    const qint64 yearOf = year - century * 400;
    const qint64 dayOf = (153 * (month > 2 ? month - 3 : month + 9) + 2) / 5 + number(8, 2) - 1;
    const qint64 days = century * 146097 + yearOf * 365 + yearOf / 4 - yearOf / 100 + dayOf - 719468;
    return (((days * 24 + number(11, 2)) * 60 + number(14, 2)) * 60 + number(17, 2)) * 1000 + number(20, 3);
}

struct Span {
    qint64 from, to, counted; ///< counted below 0: not set
    std::string id;
};

qint64 clocked(std::vector<Span> &spans)
{
    std::sort(spans.begin(), spans.end(), [](const Span &a, const Span &b) { return a.from != b.from ? a.from < b.from : a.id < b.id; });
    qint64 sum = 0;
    qint64 counted = 0;
    qint64 latest = spans.empty() ? 0 : spans.front().from;
    for (const Span &span : spans) {
        if (span.counted >= 0)
            counted += span.counted;
        else
            sum += std::max<qint64>(0, span.to - std::max(span.from, latest));
        latest = std::max(latest, span.to);
    }
    return (sum + 30000) / 60000 + counted;
}

} // namespace

std::vector<RackFloorRow> rackFloor(Floor &book, const std::string &currency, const std::string &now)
{
    static const std::vector<std::string_view> order{"bench", "held", "proving", "ready", "offered", "shelved", "inbound", "scouted", "closed"};
    std::vector<RackFloorRow> rows;
    rows.reserve(16384);
    std::unordered_map<std::string_view, size_t> at;
    at.reserve(16384);
    sqlite3_stmt *row = book.statement("SELECT \"id\", \"tag\", \"name\", \"category\", \"kind\", \"stage\", \"stage_since\", \"held_because\", \"held_until\", "
                                       "\"outcome\", \"source_id\" FROM \"unit\" WHERE \"removed\" = 0");
    const auto text = [&row](int column) { return std::string(view(row, column)); };
    while (sqlite3_step(row) == SQLITE_ROW) {
        RackFloorRow unit{text(0), text(2), text(3), text(4), text(5), text(6), text(7), text(8), text(9), text(10), {}, sqlite3_column_int64(row, 1), 0, 0, 0, false};
        unit.place = static_cast<int>(std::find(order.begin(), order.end(), unit.stage) - order.begin());
        rows.push_back(std::move(unit));
    }
    for (size_t i = 0; i < rows.size(); ++i)
        at.emplace(rows[i].id, i); // a view of a text that does not move before the end
    const auto each = [&](const char *sql, const auto &use) {
        row = book.statement(sql);
        while (sqlite3_step(row) == SQLITE_ROW)
            if (const auto found = at.find(view(row, 0)); found != at.end())
                use(found->second);
        sqlite3_reset(row);
    };
    const auto ours = [&](int column) { return view(row, column).empty() || view(row, column) == currency; };
    each("SELECT \"unit\", \"flow\", \"kind\", \"amount\", \"amount_currency\", \"in_bench_currency\", \"in_bench_currency_currency\" FROM \"spend\" "
         "WHERE \"removed\" = 0", [&](size_t unit) {
        const int sign = view(row, 1) == "out" ? 1 : view(row, 2) == "refund" ? -1 : 0;
        if (sqlite3_column_type(row, 3) != SQLITE_NULL)
            rows[unit].spent += sign * (ours(4) ? sqlite3_column_int64(row, 3) : ours(6) ? sqlite3_column_int64(row, 5) : 0);
    });
    each("SELECT \"unit\", \"price\", \"quantity\", \"price_currency\" FROM \"need\" WHERE \"removed\" = 0 AND \"state\" <> 'needed'", [&](size_t unit) {
        if (ours(3))
            rows[unit].spent += sqlite3_column_int64(row, 1) * sqlite3_column_int64(row, 2);
    });
    std::vector<std::vector<Span>> spans(rows.size());
    each("SELECT \"unit\", \"started_at\", \"ended_at\", \"counted_minutes\", \"id\" FROM \"clock_span\" WHERE \"removed\" = 0", [&](size_t unit) {
        const qint64 from = instant(view(row, 1));
        const qint64 to = instant(sqlite3_column_type(row, 2) == SQLITE_NULL ? std::string_view(now) : view(row, 2));
        spans[unit].push_back({from, std::max(from, to), sqlite3_column_type(row, 3) == SQLITE_NULL ? -1 : sqlite3_column_int64(row, 3), std::string(view(row, 4))});
    });
    for (size_t i = 0; i < rows.size(); ++i)
        rows[i].minutes = clocked(spans[i]);
    each("SELECT \"unit\", \"at\", \"minutes\" FROM \"step\" WHERE \"removed\" = 0 AND \"minutes\" IS NOT NULL", [&](size_t unit) {
        const qint64 when = instant(view(row, 1));
        if (std::none_of(spans[unit].begin(), spans[unit].end(), [when](const Span &span) { return span.from <= when && when <= span.to; }))
            rows[unit].minutes += sqlite3_column_int64(row, 2);
    });
    std::vector<std::string> newest(rows.size());
    each("SELECT \"unit\", \"text\", \"at\", \"id\" FROM \"symptom\" WHERE \"removed\" = 0 AND \"state\" = 'open'", [&](size_t unit) {
        std::string when = text(2) + text(3);
        if (newest[unit] < when) {
            newest[unit] = std::move(when);
            rows[unit].symptom = text(1);
        }
    });
    each("SELECT \"unit\" FROM \"left_off\" WHERE \"removed\" = 0 AND \"do_not_power\" <> ''", [&](size_t unit) { rows[unit].doNotPower = true; });
    at.clear();
    std::sort(rows.begin(), rows.end(), [](const RackFloorRow &a, const RackFloorRow &b) {
        return a.place != b.place ? a.place < b.place : a.since != b.since ? a.since > b.since : a.tag > b.tag;
    });
    return rows;
}

} // namespace ts::bench
