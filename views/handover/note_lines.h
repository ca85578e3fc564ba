#pragma once

#include "views/widgets/card.h"
#include "views/workplace.h"

namespace ts {

class GrowingText;

/// The notes of one kind of the unit in hand, a line each, edited in place; the last line is for another one. An emptied line goes.
class NoteLines : public Card {
    Q_OBJECT
public:
    NoteLines(Workplace &workplace, NoteKind kind, const QString &heading, const QString &hint, QWidget *parent = nullptr);
    void refresh();
    void commitEdits();

private:
    struct Line {
        Id<Note> note; ///< null: the one for another note
        GrowingText *text;
    };
    [[nodiscard]] Line addLine(const Note *note);
    void commit(const Id<Note> &note, const QString &text);
    [[nodiscard]] QString word() const;

    Workplace &m_work;
    NoteKind m_kind;
    QString m_hint;
    Id<Unit> m_unit;
    QList<Line> m_lines;
};

} // namespace ts
