#include "views/details/detail_field.h"

#include "views/widgets/card.h"
#include "views/widgets/growing_text.h"
#include "views/widgets/labelled.h"

#include <QComboBox>
#include <QCompleter>
#include <QKeyEvent>
#include <QLineEdit>
#include <QStringListModel>
#include <QVBoxLayout>

namespace ts {

DetailField::DetailField(const QString &label, Form form, Take take, QWidget *parent) : QWidget(parent), m_take(std::move(take))
{
    if (form == Form::Line) {
        m_line = new QLineEdit(this);
        connect(m_line, &QLineEdit::textEdited, this, [this] {
            m_typing = true;
            mark(false);
        });
        connect(m_line, &QLineEdit::editingFinished, this, &DetailField::commit);
    } else if (form == Form::Text) {
        m_text = new GrowingText(label, this);
        connect(m_text, &GrowingText::committed, this, [this](const QString &typed) {
            const QString before = m_recorded;
            const bool taken = m_take(typed);
            if (!taken)
                m_text->refuse(before);
            mark(!taken);
        });
    } else {
        m_box = new QComboBox(this);
        connect(m_box, &QComboBox::activated, this, &DetailField::takeChoice);
    }
    editor()->setFocusPolicy(Qt::StrongFocus);
    editor()->installEventFilter(this);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(labelled(label, editor(), this, "quiet"));
}

QWidget *DetailField::editor() const
{
    return m_line ? static_cast<QWidget *>(m_line) : m_text ? static_cast<QWidget *>(m_text) : m_box;
}

void DetailField::setHint(const QString &hint)
{
    if (m_line)
        m_line->setPlaceholderText(hint);
    else if (m_text)
        m_text->setPlaceholderText(hint);
}

void DetailField::setChoices(const QList<std::pair<QString, QString>> &wordAndText)
{
    for (const auto &[word, text] : wordAndText)
        m_box->addItem(text, word);
}

void DetailField::setCompletions(const QStringList &texts)
{
    if (!m_line->completer()) {
        auto *completer = new QCompleter(this);
        completer->setModel(new QStringListModel(completer));
        completer->setCaseSensitivity(Qt::CaseInsensitive);
        completer->setFilterMode(Qt::MatchContains);
        m_line->setCompleter(completer);
        // What is chosen from the list is typed, too.
        connect(completer, qOverload<const QString &>(&QCompleter::activated), this, [this] { m_typing = true; });
    }
    qobject_cast<QStringListModel *>(m_line->completer()->model())->setStringList(texts);
}

void DetailField::setRecorded(const QString &recorded)
{
    m_recorded = recorded;
    if (m_text)
        m_text->setRecorded(recorded);
    else if (m_box)
        m_box->setCurrentIndex(qMax(0, m_box->findData(recorded)));
    else if (!m_typing && m_line->text() != recorded)
        m_line->setText(recorded);
}

void DetailField::commit()
{
    if (m_text)
        return m_text->commit();
    if (!m_line || !m_typing)
        return;
    m_typing = false; // recording shows what is recorded then
    if (m_take(m_line->text())) {
        mark(false);
        m_line->setText(m_recorded);
        return;
    }
    m_typing = true;
    mark(true);
}

void DetailField::takeChoice()
{
    const QString word = m_box->currentData().toString();
    if (word != m_recorded && !m_take(word))
        m_box->setCurrentIndex(qMax(0, m_box->findData(m_recorded)));
}

void DetailField::forget()
{
    m_typing = false;
    mark(false);
    if (m_line)
        m_line->setText(m_recorded);
    else if (m_text)
        m_text->setPlainText(m_recorded);
}

void DetailField::mark(bool wrong)
{
    restyle(editor(), "wrong", wrong);
}

bool DetailField::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::FocusIn)
        Q_EMIT entered();
    const auto *key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride ? static_cast<QKeyEvent *>(event) : nullptr;
    // A wheel over a choice goes through the page, not through the choices.
    if (m_box && event->type() == QEvent::Wheel) {
        event->ignore();
        return true;
    }
    // Where nothing is being typed, Ctrl+Z takes back what was recorded last.
    if (m_line && !m_typing && event->type() == QEvent::ShortcutOverride && (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo))) {
        event->ignore();
        return true;
    }
    if (m_line && m_typing && event->type() == QEvent::KeyPress && key->key() == Qt::Key_Escape) {
        forget();
        m_line->selectAll();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ts
