#include "views/widgets/answers_bar.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>

namespace ts {

AnswersBar::AnswersBar(QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("answers"));
    m_text = styledLabel("question", {}, this);
    m_text->setWordWrap(true);
    m_row = new QHBoxLayout(this);
    m_row->setContentsMargins(gap::wide, gap::small, gap::normal, gap::small);
    m_row->setSpacing(gap::small);
    m_row->addWidget(m_text, 1);
    hide();
}

void AnswersBar::setField(QWidget *field)
{
    m_field = field;
    m_row->addWidget(field, 1);
}

void AnswersBar::ask(const QString &question, const QList<Answer> &answers)
{
    done();
    m_text->setText(question);
    for (const Answer &answer : answers) {
        auto *choice = m_buttons.isEmpty() ? primaryButton(answer.word, this) : button(answer.word, this);
        connect(choice, &QPushButton::clicked, this, [this, act = answer.act] {
            done();
            if (act)
                act();
        });
        m_row->addWidget(choice);
        m_buttons << choice;
        m_last = answer.act;
    }
    show();
}

void AnswersBar::done()
{
    for (QWidget *each : std::as_const(m_buttons)) {
        each->hide();
        each->deleteLater(); // one of them may be the one that was pressed
    }
    m_buttons.clear();
    m_text->clear();
    hide();
}

QString AnswersBar::question() const
{
    return m_text->text();
}

void AnswersBar::takeFocus()
{
    if (m_field)
        m_field->setFocus();
    else if (!m_buttons.isEmpty())
        m_buttons.first()->setFocus();
}

void AnswersBar::keyPressEvent(QKeyEvent *event)
{
    if (event->key() != Qt::Key_Escape) {
        QFrame::keyPressEvent(event);
        return;
    }
    const auto act = std::exchange(m_last, {});
    done();
    if (act)
        act();
}

} // namespace ts
