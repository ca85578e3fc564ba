#include "views/places/model_notes_place.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/empty_place.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ts {

ModelNotesPlace::ModelNotesPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_list = new QListWidget(this);
    m_list->setAccessibleName(tr("Models"));
    m_list->setMinimumWidth(200);
    m_list->setMaximumWidth(300);
    auto *adding = primaryButton(tr("New notes"), this);
    connect(adding, &QPushButton::clicked, this, &ModelNotesPlace::add);
    auto *removing = button(tr("Remove"), this);
    removing->setAccessibleName(tr("Remove the notes of this model"));
    connect(removing, &QPushButton::clicked, this, &ModelNotesPlace::remove);
    auto *none = new EmptyPlace(tr("What is known of a model across units belongs here: how to tell its versions, its usual faults and how they were cured, what to adjust and where, where the service "
                                   "papers are."),
                                tr("New notes"), this);
    connect(none, &EmptyPlace::actionWanted, this, &ModelNotesPlace::add);
    m_right = new QStackedWidget(this);
    m_right->addWidget(makeForm());
    m_right->addWidget(none);
    auto *top = new QHBoxLayout;
    top->addWidget(styledLabel("heading", tr("Model notes"), this));
    top->addStretch(1);
    top->addWidget(adding);
    top->addWidget(removing);
    auto *both = new QHBoxLayout;
    both->setSpacing(gap::normal);
    both->addWidget(m_list);
    both->addWidget(m_right, 1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(top);
    column->addLayout(both, 1);
    connect(m_list, &QListWidget::currentItemChanged, this, [this](QListWidgetItem *item) {
        if (!item)
            return;
        commitEdits();
        m_chosen = Id<ModelNotes>::fromText(item->data(Qt::UserRole).toString());
        showChosen();
    });
}

QWidget *ModelNotesPlace::makeForm()
{
    auto *form = new QWidget;
    auto *rows = new QVBoxLayout(form);
    rows->setContentsMargins(0, 0, gap::small, gap::normal);
    rows->setSpacing(gap::tight);
    addField(form, tr("Maker"), &ModelNotes::maker, true);
    addField(form, tr("Model"), &ModelNotes::makerModel, true);
    addField(form, tr("Cautions"), &ModelNotes::cautions, false);
    addField(form, tr("Variants, and how to tell them"), &ModelNotes::variants, false);
    addField(form, tr("Mains versions"), &ModelNotes::mainsVersions, false);
    addField(form, tr("Usual faults and what cured them"), &ModelNotes::usualCauses, false);
    addField(form, tr("Adjustments"), &ModelNotes::adjustments, false);
    addField(form, tr("Parts, with position and rating"), &ModelNotes::parts, false);
    addField(form, tr("Taking it apart"), &ModelNotes::teardown, false);
    addField(form, tr("Service papers and other sources"), &ModelNotes::sources, false);
    addField(form, tr("Ideas to come back to"), &ModelNotes::ideas, false);
    rows->addStretch(1);
    auto *scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(form);
    return scroll;
}

void ModelNotesPlace::addField(QWidget *form, const QString &label, QString ModelNotes::*member, bool oneLine)
{
    QWidget *editor = nullptr;
    if (oneLine) {
        auto *line = new QLineEdit(form);
        connect(line, &QLineEdit::editingFinished, this, &ModelNotesPlace::commitEdits);
        editor = line;
    } else {
        auto *text = new QPlainTextEdit(form);
        text->setTabChangesFocus(true);
        text->setFixedHeight(QFontMetrics(work().style().text()).lineSpacing() * 4 + 20);
        text->installEventFilter(this);
        editor = text;
    }
    editor->setAccessibleName(label);
    auto *word = styledLabel("quiet", label, form);
    word->setBuddy(editor);
    form->layout()->addWidget(word);
    form->layout()->addWidget(editor);
    m_fields << Field{member, editor};
}

void ModelNotesPlace::focusFirst()
{
    m_list->setFocus();
}

QString ModelNotesPlace::help() const
{
    return tr("What is found out once is written down here, so that the next unit of the model is quicker. Cautions written here stand on every unit of the model and on its sheet.");
}

const ModelNotes *ModelNotesPlace::chosen() const
{
    return work().bench().find(m_chosen);
}

QString ModelNotesPlace::title(const ModelNotes &notes) const
{
    const QString name = (notes.maker + QLatin1Char(' ') + notes.makerModel).simplified();
    return name.isEmpty() ? tr("No maker yet") : name;
}

void ModelNotesPlace::commitEdits()
{
    const ModelNotes *before = chosen();
    if (!before)
        return;
    ModelNotes after = *before;
    for (const Field &field : m_fields) {
        const auto *line = qobject_cast<QLineEdit *>(field.editor);
        after.*field.member = (line ? line->text() : qobject_cast<QPlainTextEdit *>(field.editor)->toPlainText()).trimmed();
    }
    if (after.maker.isEmpty())
        after.maker = before->maker; // notes belong to a maker
    work().record(Change(tr("Model notes: %1").arg(title(after))).edit(*before, after));
}

bool ModelNotesPlace::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusOut)
        commitEdits();
    return Place::eventFilter(watched, event);
}

void ModelNotesPlace::showChosen()
{
    const ModelNotes *notes = chosen();
    m_right->setCurrentIndex(notes ? 0 : 1);
    if (!notes)
        return;
    for (const Field &field : m_fields) {
        if (field.editor->hasFocus())
            continue; // what is being typed is not written over
        const QString &text = notes->*field.member;
        if (auto *line = qobject_cast<QLineEdit *>(field.editor))
            line->setText(text);
        else if (auto *area = qobject_cast<QPlainTextEdit *>(field.editor); area->toPlainText() != text)
            area->setPlainText(text);
    }
}

void ModelNotesPlace::refresh()
{
    QList<ModelNotes> all = work().bench().all<ModelNotes>();
    std::sort(all.begin(), all.end(), [this](const ModelNotes &a, const ModelNotes &b) { return title(a).localeAwareCompare(title(b)) < 0; });
    if (!chosen())
        m_chosen = all.isEmpty() ? Id<ModelNotes>() : all.first().id;
    const QSignalBlocker quiet(m_list);
    m_list->clear();
    for (const ModelNotes &notes : all) {
        auto *item = new QListWidgetItem(title(notes), m_list);
        item->setData(Qt::UserRole, notes.id.text());
        if (notes.id == m_chosen)
            m_list->setCurrentItem(item);
    }
    m_list->setHidden(all.isEmpty());
    showChosen();
}

void ModelNotesPlace::add()
{
    commitEdits();
    ModelNotes notes = work().maker().fresh<ModelNotes>();
    const Unit &unit = work().file().unit;
    notes.category = unit.category;
    notes.maker = unit.maker;
    notes.makerModel = unit.makerModel;
    const auto same = [&](const ModelNotes &each) { return each.maker == notes.maker && each.makerModel == notes.makerModel; };
    const auto &all = work().bench().all<ModelNotes>();
    if (notes.maker.isEmpty() || std::any_of(all.begin(), all.end(), same)) {
        notes.maker = tr("New maker");
        notes.makerModel.clear();
    }
    if (!work().record(Change(tr("Model notes: %1").arg(title(notes))).add(notes)))
        return;
    m_chosen = notes.id;
    refresh();
    m_fields.first().editor->setFocus();
}

void ModelNotesPlace::remove()
{
    if (const ModelNotes *notes = chosen())
        work().record(Change(tr("Model notes removed: %1").arg(title(*notes))).remove(*notes));
}

} // namespace ts
