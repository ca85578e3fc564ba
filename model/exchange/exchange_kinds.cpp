#include "model/exchange/exchange_kinds.h"

#include "model/values/quoted.h"

namespace ts {

namespace {

Expected<void> check(const QString &did, const QString &kind, const QStringList &known, const QStringList &later)
{
    if (known.contains(kind))
        return {};
    return Trouble{did.arg(quoted(kind)),
                   later.contains(kind) ? QStringLiteral("this version of the program cannot do it yet")
                                        : QStringLiteral("there is no such kind"),
                   QStringLiteral("choose one of ") + known.join(QStringLiteral(", "))};
}

} // namespace

const QStringList &importKinds()
{
    static const QStringList list{QStringLiteral("units"), QStringLiteral("comparables"), QStringLiteral("open-repair-data"),
                                  QStringLiteral("json"), QStringLiteral("model-notes"), QStringLiteral("fault-tables")};
    return list;
}

const QStringList &exportKinds()
{
    static const QStringList list{QStringLiteral("csv"), QStringLiteral("json"), QStringLiteral("open-repair-data"),
                                  QStringLiteral("model-notes"), QStringLiteral("fault-tables"), QStringLiteral("xlsx"), QStringLiteral("ledger-csv")};
    return list;
}

Expected<void> canImport(const QString &kind)
{
    return check(QStringLiteral("Cannot import as %1"), kind, importKinds(), {QStringLiteral("parts")});
}

Expected<void> canExport(const QString &kind)
{
    return check(QStringLiteral("Cannot export as %1"), kind, exportKinds(), {});
}

} // namespace ts
