#include "views/widgets/ask_line.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace ts {

AskLine::AskLine(QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("card"));
    m_question = styledLabel("strong", {}, this);
    m_field = new QLineEdit(this);
    m_question->setBuddy(m_field);
    auto *leave = wordButton(tr("Leave it"), this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::normal, gap::tight, gap::small, gap::tight);
    row->addWidget(m_question);
    row->addWidget(m_field, 1);
    row->addWidget(leave);
    connect(m_field, &QLineEdit::returnPressed, this, [this] {
        if (!m_take || m_take(m_field->text().trimmed()))
            putAway();
    });
    connect(leave, &QPushButton::clicked, this, &AskLine::putAway);
    hide();
}

void AskLine::ask(const QString &question, const QString &begin, const QString &hint, std::function<bool(const QString &typed)> take)
{
    m_take = std::move(take);
    m_question->setText(question);
    m_field->setText(begin);
    m_field->setPlaceholderText(hint);
    m_field->setAccessibleName(question);
    m_field->selectAll();
    show();
    m_field->setFocus();
}

void AskLine::putAway()
{
    if (isHidden())
        return;
    m_take = {};
    hide();
    Q_EMIT closed();
}

void AskLine::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        return putAway();
    QFrame::keyPressEvent(event);
}

} // namespace ts
