#include "views/notes/notes_words.h"

#include "model/records/notes_file.h"
#include "model/values/plain_text.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/names.h"

#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace ts {

NotesWords::NotesWords(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    auto *rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, gap::small, gap::normal);
    rows->setSpacing(gap::tight);
    addField(tr("Maker"), &ModelNotes::maker, true, tr("none: these are notes on the whole category"));
    addField(tr("Model"), &ModelNotes::makerModel, true);
    m_category = new QComboBox(this);
    m_category->setAccessibleName(tr("Category"));
    for (const auto &each : Words<Category>::list)
        m_category->addItem(categoryName(each.first), toWord(each.first));
    connect(m_category, &QComboBox::activated, this, &NotesWords::commit);
    auto *word = styledLabel("quiet", tr("Category"), this);
    word->setBuddy(m_category);
    rows->addWidget(word);
    rows->addWidget(m_category);
    addField(tr("Cautions"), &ModelNotes::cautions, false);
    addField(tr("Variants, and how to tell them"), &ModelNotes::variants, false);
    addField(tr("Mains versions"), &ModelNotes::mainsVersions, false);
    addField(tr("Usual faults and what cured them"), &ModelNotes::usualCauses, false);
    addField(tr("Adjustments"), &ModelNotes::adjustments, false);
    addField(tr("Parts, with position and rating"), &ModelNotes::parts, false);
    addField(tr("Taking it apart"), &ModelNotes::teardown, false);
    addField(tr("Service papers and other sources"), &ModelNotes::sources, false);
    addField(tr("Ideas to come back to"), &ModelNotes::ideas, false);
    rows->addStretch(1);
}

void NotesWords::addField(const QString &label, QString ModelNotes::*member, bool oneLine, const QString &hint)
{
    QWidget *editor = nullptr;
    if (oneLine) {
        auto *line = new QLineEdit(this);
        line->setPlaceholderText(hint);
        connect(line, &QLineEdit::editingFinished, this, &NotesWords::commit);
        editor = line;
    } else {
        auto *text = new QPlainTextEdit(this);
        text->setTabChangesFocus(true);
        text->setFixedHeight(QFontMetrics(m_work.style().text()).lineSpacing() * 3 + 20);
        text->installEventFilter(this);
        editor = text;
    }
    editor->setAccessibleName(label);
    auto *word = styledLabel("quiet", label, this);
    word->setBuddy(editor);
    layout()->addWidget(word);
    layout()->addWidget(editor);
    m_fields << Field{member, editor};
}

QString NotesWords::title(const ModelNotes &notes)
{
    return ofCategory(notes) ? tr("All of: %1").arg(categoryName(notes.category)) : (notes.maker + QLatin1Char(' ') + notes.makerModel).simplified();
}

void NotesWords::focusFirst()
{
    m_fields.first().editor->setFocus();
}

void NotesWords::commit()
{
    const ModelNotes *before = m_work.bench().find(m_of);
    if (!before)
        return;
    ModelNotes after = *before;
    for (const Field &field : m_fields) {
        const auto *line = qobject_cast<QLineEdit *>(field.editor);
        const auto text = line ? plainText(line->text(), field.editor->accessibleName(), shortText)
                               : plainLines(qobject_cast<QPlainTextEdit *>(field.editor)->toPlainText().trimmed(), field.editor->accessibleName());
        if (!text) {
            m_work.refuse(text.trouble());
            return;
        }
        after.*field.member = *text;
    }
    after.category = fromWord<Category>(m_category->currentData().toString()).value_or(before->category);
    if (after.maker.isEmpty() != after.makerModel.isEmpty() && (after.maker != before->maker || after.makerModel != before->makerModel)) {
        // Half a name is about nothing; whoever types it goes on to the other half.
        after.maker = before->maker;
        after.makerModel = before->makerModel;
    }
    if (after != *before)
        m_work.record(Change(tr("Model notes: %1").arg(title(after))).edit(*before, after));
}

bool NotesWords::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusOut)
        commit();
    return QWidget::eventFilter(watched, event);
}

void NotesWords::show(const ModelNotes &notes)
{
    const bool other = m_of != notes.id;
    m_of = notes.id;
    m_category->setCurrentIndex(m_category->findData(toWord(notes.category)));
    for (const Field &field : m_fields) {
        if (field.editor->hasFocus() && !other)
            continue; // what is being typed is not written over
        const QString &text = notes.*field.member;
        if (auto *line = qobject_cast<QLineEdit *>(field.editor)) {
            const bool half = notes.maker.isEmpty() && notes.makerModel.isEmpty() && !other && !line->text().isEmpty() && text.isEmpty();
            if (!half)
                line->setText(text);
        } else if (auto *area = qobject_cast<QPlainTextEdit *>(field.editor); area->toPlainText() != text) {
            area->setPlainText(text);
        }
    }
}

} // namespace ts
