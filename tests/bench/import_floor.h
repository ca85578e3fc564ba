#pragma once

#include <QByteArray>
#include <QByteArrayList>

#include <string>
#include <variant>
#include <vector>

namespace ts::bench {

/// All rows of a workbook as a list in memory, to be put into an empty one: what an import comes to when nothing is read,
/// understood or checked.
class ImportFloor {
public:
    /// Reads every row of these tables.
    ImportFloor(const QByteArray &file, const QByteArrayList &tables);
    /// Inserts them in one transaction; search entries with their words.
    void insertInto(const QByteArray &file) const;
    [[nodiscard]] size_t rows() const;

private:
    using Cell = std::variant<std::monostate, long long, double, std::string>;
    struct Table {
        QByteArray name;
        QByteArray insert;
        std::vector<std::vector<Cell>> rows;
    };
    std::vector<Table> m_tables;
};

} // namespace ts::bench
