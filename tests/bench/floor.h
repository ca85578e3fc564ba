#pragma once

#include <QByteArray>
#include <QByteArrayList>

#include <array>
#include <string>
#include <vector>

struct sqlite3;
struct sqlite3_stmt;

namespace ts::bench {

/// What the program does with a workbook, written as plainly as it can be: SQLite's C calls, statements prepared once,
/// results into plain structs of strings and numbers. Nothing is parsed, checked or told to anybody.
class Floor {
public:
    explicit Floor(const QByteArray &file);
    ~Floor();
    Floor(const Floor &) = delete;
    Floor &operator=(const Floor &) = delete;

    struct Record {
        std::array<std::string, 32> texts;
        std::array<qint64, 16> numbers;
        std::array<double, 8> reals;
    };
    /// The records of all `statements` whose one value is the unit.
    [[nodiscard]] std::vector<std::vector<Record>> unit(const QByteArrayList &statements, const QByteArray &unit);

    struct Hit {
        std::string kind, record, unit, name, shown;
        qint64 tag;
    };
    /// `words`: what is typed, one word of plain letters.
    [[nodiscard]] std::vector<Hit> search(const QByteArray &words, int limit);

    /// The rows of one reading that is jotted, in one transaction: record, search entry and its words, journal line and item.
    void jot(const QByteArray &unit, const QByteArray &name, const QByteArray &json);

    void run(const char *sql);
    /// A statement of this text, prepared once.
    [[nodiscard]] sqlite3_stmt *statement(const QByteArray &sql);
    /// Steps a statement that gives no rows.
    void finish(sqlite3_stmt *statement);

private:
    sqlite3 *m_database = nullptr;
    std::vector<std::pair<QByteArray, sqlite3_stmt *>> m_statements;
    quint32 m_salt; ///< ids of this run
    quint32 m_jots = 0;
};

} // namespace ts::bench
