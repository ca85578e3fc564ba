#include "views/settings/setting_field.h"

#include "views/style/style.h"
#include "views/widgets/card.h"

#include <QComboBox>
#include <QEvent>
#include <QFontMetrics>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace ts {

SettingField::SettingField(Workplace &workplace, const QString &name, const QString &label, Form form, QWidget *parent)
    : QWidget(parent), m_work(workplace), m_name(name)
{
    if (form == Form::Choice) {
        auto *box = new QComboBox(this);
        connect(box, &QComboBox::activated, this, &SettingField::commit);
        m_editor = box;
    } else if (form == Form::Lines) {
        auto *text = new QPlainTextEdit(this);
        text->setTabChangesFocus(true);
        text->setFixedHeight(QFontMetrics(m_work.style().text()).lineSpacing() * 5 + 22);
        m_editor = text;
    } else {
        auto *line = new QLineEdit(this);
        connect(line, &QLineEdit::returnPressed, this, &SettingField::commit);
        m_editor = line;
    }
    m_editor->setAccessibleName(label);
    m_editor->installEventFilter(this);
    auto *word = styledLabel("quiet", label, this);
    word->setBuddy(m_editor);
    m_wrong = styledLabel("warning", {}, this);
    m_wrong->setWordWrap(true);
    m_wrong->hide();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(word);
    column->addWidget(m_editor);
    column->addWidget(m_wrong);
}

void SettingField::setChoices(const QList<std::pair<QString, QString>> &valueAndText)
{
    auto *box = qobject_cast<QComboBox *>(m_editor);
    box->clear();
    for (const auto &[value, text] : valueAndText)
        box->addItem(text, value);
}

void SettingField::setHint(const QString &hint)
{
    if (auto *line = qobject_cast<QLineEdit *>(m_editor))
        line->setPlaceholderText(hint);
    else if (auto *text = qobject_cast<QPlainTextEdit *>(m_editor))
        text->setPlaceholderText(hint);
}

QString SettingField::typed() const
{
    if (const auto *line = qobject_cast<QLineEdit *>(m_editor))
        return line->text().trimmed();
    if (const auto *text = qobject_cast<QPlainTextEdit *>(m_editor))
        return text->toPlainText().trimmed();
    return qobject_cast<QComboBox *>(m_editor)->currentData().toString();
}

void SettingField::refresh()
{
    // What is being typed is not written over.
    if (m_editor->hasFocus() || !m_wrong->isHidden())
        return;
    const QString value = m_work.bench().setting(m_name);
    if (auto *line = qobject_cast<QLineEdit *>(m_editor))
        line->setText(value);
    else if (auto *text = qobject_cast<QPlainTextEdit *>(m_editor))
        text->setPlainText(value);
    else if (auto *box = qobject_cast<QComboBox *>(m_editor))
        box->setCurrentIndex(qMax(0, box->findData(value)));
}

void SettingField::commit()
{
    const QString value = typed();
    const auto change = m_work.settingChange(m_name, value);
    m_wrong->setHidden(bool(change));
    if (change)
        m_work.record(*change);
    else
        m_wrong->setText(change.trouble().sentence());
}

bool SettingField::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_editor && event->type() == QEvent::FocusOut && !qobject_cast<QComboBox *>(m_editor))
        commit();
    return QWidget::eventFilter(watched, event);
}

} // namespace ts
