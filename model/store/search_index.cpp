#include "model/store/search_index.h"

namespace ts {

namespace {
constexpr int shownLength = 200;
constexpr int wordsAtMost = 12;
}

QString SearchIndex::folded(const QString &text)
{
    bool plain = true; // most texts are ASCII: no need to decompose them
    for (const QChar c : text)
        plain = plain && c.unicode() < 128;
    const QString source = plain ? text : text.normalized(QString::NormalizationForm_KD).replace(QChar(0xdf), QLatin1String("ss"));
    QString words;
    words.reserve(source.size());
    for (const QChar c : source) {
        if (c.isMark())
            continue;
        if (c.isLetterOrNumber() || c.isSurrogate())
            words += c.toLower();
        else if (!words.isEmpty() && !words.endsWith(QLatin1Char(' ')))
            words += QLatin1Char(' ');
    }
    return words.trimmed();
}

// The full-text table of SQLite holds no text of its own: it is told what it held when an entry goes. (Not by triggers, which may not
// touch a virtual table while the schema is not trusted.)
Expected<void> SearchIndex::take(const QVariant &record)
{
    if (!m_connection.isPostgres()) {
        const auto told = m_connection.run(QStringLiteral("INSERT INTO search (search, rowid, kind, words) "
                                                          "SELECT 'delete', number, kind, words FROM search_entry WHERE record = ?"), {record});
        if (!told)
            return told.trouble();
    }
    const auto gone = m_connection.run(QStringLiteral("DELETE FROM search_entry WHERE record = ?"), {record});
    return gone ? Expected<void>() : Expected<void>(gone.trouble());
}

Expected<void> SearchIndex::put(const Kind &kind, const Row &row, bool isNew)
{
    const QVariant id = row.at(Kind::idColumn);
    if (!isNew)
        if (auto taken = take(id); !taken)
            return taken;
    const QString text = Kind::removed(row) ? QString() : kind.searchText(row);
    const QString words = folded(text);
    if (words.isEmpty())
        return {};
    const QUuid unit = kind.unit(row);
    const auto number = m_connection.value(QStringLiteral("INSERT INTO search_entry (record, unit, kind, shown, words) VALUES (?, ?, ?, ?, ?) RETURNING number"),
                                           {id, unit.isNull() ? QVariant() : QVariant(unit.toString(QUuid::WithoutBraces)), kind.table(),
                                            text.left(shownLength), words});
    if (!number)
        return number.trouble();
    if (m_connection.isPostgres())
        return {};
    const auto done = m_connection.run(QStringLiteral("INSERT INTO search (rowid, kind, words) VALUES (?, ?, ?)"), {*number, kind.table(), words});
    return done ? Expected<void>() : Expected<void>(done.trouble());
}

// Folded words hold letters and digits alone, so they can stand in either engine's query language as they are.
QString SearchIndex::term(const QString &word) const
{
    return (m_connection.isPostgres() ? QStringLiteral("'%1':*") : QStringLiteral("\"%1\" *")).arg(word);
}

SearchIndex::Among SearchIndex::unitsWith(const QString &text) const
{
    Among among;
    const QString where = QStringLiteral("(e.kind = 'unit' OR EXISTS (SELECT 1 FROM \"symptom\" y WHERE y.\"id\" = e.record AND y.\"removed\" = 0 AND y.\"state\" = 'open'))");
    // A unit's words and its symptoms' are entries of their own, so each word is looked for by itself.
    for (const QString &word : folded(text).split(QLatin1Char(' '), Qt::SkipEmptyParts).mid(0, wordsAtMost)) {
        among.condition += QStringLiteral(" AND \"id\" IN (SELECT e.unit FROM %1 AND %2)")
                               .arg(m_connection.isPostgres() ? QStringLiteral("search_entry e WHERE e.kind IN ('unit', 'symptom') AND e.found @@ to_tsquery('simple', ?)")
                                                              : QStringLiteral("search s JOIN search_entry e ON e.number = s.rowid WHERE search MATCH ?"),
                                    where);
        among.values << (m_connection.isPostgres() ? term(word) : QStringLiteral("(kind : (unit OR symptom)) AND (words : (%1))").arg(term(word)));
    }
    return among;
}

Expected<QList<SearchHit>> SearchIndex::find(const QString &text, int limit)
{
    QList<SearchHit> hits;
    const QStringList words = folded(text).split(QLatin1Char(' '), Qt::SkipEmptyParts).mid(0, wordsAtMost);
    if (words.isEmpty() || limit <= 0)
        return hits;
    QStringList terms;
    for (const QString &word : words)
        terms << term(word);
    const QString query = terms.join(m_connection.isPostgres() ? QStringLiteral(" & ") : QStringLiteral(" AND "));
    const auto ask = [&](bool units) -> Expected<void> {
        const QString matched = m_connection.isPostgres()
            ? QStringLiteral("SELECT number, record, unit, kind, shown FROM search_entry WHERE found @@ to_tsquery('simple', ?) AND (kind = 'unit') = %1 "
                             "ORDER BY number DESC LIMIT ?").arg(units ? QStringLiteral("true") : QStringLiteral("false"))
            : QStringLiteral("SELECT e.number, e.record, e.unit, e.kind, e.shown FROM (SELECT rowid AS hit FROM search WHERE search MATCH ? "
                             "ORDER BY rowid DESC LIMIT ?) AS s JOIN search_entry e ON e.number = s.hit");
        const QString match = m_connection.isPostgres() ? query
            : units ? QStringLiteral("(kind : unit) AND (words : (%1))").arg(query)
                    : QStringLiteral("(words : (%1)) NOT (kind : unit)").arg(query);
        return m_connection.forEach(
            QStringLiteral("SELECT m.kind, m.record, m.unit, u.\"tag\", u.\"name\", m.shown FROM (%1) AS m LEFT JOIN \"unit\" u ON u.\"id\" = m.unit ORDER BY m.number DESC")
                .arg(matched),
            {match, limit - static_cast<int>(hits.size())}, [&](const Statement &row) {
                hits << SearchHit{row.value(0).toString(), row.value(1).toString(), row.value(2).toString(),
                                  row.value(3).toLongLong(), row.value(4).toString(), row.value(5).toString()};
                return true;
            });
    };
    if (auto done = ask(true); !done)
        return done.trouble();
    if (hits.size() < limit)
        if (auto done = ask(false); !done)
            return done.trouble();
    return hits;
}

} // namespace ts
