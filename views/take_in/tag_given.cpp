#include "views/take_in/tag_given.h"

#include "model/faults/model_learning.h"
#include "model/faults/usual_causes.h"
#include "model/records/tag_text.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

namespace ts {

TagGiven::TagGiven(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    auto *before = styledLabel("quiet", tr("Taken in. Its tag is"), this);
    m_tag = styledLabel("tag", {}, this);
    m_tag->setObjectName(QStringLiteral("tagGiven"));
    m_says = styledLabel("heading", {}, this);
    m_name = styledLabel("quiet", {}, this);
    m_name->setWordWrap(true);
    auto *open = primaryButton(tr("Open it  ·  Enter"), this);
    open->setAccessibleName(tr("Open the unit"));
    connect(open, &QPushButton::clicked, this, &TagGiven::openWanted);
    auto *another = button(tr("Take in another  ·  Ctrl+T"), this);
    another->setAccessibleName(tr("Take in another unit"));
    connect(another, &QPushButton::clicked, this, &TagGiven::anotherWanted);
    m_known = styledLabel("plain", {}, this);
    m_known->setWordWrap(true);
    m_bring = button(tr("&Bring it all onto this unit"), this);
    m_bring->setAccessibleName(tr("Bring what is known of the model onto this unit"));
    connect(m_bring, &QPushButton::clicked, this, &TagGiven::bring);
    auto *choices = new QHBoxLayout;
    choices->setSpacing(gap::small);
    choices->addWidget(open);
    choices->addWidget(another);
    choices->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addWidget(before);
    column->addWidget(m_tag);
    column->addWidget(m_says);
    column->addWidget(m_name);
    column->addSpacing(gap::normal);
    column->addLayout(choices);
    column->addSpacing(gap::normal);
    column->addWidget(m_known);
    column->addWidget(m_bring, 0, Qt::AlignLeft);
    column->addStretch(1);
}

void TagGiven::showFor(const Unit &unit)
{
    m_tag->setText(tagText(unit.tag));
    m_says->setText(tr("Tie tag %1 to it").arg(tagText(unit.tag)));
    m_name->setText(unit.name);
    m_unit = unit.id;
    offerNotes();
}

// What the notes on its model have for it is offered at once.
void TagGiven::offerNotes()
{
    m_known->hide();
    m_bring->hide();
    const auto unit = m_work.desk().get(m_unit);
    const auto notes = unit ? notesFor(m_work.desk(), *unit) : Expected<NotesFile>(unit.trouble());
    if (!notes || notes->notes.id.isNull())
        return;
    QStringList known;
    if (const auto points = notes->all<TestPoint>().size())
        known << tr("%n test point(s)", nullptr, static_cast<int>(points));
    if (const auto steps = notes->all<KnownTeardown>().size())
        known << tr("%n step(s) of teardown", nullptr, static_cast<int>(steps));
    if (const auto proofs = notes->all<KnownProof>().size())
        known << tr("%n proof(s)", nullptr, static_cast<int>(proofs));
    if (known.isEmpty())
        return;
    m_known->setText(tr("The notes know this model: %1.").arg(QLocale().createSeparatedList(known)));
    m_known->show();
    m_bring->show();
}

void TagGiven::bring()
{
    const auto file = m_work.desk().unitFile(m_unit);
    const auto notes = file ? notesFor(m_work.desk(), file->unit) : Expected<NotesFile>(file.trouble());
    if (!notes)
        return m_work.refuse(notes.trouble());
    Maker maker = m_work.maker();
    if (!m_work.record(ts::offerNotes(*file, *notes, {}, maker)))
        return;
    m_known->setText(tr("Brought onto it. What the model needs in parts stands in its notes."));
    m_bring->hide();
    setFocus();
}

} // namespace ts
