#include "views/unit/bring_notes.h"

#include "model/faults/usual_causes.h"
#include "views/widgets/buttons.h"
#include "views/workplace.h"

#include <QCoreApplication>
#include <QPushButton>

namespace ts {

void bringNotes(Workplace &work, const NotesWish &wish)
{
    const auto notes = notesFor(work.desk(), work.file().unit);
    if (!notes)
        return work.refuse(notes.trouble());
    if (notes->notes.id.isNull())
        return work.refuse(QCoreApplication::translate("BringNotes", "There are no notes on this unit's maker and model."));
    Maker maker = work.maker();
    work.record(offerNotes(work.file(), *notes, wish, maker));
}

QPushButton *notesButton(const QString &text, Workplace &work, const NotesWish &wish, QWidget *parent)
{
    auto *made = button(text, parent);
    QObject::connect(made, &QPushButton::clicked, &work, [&work, wish] { bringNotes(work, wish); });
    return made;
}

} // namespace ts
