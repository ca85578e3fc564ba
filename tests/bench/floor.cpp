#include "tests/bench/floor.h"

#include <sqlite3.h>

#include <QRandomGenerator>

#include <cstdio>

namespace ts::bench {

namespace {

std::string text(sqlite3_stmt *row, int column)
{
    const auto *bytes = reinterpret_cast<const char *>(sqlite3_column_text(row, column));
    return bytes ? std::string(bytes, static_cast<size_t>(sqlite3_column_bytes(row, column))) : std::string();
}

void bind(sqlite3_stmt *statement, int at, const QByteArray &value)
{
    sqlite3_bind_text(statement, at, value.constData(), static_cast<int>(value.size()), SQLITE_STATIC);
}

} // namespace

Floor::Floor(const QByteArray &file) : m_salt(QRandomGenerator::global()->generate())
{
    if (sqlite3_open_v2(file.constData(), &m_database, SQLITE_OPEN_READWRITE, nullptr) != SQLITE_OK)
        qFatal("%s cannot be opened", file.constData());
    sqlite3_busy_timeout(m_database, 8000);
    for (const char *pragma : {"PRAGMA foreign_keys = ON", "PRAGMA trusted_schema = OFF", "PRAGMA synchronous = FULL", "PRAGMA cache_size = -32768",
                               "PRAGMA temp_store = MEMORY"})
        run(pragma);
}

Floor::~Floor()
{
    for (const auto &[sql, statement] : m_statements)
        sqlite3_finalize(statement);
    sqlite3_close(m_database);
}

void Floor::run(const char *sql)
{
    char *wrong = nullptr;
    if (sqlite3_exec(m_database, sql, nullptr, nullptr, &wrong) != SQLITE_OK)
        qFatal("%s: %s", sql, wrong);
}

sqlite3_stmt *Floor::statement(const QByteArray &sql)
{
    for (const auto &[known, statement] : m_statements)
        if (known.size() == sql.size() && (known.constData() == sql.constData() || known == sql))
            return statement;
    sqlite3_stmt *fresh = nullptr;
    if (sqlite3_prepare_v3(m_database, sql.constData(), static_cast<int>(sql.size()), SQLITE_PREPARE_PERSISTENT, &fresh, nullptr) != SQLITE_OK)
        qFatal("%s: %s", sql.constData(), sqlite3_errmsg(m_database));
    m_statements.emplace_back(sql, fresh);
    return fresh;
}

void Floor::finish(sqlite3_stmt *statement)
{
    if (sqlite3_step(statement) != SQLITE_DONE)
        qFatal("%s", sqlite3_errmsg(m_database));
    sqlite3_reset(statement);
}

std::vector<std::vector<Floor::Record>> Floor::unit(const QByteArrayList &statements, const QByteArray &unit)
{
    std::vector<std::vector<Record>> lists;
    lists.reserve(static_cast<size_t>(statements.size()));
    run("BEGIN");
    for (const QByteArray &sql : statements) {
        std::vector<Record> records;
        sqlite3_stmt *row = statement(sql);
        bind(row, 1, unit);
        const int columns = sqlite3_column_count(row);
        while (sqlite3_step(row) == SQLITE_ROW) {
            Record &record = records.emplace_back();
            size_t texts = 0;
            size_t numbers = 0;
            size_t reals = 0;
            for (int i = 0; i < columns; ++i) {
                switch (sqlite3_column_type(row, i)) {
                case SQLITE_INTEGER:
                    record.numbers[numbers++] = sqlite3_column_int64(row, i);
                    break;
                case SQLITE_FLOAT:
                    record.reals[reals++] = sqlite3_column_double(row, i);
                    break;
                case SQLITE_TEXT:
                    record.texts[texts++] = text(row, i);
                    break;
                default:
                    break;
                }
            }
        }
        sqlite3_reset(row);
        lists.push_back(std::move(records));
    }
    run("COMMIT");
    return lists;
}

std::vector<Floor::Hit> Floor::search(const QByteArray &words, int limit)
{
    std::vector<Hit> hits;
    static const QByteArray sql("SELECT e.kind, e.record, e.unit, u.\"tag\", u.\"name\", e.shown FROM (SELECT rowid AS hit FROM search WHERE search MATCH ? "
                                "ORDER BY rowid DESC LIMIT ?) AS s JOIN search_entry e ON e.number = s.hit LEFT JOIN \"unit\" u ON u.\"id\" = e.unit "
                                "ORDER BY e.number DESC");
    for (const QByteArray &match : {QByteArray("(kind : unit) AND (words : (\"" + words + "\" *))"), QByteArray("(words : (\"" + words + "\" *)) NOT (kind : unit)")}) {
        const int left = limit - static_cast<int>(hits.size());
        if (left <= 0)
            break;
        sqlite3_stmt *row = statement(sql);
        bind(row, 1, match);
        sqlite3_bind_int(row, 2, left);
        while (sqlite3_step(row) == SQLITE_ROW)
            hits.push_back({text(row, 0), text(row, 1), text(row, 2), text(row, 4), text(row, 5), sqlite3_column_int64(row, 3)});
        sqlite3_reset(row);
    }
    return hits;
}

void Floor::jot(const QByteArray &unit, const QByteArray &name, const QByteArray &json)
{
    static const QByteArray addReading("INSERT INTO \"reading\" (\"id\", \"version\", \"at\", \"unit\", \"name\", \"value\", \"value_unit\", \"value_sense\", \"wanted\", "
                                       "\"phase\") VALUES (?, 1, '2026-11-25T09:00:00.000Z', ?, ?, 11.92, 'V', 'plain', '12 V 5%', 'during_work')");
    static const QByteArray addEntry("INSERT INTO search_entry (record, unit, kind, shown, words) VALUES (?, ?, 'reading', ?, ?)");
    static const QByteArray addWords("INSERT INTO search (rowid, kind, words) VALUES (?, 'reading', ?)");
    static const QByteArray addLine("INSERT INTO journal (at, who, sentence) VALUES ('2026-11-25T09:00:00.000Z', 'bench', ?)");
    static const QByteArray addItem("INSERT INTO journal_item (journal, position, kind, record, unit, after) VALUES (?, 0, 'reading', ?, ?, ?)");
    std::array<char, 40> id{};
    ++m_jots;
    std::snprintf(id.data(), id.size(), "%08x-%04x-7000-8000-%012x", m_salt, m_jots & 0xffff, m_jots);
    const QByteArray record(id.data());
    run("BEGIN IMMEDIATE");
    sqlite3_stmt *reading = statement(addReading);
    bind(reading, 1, record);
    bind(reading, 2, unit);
    bind(reading, 3, name);
    finish(reading);
    sqlite3_stmt *entry = statement(addEntry);
    bind(entry, 1, record);
    bind(entry, 2, unit);
    bind(entry, 3, name);
    bind(entry, 4, name);
    finish(entry);
    sqlite3_stmt *words = statement(addWords);
    sqlite3_bind_int64(words, 1, sqlite3_last_insert_rowid(m_database));
    bind(words, 2, name);
    finish(words);
    sqlite3_stmt *line = statement(addLine);
    bind(line, 1, name);
    finish(line);
    sqlite3_stmt *item = statement(addItem);
    sqlite3_bind_int64(item, 1, sqlite3_last_insert_rowid(m_database));
    bind(item, 2, record);
    bind(item, 3, unit);
    bind(item, 4, json);
    finish(item);
    run("COMMIT");
}

} // namespace ts::bench
