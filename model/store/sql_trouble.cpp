#include "model/store/sql_trouble.h"

namespace ts {

namespace {

struct Meaning {
    QLatin1String wrong;
    QLatin1String todo;
};

// Primary result codes, from SQLite's documentation of result and error codes.
std::optional<Meaning> sqliteMeaning(int code)
{
    switch (code & 0xff) {
    case 5:
    case 6:
        return Meaning{QLatin1String("another program is writing to it"), QLatin1String("close that one or try again in a moment")};
    case 8:
        return Meaning{QLatin1String("it is read-only"), QLatin1String("copy it to a place where you may write")};
    case 10:
        return Meaning{QLatin1String("the disk gave a read or write error"), QLatin1String("copy the file to another disk and run turnscrew verify")};
    case 11:
        return Meaning{QLatin1String("the file is damaged"), QLatin1String("take it from a backup; turnscrew verify says what is wrong")};
    case 13:
        return Meaning{QLatin1String("the disk is full; nothing was changed"), QLatin1String("make room and try again")};
    case 14:
        return Meaning{QLatin1String("the file cannot be opened here"), QLatin1String("see that the folder exists and that you may write in it")};
    case 26:
        return Meaning{QLatin1String("it is not a Turnscrew workbook, or the file is damaged"), {}};
    default:
        return std::nullopt;
    }
}

// SQLSTATE classes, from PostgreSQL's appendix of error codes.
std::optional<Meaning> postgresMeaning(const QString &state)
{
    if (state == QLatin1String("55P03"))
        return Meaning{QLatin1String("another program is writing to it"), QLatin1String("close that one or try again in a moment")};
    if (state == QLatin1String("53100"))
        return Meaning{QLatin1String("the server's disk is full; nothing was changed"), QLatin1String("make room on the server and try again")};
    if (state == QLatin1String("42501"))
        return Meaning{QLatin1String("you may not do that in this database"), QLatin1String("ask whoever looks after it")};
    if (state == QLatin1String("25006"))
        return Meaning{QLatin1String("it is read-only"), {}};
    return std::nullopt;
}

} // namespace

QString plainReason(const SqlFailure &failure)
{
    QString text = failure.text.section(QLatin1Char('\n'), 0, 0).trimmed();
    for (const auto *prefix : {"ERROR:", "FATAL:", "fatal:"})
        if (text.startsWith(QLatin1String(prefix)))
            text = text.mid(static_cast<qsizetype>(qstrlen(prefix))).trimmed();
    return text.isEmpty() ? QStringLiteral("the database gave no reason") : text;
}

Trouble goneTrouble(const BookAddress &address)
{
    return Trouble{QStringLiteral("Cannot use %1").arg(address.display()), QStringLiteral("the server went away; what was not finished was not recorded"),
                   QStringLiteral("try again when it is back")};
}

Trouble sqlTrouble(const SqlFailure &failure, const BookAddress &address)
{
    if (failure.lost)
        return goneTrouble(address);
    const bool postgres = address.engine == BookAddress::Engine::Postgres;
    const auto meaning = postgres ? postgresMeaning(failure.code) : sqliteMeaning(failure.code.toInt());
    const QString did = QStringLiteral("Cannot use %1").arg(address.display());
    if (meaning)
        return Trouble{did, meaning->wrong, meaning->todo};
    return Trouble{did, plainReason(failure), {}};
}

} // namespace ts
