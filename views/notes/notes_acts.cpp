// What can be done with a model's notes: new ones, learning from a unit, sharing, papers.
#include "model/exchange/knowledge_files.h"
#include "model/faults/usual_causes.h"
#include "model/keeping/outgoing_sheet.h"
#include "views/notes/model_notes_place.h"
#include "views/notes/notes_table.h"
#include "views/notes/notes_words.h"
#include "views/unit/bring_notes.h"
#include "views/widgets/ask.h"
#include "views/widgets/grid_view.h"

#include <QBuffer>
#include <QDesktopServices>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUrl>

namespace ts {

namespace {

/// Papers are read, not run: what a shared file of notes names is only opened where it is a document.
bool isDocument(const QString &ending)
{
    static const QStringList known{QStringLiteral("pdf"),  QStringLiteral("djvu"), QStringLiteral("png"), QStringLiteral("jpg"),
                                   QStringLiteral("jpeg"), QStringLiteral("tif"),  QStringLiteral("tiff"), QStringLiteral("txt")};
    return known.contains(ending.toLower());
}

constexpr qint64 mostBytes = 100'000'000;

} // namespace

void ModelNotesPlace::add()
{
    commitEdits();
    ModelNotes notes = work().maker().fresh<ModelNotes>();
    const Unit &unit = work().file().unit;
    notes.category = unit.category;
    if (!notesOf(work().bench(), unit)) {
        notes.maker = unit.maker;
        notes.makerModel = unit.makerModel;
    }
    if (notes.maker.isEmpty() || notes.makerModel.isEmpty()) {
        notes.maker = tr("New maker");
        notes.makerModel = tr("new model");
    }
    if (!work().record(Change(tr("Model notes: %1").arg(NotesWords::title(notes))).add(notes)))
        return;
    m_chosen = notes.id;
    refresh();
    m_words->focusFirst();
}

void ModelNotesPlace::remove()
{
    const ModelNotes *notes = chosen();
    if (!notes)
        return;
    const auto file = notesFile(work().desk(), notes->id);
    if (!file)
        return work().refuse(file.trouble());
    Change change(tr("Model notes removed: %1").arg(NotesWords::title(*notes)));
    std::apply([&change](const auto &...lists) {
        const auto each = [&change](const auto &list) {
            for (const auto &record : list)
                change.remove(record);
        };
        (each(lists), ...);
    }, file->lists);
    work().record(change.remove(*notes));
}

void ModelNotesPlace::learn()
{
    commitEdits();
    const auto notes = notesFor(work().desk(), work().file().unit);
    if (!notes)
        return work().refuse(notes.trouble());
    Maker maker = work().maker();
    if (!work().record(learnFrom(work().file(), *notes, maker)))
        return;
    if (const ModelNotes *own = notesOf(work().bench(), work().file().unit))
        m_chosen = own->id;
    refresh();
}

void ModelNotesPlace::bring()
{
    commitEdits();
    bringNotes(work(), {});
}

void ModelNotesPlace::writeFile()
{
    const ModelNotes *notes = chosen();
    if (!notes)
        return;
    commitEdits();
    const QString model = (notes->maker + QLatin1Char(' ') + notes->makerModel).simplified();
    if (model.isEmpty())
        return work().refuse(tr("Notes on a whole category stay here: only a model's notes are shared."));
    QString name = model;
    const QString target = ask::newFile(this, tr("Write the notes to share"), QDir::home().filePath(name.replace(QLatin1Char('/'), QLatin1Char('-')) + QStringLiteral(".json")), tr("Notes (*.json)"));
    if (target.isEmpty())
        return;
    QBuffer bytes;
    bytes.open(QIODevice::WriteOnly);
    if (const auto written = writeNotesFile(work().desk(), bytes, model); !written)
        return work().refuse(written.trouble());
    if (const auto kept = writeWhole(target, bytes.data()); !kept)
        return work().refuse(kept.trouble());
    work().say(tr("Wrote %1").arg(QDir::toNativeSeparators(target)));
}

void ModelNotesPlace::readFile()
{
    commitEdits();
    const QString source = ask::existingFile(this, tr("Notes that somebody shared"), QDir::homePath(), tr("Notes (*.json)"));
    if (source.isEmpty())
        return;
    QFile file(source);
    if (!file.open(QIODevice::ReadOnly))
        return work().refuse(Trouble{tr("Cannot read %1").arg(QDir::toNativeSeparators(source)), file.errorString(), {}});
    const auto read = readNotesFile(work().desk(), file, tr("Model notes from %1").arg(QFileInfo(source).fileName()));
    if (!read)
        return work().refuse(read.trouble());
    if (!read->problems.isEmpty())
        return work().refuse(Trouble{tr("Nothing was taken in from %1").arg(QFileInfo(source).fileName()), read->problems.lines().join(QStringLiteral("; ")), {}});
    if (read->change.isEmpty())
        return work().say(tr("All of it was known already."));
    work().record(read->change);
}

void ModelNotesPlace::keepPaper()
{
    const ModelNotes *notes = chosen();
    if (!notes)
        return;
    const QString source = ask::existingFile(this, tr("A service paper to keep"), QDir::homePath(), tr("Papers (*.pdf *.djvu *.png *.jpg *.jpeg *.tif *.tiff *.txt)"));
    if (source.isEmpty())
        return;
    const QFileInfo info(source);
    QFile file(source);
    if (!isDocument(info.suffix()))
        return work().refuse(tr("%1 is no paper that can be kept: PDF, DjVu, a picture or plain text can.").arg(info.fileName()));
    if (info.size() > mostBytes)
        return work().refuse(tr("%1 is larger than 100 MB: write down where it is instead.").arg(info.fileName()));
    if (!file.open(QIODevice::ReadOnly))
        return work().refuse(Trouble{tr("Cannot read %1").arg(QDir::toNativeSeparators(source)), file.errorString(), {}});
    const auto kept = work().desk().keep(file.readAll());
    if (!kept)
        return work().refuse(kept.trouble());
    KnownPaper paper = work().maker().fresh<KnownPaper>();
    paper.modelNotes = notes->id;
    paper.title = info.completeBaseName().left(200);
    paper.sha256 = *kept;
    paper.format = info.suffix().toLower();
    work().record(Change(tr("Service paper kept: %1").arg(paper.title)).add(paper));
}

void ModelNotesPlace::openPaper(const QUuid &row)
{
    const auto paper = work().desk().get(Id<KnownPaper>{row});
    if (!paper)
        return work().refuse(paper.trouble());
    if (!paper->sha256.isEmpty() && isDocument(paper->format)) {
        const auto bytes = work().desk().kept(paper->sha256);
        if (!bytes)
            return work().refuse(bytes.trouble());
        const QString copy = m_folder.filePath(paper->sha256.left(12) + QLatin1Char('.') + paper->format);
        if (const auto written = writeWhole(copy, *bytes); !written)
            return work().refuse(written.trouble());
        if (!ask::show(this, copy))
            work().refuse(tr("Nothing on this computer opens %1 files.").arg(paper->format.toUpper()));
        return;
    }
    const QUrl link(paper->link.trimmed());
    const bool web = link.scheme() == QLatin1String("http") || link.scheme() == QLatin1String("https");
    const QFileInfo local(paper->link.trimmed());
    if (web ? QDesktopServices::openUrl(link) : local.isFile() && isDocument(local.suffix()) && ask::show(this, local.absoluteFilePath()))
        return;
    work().refuse(paper->link.isEmpty() ? tr("It does not say yet where this paper is: write it down beside it.") : tr("\"%1\" is neither a web address nor a document on this computer.").arg(paper->link));
}

} // namespace ts
