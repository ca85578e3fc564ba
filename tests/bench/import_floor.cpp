#include "tests/bench/import_floor.h"

#include "tests/bench/floor.h"

#include <sqlite3.h>

namespace ts::bench {

ImportFloor::ImportFloor(const QByteArray &file, const QByteArrayList &tables)
{
    Floor book(file);
    for (const QByteArray &name : tables) {
        sqlite3_stmt *row = book.statement("SELECT * FROM \"" + name + "\"");
        const int columns = sqlite3_column_count(row);
        QByteArrayList names;
        QByteArrayList marks;
        for (int i = 0; i < columns; ++i) {
            names << '"' + QByteArray(sqlite3_column_name(row, i)) + '"';
            marks << "?";
        }
        // The counter's rows are there already where the workbook has been made.
        Table table{name, "INSERT OR REPLACE INTO \"" + name + "\" (" + names.join(", ") + ") VALUES (" + marks.join(", ") + ")", {}};
        while (sqlite3_step(row) == SQLITE_ROW) {
            std::vector<Cell> cells(static_cast<size_t>(columns));
            for (int i = 0; i < columns; ++i) {
                Cell &cell = cells[static_cast<size_t>(i)];
                switch (sqlite3_column_type(row, i)) {
                case SQLITE_INTEGER:
                    cell = static_cast<long long>(sqlite3_column_int64(row, i));
                    break;
                case SQLITE_FLOAT:
                    cell = sqlite3_column_double(row, i);
                    break;
                case SQLITE_NULL:
                    break;
                default:
                    cell = std::string(reinterpret_cast<const char *>(sqlite3_column_text(row, i)), static_cast<size_t>(sqlite3_column_bytes(row, i)));
                }
            }
            table.rows.push_back(std::move(cells));
        }
        sqlite3_reset(row);
        if (!table.rows.empty())
            m_tables.push_back(std::move(table));
    }
}

void ImportFloor::insertInto(const QByteArray &file) const
{
    Floor book(file);
    book.run("BEGIN IMMEDIATE");
    sqlite3_stmt *words = book.statement("INSERT INTO search (rowid, kind, words) VALUES (?, ?, ?)");
    const auto bind = [](sqlite3_stmt *statement, int at, const Cell &cell) {
        if (const auto *number = std::get_if<long long>(&cell))
            sqlite3_bind_int64(statement, at, *number);
        else if (const auto *real = std::get_if<double>(&cell))
            sqlite3_bind_double(statement, at, *real);
        else if (const auto *text = std::get_if<std::string>(&cell))
            sqlite3_bind_text(statement, at, text->data(), static_cast<int>(text->size()), SQLITE_STATIC);
        else
            sqlite3_bind_null(statement, at);
    };
    for (const Table &table : m_tables) {
        sqlite3_stmt *insert = book.statement(table.insert);
        const bool searched = table.name == "search_entry";
        for (const std::vector<Cell> &row : table.rows) {
            for (size_t i = 0; i < row.size(); ++i)
                bind(insert, static_cast<int>(i) + 1, row[i]);
            book.finish(insert);
            if (!searched)
                continue;
            bind(words, 1, row[0]); // number, record, unit, kind, shown, words
            bind(words, 2, row[3]);
            bind(words, 3, row[5]);
            book.finish(words);
        }
    }
    book.run("COMMIT");
}

size_t ImportFloor::rows() const
{
    size_t all = 0;
    for (const Table &table : m_tables)
        all += table.rows.size();
    return all;
}

} // namespace ts::bench
