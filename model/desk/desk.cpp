#include "model/desk/desk.h"

#include "model/store/soundness.h"
#include "model/store/transaction.h"

namespace ts {

namespace {

constexpr int tellOneByOne = 500; // beyond this many records at once, everything is read again

template <class R>
Expected<void> readList(Desk &desk, QList<R> &list, const QString &column, const QVariant &value)
{
    auto records = desk.list<R>(column, value);
    if (!records)
        return records.trouble();
    list = *std::move(records);
    return {};
}

template <class... Rs>
Expected<void> readLists(Desk &desk, std::tuple<QList<Rs>...> &lists, const QString &column, const QVariant &value)
{
    Expected<void> done;
    (void)((done = readList<Rs>(desk, std::get<QList<Rs>>(lists), column, value), done.ok()) && ...);
    return done;
}

} // namespace

Desk::Desk(std::unique_ptr<Store> store, IdMaker &ids) : m_store(std::move(store)), m_ids(ids)
{
    const auto last = m_store->journal().lastNumber();
    m_seen = last ? *last : 0;
    m_dataVersion = m_store->connection().dataVersion();
    m_store->connection().listen([this] { (void)tell(); });
}

Desk::~Desk() = default;

QString Desk::name() const
{
    return m_store->connection().address().display();
}

bool Desk::isShared() const
{
    return m_store->connection().isPostgres();
}

Expected<Change> Desk::apply(const Change &change, const Progress &progress)
{
    auto applied = m_store->commit(change, m_ids.clock().now(), progress);
    if (applied)
        (void)tell();
    return applied;
}

Expected<Paper> Desk::applyPaper(const Paper &paper, const QString &sentence, const std::function<Expected<QByteArray>(const Paper &)> &make)
{
    auto recorded = m_store->commitPaper(paper, sentence, m_ids.clock().now(), make);
    if (recorded)
        (void)tell();
    return recorded;
}

Expected<QString> Desk::undo()
{
    auto sentence = m_store->undo(m_ids.clock().now());
    if (sentence)
        (void)tell();
    return sentence;
}

Expected<QString> Desk::redo()
{
    auto sentence = m_store->redo(m_ids.clock().now());
    if (sentence)
        (void)tell();
    return sentence;
}

Expected<std::optional<QString>> Desk::undoSentence()
{
    const auto entry = m_store->journal().undoable();
    if (!entry)
        return entry.trouble();
    return *entry ? std::optional((*entry)->sentence) : std::nullopt;
}

Expected<std::optional<QString>> Desk::redoSentence()
{
    const auto entry = m_store->journal().redoable();
    if (!entry)
        return entry.trouble();
    return *entry ? std::optional((*entry)->sentence) : std::nullopt;
}

Expected<Row> Desk::getRow(const Kind &kind, const QUuid &id)
{
    auto row = m_store->table(kind).get(id);
    if (!row)
        return row.trouble();
    if (!*row || Kind::removed(**row))
        return Trouble{QStringLiteral("There is no such %1").arg(kind.noun()), {}, {}};
    return **std::move(row);
}

Expected<QList<Row>> Desk::listRows(const Kind &kind, const QString &column, const QVariant &value)
{
    return m_store->table(kind).list(column, value);
}

Expected<Id<Unit>> Desk::unitByTag(int tag)
{
    const auto rows = listRows(description<Unit>(), QStringLiteral("tag"), tag);
    if (!rows)
        return rows.trouble();
    if (rows->isEmpty())
        return Trouble{QStringLiteral("There is no unit with tag %1").arg(tag, 4, 10, QLatin1Char('0')), {}, QStringLiteral("turnscrew show lists them")};
    return Id<Unit>{Kind::id(rows->first())};
}

Expected<UnitFile> Desk::unitFile(const Id<Unit> &id)
{
    const auto moment = Transaction::begin(m_store->connection(), Transaction::Use::Reading);
    if (!moment)
        return moment.trouble();
    UnitFile file;
    auto unit = get(id);
    if (!unit)
        return unit.trouble();
    file.unit = *std::move(unit);
    if (auto done = readLists(*this, file.lists, QStringLiteral("unit"), id.text()); !done)
        return done.trouble();
    return file;
}

Expected<BenchFile> Desk::benchFile()
{
    const auto moment = Transaction::begin(m_store->connection(), Transaction::Use::Reading);
    if (!moment)
        return moment.trouble();
    BenchFile file;
    if (auto done = readLists(*this, file.lists, {}, {}); !done)
        return done.trouble();
    return file;
}

Expected<qint64> Desk::count(const Kind &kind)
{
    return m_store->table(kind).count();
}

Expected<QList<Found>> Desk::search(const QString &text, int limit)
{
    const auto hits = m_store->search().find(text, limit);
    if (!hits)
        return hits.trouble();
    QList<Found> found;
    for (const SearchHit &hit : *hits)
        found << Found{hit.kind, QUuid::fromString(hit.record), Id<Unit>::fromText(hit.unit), static_cast<int>(hit.tag), hit.unitName, hit.shown};
    return found;
}

Expected<QList<JournalLine>> Desk::journal(const Id<Unit> &unit, int limit)
{
    const auto entries = m_store->journal().lines(unit.value, limit);
    if (!entries)
        return entries.trouble();
    QList<JournalLine> lines;
    for (const JournalEntry &entry : *entries)
        lines << JournalLine{entry.number, entry.at, entry.who, entry.sentence, entry.state != JournalEntry::Done};
    return lines;
}

Expected<QString> Desk::keep(const QByteArray &bytes, const QByteArray &thumbnail)
{
    return m_store->keep(bytes, thumbnail);
}

Expected<QByteArray> Desk::kept(const QString &sha256)
{
    return m_store->kept(sha256, false);
}

Expected<QByteArray> Desk::thumbnail(const QString &sha256)
{
    return m_store->kept(sha256, true);
}

Expected<QStringList> Desk::verify()
{
    return unsoundness(*m_store);
}

Expected<void> Desk::backup(const QString &file)
{
    return m_store->backup(file, m_ids.clock().now());
}

Expected<void> Desk::poll()
{
    if (isShared())
        return tell();
    const qint64 version = m_store->connection().dataVersion();
    if (version == m_dataVersion)
        return {};
    m_dataVersion = version;
    return tell();
}

// The journal is the feed: whatever stands in it after the last line told is told now, whoever wrote it.
Expected<void> Desk::tell()
{
    const auto touched = m_store->journal().touchedAfter(m_seen, tellOneByOne + 1);
    if (!touched)
        return touched.trouble();
    if (touched->isEmpty())
        return {};
    if (touched->size() > tellOneByOne) {
        const auto last = m_store->journal().lastNumber();
        if (!last)
            return last.trouble();
        m_seen = *last;
        Q_EMIT everythingChanged();
        return {};
    }
    m_seen = touched->last().number;
    for (const Journal::Touched &each : *touched)
        Q_EMIT recorded(each.kind, each.record, each.unit, each.fields);
    return {};
}

} // namespace ts
