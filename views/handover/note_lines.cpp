#include "views/handover/note_lines.h"

#include "model/records/tag_text.h"
#include "model/values/plain_text.h"
#include "views/widgets/growing_text.h"

#include <QVBoxLayout>

#include <algorithm>

namespace ts {

NoteLines::NoteLines(Workplace &workplace, NoteKind kind, const QString &heading, const QString &hint, QWidget *parent)
    : Card(heading, parent), m_work(workplace), m_kind(kind), m_hint(hint)
{
}

QString NoteLines::word() const
{
    return m_kind == NoteKind::Flaw ? tr("Flaw") : tr("Use");
}

NoteLines::Line NoteLines::addLine(const Note *note)
{
    auto *text = new GrowingText(note ? word() : m_hint, this);
    text->setPlaceholderText(m_hint);
    const Id<Note> id = note ? note->id : Id<Note>();
    connect(text, &GrowingText::committed, this, [this, id](const QString &typed) { commit(id, typed); });
    return {id, text};
}

void NoteLines::refresh()
{
    QList<Note> notes = m_work.file().all<Note>();
    notes.removeIf([this](const Note &note) { return note.kind != m_kind; });
    const bool another = m_unit != m_work.file().unit.id;
    m_unit = m_work.file().unit.id;
    // Lines stay where they are, with what is being typed in them; only those of gone notes go and new ones come.
    for (qsizetype i = m_lines.size() - 1; i >= 0; --i) {
        const bool stays = !another && (m_lines.at(i).note.isNull() || std::any_of(notes.begin(), notes.end(), [&](const Note &note) { return note.id == m_lines.at(i).note; }));
        if (stays)
            continue;
        m_lines.at(i).text->disconnect(this);
        m_lines.at(i).text->deleteLater();
        m_lines.at(i).text->hide();
        m_lines.removeAt(i);
    }
    for (qsizetype i = 0; i <= notes.size(); ++i) {
        const Note *note = i < notes.size() ? &notes.at(i) : nullptr;
        const auto at = std::find_if(m_lines.begin(), m_lines.end(), [&](const Line &line) { return line.note == (note ? note->id : Id<Note>()); });
        if (at == m_lines.end())
            m_lines.insert(i, addLine(note));
        m_lines.at(i).text->setRecorded(note ? note->text : QString());
        body()->insertWidget(static_cast<int>(i), m_lines.at(i).text);
        m_lines.at(i).text->show(); // at once: the keyboard may go there before the layout comes to it
    }
}

void NoteLines::commitEdits()
{
    const QList<Line> lines = m_lines; // committing makes others
    for (const Line &line : lines)
        line.text->commit();
}

void NoteLines::commit(const Id<Note> &id, const QString &typed)
{
    const auto text = plainText(typed, word());
    if (!text)
        return m_work.refuse(text.trouble());
    const QString sentence = tagText(m_work.file().unit.tag) + QLatin1Char(' ') + word() + QStringLiteral(": ");
    const Note *before = m_work.file().find(id);
    if (!before) {
        Note fresh = m_work.maker().fresh<Note>();
        fresh.unit = m_work.file().unit.id;
        fresh.kind = m_kind;
        fresh.text = *text;
        m_lines.last().text->setRecorded({}); // the line for another one is free again
        m_lines.last().text->clear();
        m_work.record(Change(sentence + *text).add(fresh));
    } else if (text->isEmpty()) {
        m_work.record(Change(tagText(m_work.file().unit.tag) + QLatin1Char(' ') + tr("%1 removed: %2").arg(word(), before->text)).remove(*before));
    } else {
        Note after = *before;
        after.text = *text;
        m_work.record(Change(sentence + *text).edit(*before, after));
    }
}

} // namespace ts
