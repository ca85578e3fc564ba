#include "model/exchange/list_columns.h"

#include "model/values/quoted.h"

namespace ts {

QString plainHeader(const QString &text)
{
    QString plain;
    int depth = 0;
    for (const QChar c : text) {
        if (c == u'(' || c == u'[')
            ++depth;
        else if (c == u')' || c == u']')
            --depth;
        else if (depth <= 0)
            plain += c.isLetterOrNumber() || c == u'/' ? c.toLower() : QChar(u' ');
    }
    return plain.simplified();
}

QString wrongWidth(qsizetype cells, qsizetype header)
{
    return QStringLiteral("the number of columns is %1, the header has %2").arg(cells).arg(header);
}

KnownColumn knownColumn(const char *name, const char *also)
{
    return {QString::fromLatin1(name), QString::fromLatin1(also).split(QLatin1Char('|'), Qt::SkipEmptyParts)};
}

namespace {

QStringList names(const QList<KnownColumn> &known)
{
    QStringList list;
    for (const KnownColumn &column : known)
        list << column.name;
    return list;
}

QString nameOf(const QString &header, const QList<KnownColumn> &known)
{
    const QString plain = plainHeader(header);
    for (const KnownColumn &column : known)
        if (plainHeader(column.name) == plain || column.also.contains(plain))
            return column.name;
    return {};
}

} // namespace

Expected<ListColumns> ListColumns::match(const QStringList &header, const QList<KnownColumn> &known,
                                         const QHash<QString, QString> &map, const QString &did)
{
    const QStringList ours = names(known);
    const auto refuse = [&](const QString &wrong, const QString &todo) {
        QStringList found;
        for (const QString &name : header.mid(0, 40))
            found << quoted(name);
        return Trouble{did, wrong + QStringLiteral("; the columns found are ") + found.join(QStringLiteral(", ")),
                       todo + QStringLiteral("; known columns are ") + ours.join(QStringLiteral(", "))};
    };
    QHash<QString, QString> mapped;
    for (auto it = map.begin(); it != map.end(); ++it) {
        const QString name = it.value() == QLatin1String("-") ? it.value() : nameOf(it.value(), known);
        if (name.isEmpty())
            return refuse(QStringLiteral("the map names a column %1 that is not known").arg(quoted(it.value())),
                          QStringLiteral("map to a known column, or to - to leave it out"));
        if (!header.contains(it.key()))
            return refuse(QStringLiteral("the map names a column %1 that is not in the file").arg(quoted(it.key())),
                          QStringLiteral("write it as the header has it"));
        mapped.insert(it.key(), name);
    }
    ListColumns columns;
    columns.m_header = header;
    QStringList strangers;
    for (qsizetype i = 0; i < header.size(); ++i) {
        const QString name = mapped.value(header.at(i), nameOf(header.at(i), known));
        if (name == QLatin1String("-"))
            continue;
        if (name.isEmpty()) {
            strangers << quoted(header.at(i));
            continue;
        }
        if (columns.m_places.contains(name))
            return refuse(QStringLiteral("%1 and %2 are both the %3")
                              .arg(quoted(header.at(columns.m_places.value(name))), quoted(header.at(i)), name),
                          QStringLiteral("map one of them to - to leave it out"));
        columns.m_places.insert(name, i);
    }
    if (!strangers.isEmpty())
        return refuse(
            (strangers.size() == 1 ? QStringLiteral("the column %1 is not known")
                                   : QStringLiteral("the columns %1 are not known"))
                .arg(strangers.mid(0, 20).join(QStringLiteral(", "))),
            QStringLiteral("say what it is with --map \"their column=name\", or leave it out with --map \"their column=-\""));
    return columns;
}

QString ListColumns::cell(const QStringList &cells, const char *name) const
{
    const auto it = m_places.constFind(QString::fromLatin1(name));
    return it == m_places.constEnd() ? QString() : cells.value(*it).trimmed();
}

QString ListColumns::shown(const char *name) const
{
    const auto it = m_places.constFind(QString::fromLatin1(name));
    return quoted(it == m_places.constEnd() ? QString::fromLatin1(name) : m_header.at(*it));
}

} // namespace ts
