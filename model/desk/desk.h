#pragma once

#include "model/desk/rack_row.h"
#include "model/records/change.h"
#include "model/records/maker.h"
#include "model/records/unit_file.h"

#include <QHash>
#include <QObject>

#include <functional>
#include <memory>

namespace ts {

class Store;

/// Told how far long work is; answers whether to go on.
using Progress = std::function<bool(qint64 done, qint64 total)>;

/// The one door to an open workbook: reads plain copies, applies changes, takes them back, tells who listens.
/// Lives in the thread that made it.
class Desk : public QObject {
    Q_OBJECT
public:
    /// Takes the open store over; `ids` makes new ids and tells the time, and outlives the desk.
    Desk(std::unique_ptr<Store> store, IdMaker &ids);
    ~Desk() override;

    [[nodiscard]] Maker maker() { return Maker(m_ids); }
    [[nodiscard]] QString name() const;  ///< the workbook's file name, or the database without any password
    [[nodiscard]] bool isShared() const; ///< on a PostgreSQL server

    // Changing. All or nothing; each is committed, journalled and told when it returns.
    /// Applies and answers the change as it was recorded (versions, tags and paper numbers filled in). A change with
    /// nothing in it is not recorded. Refused where a record was changed by someone else since its copy was taken.
    Expected<Change> apply(const Change &change, const Progress &progress = {});
    /// Makes a paper, keeps its bytes and records it, all or nothing. `make` gets the record with its number and edition filled in and answers
    /// the bytes, which may name both; where it is refused, no number is used up. Answers the paper as recorded.
    Expected<Paper> applyPaper(const Paper &paper, const QString &sentence, const std::function<Expected<QByteArray>(const Paper &)> &make);
    Expected<QString> undo(); ///< takes the last change back and answers its sentence; refused when there is none
    Expected<QString> redo();
    [[nodiscard]] Expected<std::optional<QString>> undoSentence();
    [[nodiscard]] Expected<std::optional<QString>> redoSentence();

    // Reading. Removed records are left out.
    template <class R>
    [[nodiscard]] Expected<R> get(const Id<R> &id)
    {
        auto row = getRow(description<R>(), id.value);
        return row ? description<R>().fromRow(*row) : Expected<R>(row.trouble());
    }
    /// All records of a kind in order of time recorded, or those where one column equals a value (null: where it says nothing).
    template <class R>
    [[nodiscard]] Expected<QList<R>> list(const QString &column = {}, const QVariant &value = {})
    {
        const auto rows = listRows(description<R>(), column, value);
        if (!rows)
            return rows.trouble();
        QList<R> records;
        records.reserve(rows->size());
        for (const Row &row : *rows) {
            auto record = description<R>().fromRow(row);
            if (!record)
                return record.trouble();
            records << *std::move(record);
        }
        return records;
    }
    [[nodiscard]] Expected<Row> getRow(const Kind &kind, const QUuid &id);
    [[nodiscard]] Expected<QList<Row>> listRows(const Kind &kind, const QString &column = {}, const QVariant &value = {});
    [[nodiscard]] Expected<Id<Unit>> unitByTag(int tag); ///< refused by tag where there is none
    [[nodiscard]] Expected<UnitFile> unitFile(const Id<Unit> &id);
    [[nodiscard]] Expected<BenchFile> benchFile();
    [[nodiscard]] Expected<QList<RackRow>> rack(const RackQuery &query = {});
    /// Where the units of these stages (none named: of all) hang, without their rows; by stage as on the rack, then sorted. `words` narrows
    /// them: every word begins a word of the unit's own (tag, name, serial, claim …) or of an open symptom.
    [[nodiscard]] Expected<QList<RackPlace>> rackOrder(const QString &words, RackSort sort, const QList<Stage> &stages = {});
    /// How many there are by stage, narrowed likewise.
    [[nodiscard]] Expected<QHash<Stage, int>> rackCounts(const QString &words = {});
    /// The rows of these units, in their order, with all that a tag says; units that are gone are left out.
    [[nodiscard]] Expected<QList<RackRow>> rackUnits(const QList<Id<Unit>> &units);
    [[nodiscard]] Expected<qint64> count(const Kind &kind);
    /// Every word of `text` begins a word of the record; units first, then the newest. At most `limit`.
    [[nodiscard]] Expected<QList<Found>> search(const QString &text, int limit = 50);
    /// Newest first; of one unit, or of the whole workbook.
    [[nodiscard]] Expected<QList<JournalLine>> journal(const Id<Unit> &unit = {}, int limit = 200);

    // Photos and papers: bytes kept by their SHA-256 (lower-case hex), with a small picture beside.
    Expected<QString> keep(const QByteArray &bytes, const QByteArray &thumbnail = {}); ///< answers the SHA-256
    [[nodiscard]] Expected<QByteArray> kept(const QString &sha256);
    [[nodiscard]] Expected<QByteArray> thumbnail(const QString &sha256);

    // The workbook as a whole.
    /// Checks everything; the list of what is not sound, empty when all is.
    [[nodiscard]] Expected<QStringList> verify();
    /// A checked copy into a new file; never over an existing one.
    Expected<void> backup(const QString &file);
    /// Looks whether someone else changed the workbook and tells who listens; call it by a timer. (A shared workbook tells by itself
    /// while an event loop runs, but only this finds a server again that went away.)
    Expected<void> poll();

Q_SIGNALS:
    /// A record was added, edited, removed or brought back, here or by someone else.
    void recorded(const QString &kind, const QUuid &id, const QUuid &unit, const QStringList &fields);
    /// So much changed at once that everything should be read again.
    void everythingChanged();

private:
    Expected<void> tell();
    [[nodiscard]] Expected<Currency> currency();

    std::unique_ptr<Store> m_store;
    IdMaker &m_ids;
    qint64 m_seen = 0;        ///< journal number up to which changes were told
    qint64 m_dataVersion = 0; ///< of the file, when last looked at
};

} // namespace ts
