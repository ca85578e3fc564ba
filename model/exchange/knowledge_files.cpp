#include "model/exchange/knowledge_files.h"

#include "model/exchange/notes_json.h"
#include "model/faults/model_learning.h"
#include "model/faults/same_text.h"
#include "model/faults/starting_table.h"
#include "model/records/settings.h"

namespace ts {

namespace {

constexpr qint64 longestFile = qint64(1) << 24;

Expected<QByteArray> wholeOf(QIODevice &device, const QString &did)
{
    if (device.size() > longestFile)
        return Trouble{did, QStringLiteral("it is larger than %1 MiB").arg(longestFile >> 20), {}};
    return device.readAll();
}

/// Under what was being done for the person, not for the part of the program that noticed.
Trouble within(const QString &did, const Trouble &trouble)
{
    return Trouble{did, trouble.wrong.isEmpty() ? trouble.did : QStringLiteral("%1: %2").arg(trouble.did, trouble.wrong),
                   trouble.todo};
}

} // namespace

Expected<Imported> readNotesFile(Desk &desk, QIODevice &device, const QString &did)
{
    const auto bytes = wholeOf(device, did);
    if (!bytes)
        return bytes.trouble();
    Maker maker = desk.maker();
    const auto incoming = readNotesJson(*bytes, maker);
    if (!incoming)
        return within(did, incoming.trouble());
    const auto known = desk.list<ModelNotes>();
    if (!known)
        return known.trouble();
    Imported imported;
    for (const NotesFile &notes : *incoming) {
        NotesFile there;
        for (const ModelNotes &each : *known)
            if (sameText(each.maker, notes.notes.maker) && sameText(each.makerModel, notes.notes.makerModel) &&
                (!ofCategory(each) || each.category == notes.notes.category)) {
                auto file = notesFile(desk, each.id);
                if (!file)
                    return file.trouble();
                there = *std::move(file);
            }
        const Change change = mergedNotes(notes, there, maker);
        (change.isEmpty() ? imported.skipped : imported.added) += 1;
        imported.change.join(change);
    }
    return imported;
}

Expected<qint64> writeNotesFile(Desk &desk, QIODevice &device, const QString &model)
{
    const auto known = desk.list<ModelNotes>();
    if (!known)
        return known.trouble();
    QList<NotesFile> all;
    for (const ModelNotes &each : *known) {
        if (!model.isEmpty() && !sameText(each.maker + QLatin1Char(' ') + each.makerModel, model))
            continue;
        auto file = notesFile(desk, each.id);
        if (!file)
            return file.trouble();
        all << *std::move(file);
    }
    if (all.isEmpty())
        return Trouble{QStringLiteral("No model notes were written"),
                       model.isEmpty() ? QStringLiteral("there are none")
                                       : QStringLiteral("there are none on %1").arg(model.simplified()),
                       {}};
    device.write(notesJson(all));
    return static_cast<qint64>(all.size());
}

Expected<Imported> readTablesFile(Desk &desk, QIODevice &device, const QString &did)
{
    const auto bytes = wholeOf(device, did);
    if (!bytes)
        return bytes.trouble();
    const auto tables = readTables(*bytes);
    if (!tables)
        return within(did, tables.trouble());
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    // What was read in before for other categories stays.
    QList<StartingTable> own = *tables;
    for (const StartingTable &each : allTables(*bench))
        if (each.own && std::none_of(tables->begin(), tables->end(),
                                     [&](const StartingTable &table) { return table.category == each.category; }))
            own << each;
    Imported imported;
    Maker maker = desk.maker();
    Setting setting = maker.fresh<Setting>();
    setting.name = settings::faultTables;
    setting.value = QString::fromUtf8(writeTables(own));
    imported.added = static_cast<qint64>(tables->size());
    for (const Setting &each : bench->all<Setting>())
        if (each.name == settings::faultTables) {
            Setting after = each;
            after.value = setting.value;
            imported.change.edit(each, after);
            return imported;
        }
    imported.change.add(setting);
    return imported;
}

Expected<qint64> writeTablesFile(Desk &desk, QIODevice &device)
{
    const auto bench = desk.benchFile();
    if (!bench)
        return bench.trouble();
    const QList<StartingTable> tables = allTables(*bench);
    device.write(writeTables(tables));
    return static_cast<qint64>(tables.size());
}

} // namespace ts
