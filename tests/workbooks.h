#pragma once

#include "model/desk/desk.h"
#include "model/store/store.h"
#include "tests/testing.h"

#include <QTemporaryDir>

#include <memory>

namespace ts::testing {

/// A place for throw-away workbooks: a folder for files and, where the tests have a PostgreSQL server
/// (TURNSCREW_TEST_PG), a schema of its own for each shared workbook.
class Workbooks {
public:
    Workbooks();
    ~Workbooks();
    /// "sqlite", and "postgres" where there is a server.
    [[nodiscard]] static QStringList engines();
    /// A fresh address of that engine; nothing is there yet.
    [[nodiscard]] QString fresh(const QString &engine);
    [[nodiscard]] QString path(const QString &name) const { return m_folder.filePath(name); }

private:
    QTemporaryDir m_folder;
    QStringList m_schemas;
    int m_count = 0;
};

/// A desk on a workbook with a clock that is set by hand.
struct OpenDesk {
    /// 25 November 2026, 09:00 UTC.
    OpenDesk();
    Expected<void> create(const QString &book, const QString &who = QStringLiteral("tester"));
    Expected<void> open(const QString &book, const QString &who = QStringLiteral("tester"));
    Desk *operator->() const { return desk.get(); }
    Desk &operator*() const { return *desk; }

    SetClock clock;
    IdMaker ids;
    std::unique_ptr<Desk> desk;
};

/// Adds the data column "engine" with a row for each engine.
void engineRows();

} // namespace ts::testing
