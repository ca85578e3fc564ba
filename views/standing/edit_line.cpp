#include "views/standing/edit_line.h"

#include "views/widgets/card.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ts {

EditLine::EditLine(const QString &name, const QString &empty, QWidget *parent) : QWidget(parent), m_name(name), m_empty(empty)
{
    m_words = styledLabel("editable", {}, this);
    m_words->setWordWrap(true);
    m_words->setIndent(0);
    m_words->setFocusPolicy(Qt::TabFocus);
    m_words->setCursor(Qt::IBeamCursor);
    m_words->installEventFilter(this);
    m_field = new QLineEdit(this);
    m_field->setAccessibleName(name);
    m_field->installEventFilter(this);
    m_field->hide();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_words);
    column->addWidget(m_field);
    connect(m_field, &QLineEdit::returnPressed, this, [this] {
        commit();
        m_words->setFocus();
    });
    show({}, {});
}

void EditLine::show(const QString &words, const QString &value, bool warns)
{
    m_value = value;
    m_words->setText(words.isEmpty() ? m_empty : words);
    m_words->setAccessibleName(words.isEmpty() ? tr("%1: nothing yet. Enter to write it").arg(m_name) : tr("%1: %2. Enter to change it").arg(m_name, words));
    restyle(m_words, "state", warns ? QStringLiteral("warns") : words.isEmpty() ? QStringLiteral("empty") : QStringLiteral("said"));
}

QString EditLine::words() const
{
    return m_words->text();
}

bool EditLine::isEditing() const
{
    return !m_field->isHidden();
}

void EditLine::begin()
{
    if (isEditing())
        return;
    m_field->setText(m_value);
    m_words->hide();
    m_field->show();
    m_field->setFocus();
    m_field->selectAll();
}

void EditLine::leave()
{
    m_field->hide();
    m_words->show();
}

void EditLine::commit()
{
    if (!isEditing())
        return;
    const QString now = m_field->text().simplified();
    const bool other = now != m_value;
    leave();
    if (other)
        Q_EMIT typed(now);
}

bool EditLine::eventFilter(QObject *watched, QEvent *event)
{
    const auto key = [event] { return event->type() == QEvent::KeyPress ? static_cast<QKeyEvent *>(event)->key() : 0; };
    if (watched == m_words) {
        const int pressed = key();
        if (event->type() == QEvent::MouseButtonRelease || pressed == Qt::Key_Return || pressed == Qt::Key_Enter || pressed == Qt::Key_Space || pressed == Qt::Key_F2) {
            begin();
            return true;
        }
    } else if (key() == Qt::Key_Escape) {
        leave();
        m_words->setFocus();
        return true;
    } else if (event->type() == QEvent::FocusOut && static_cast<QFocusEvent *>(event)->reason() != Qt::PopupFocusReason) {
        commit();
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace ts
