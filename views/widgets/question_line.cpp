#include "views/widgets/question_line.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace ts {

QuestionLine::QuestionLine(QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("question"));
    m_text = styledLabel("question", {}, this);
    m_text->setWordWrap(true);
    m_yes = button({}, this);
    auto *no = wordButton(tr("Leave it"), this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::normal, gap::tight, gap::small, gap::tight);
    row->addWidget(m_text, 1);
    row->addWidget(m_yes);
    row->addWidget(no);
    connect(m_yes, &QPushButton::clicked, this, [this] {
        const auto yes = std::exchange(m_do, {});
        done();
        if (yes)
            yes();
    });
    connect(no, &QPushButton::clicked, this, &QuestionLine::done);
    hide();
}

void QuestionLine::ask(const QString &question, const QString &yesWord, std::function<void()> yes)
{
    m_do = std::move(yes);
    m_text->setText(question);
    m_yes->setText(yesWord);
    m_yes->setAccessibleName(yesWord);
    show();
}

void QuestionLine::done()
{
    m_do = {};
    m_text->clear();
    hide();
}

QString QuestionLine::question() const
{
    return m_text->text();
}

} // namespace ts
