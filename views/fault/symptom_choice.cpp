#include "views/fault/symptom_choice.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/flow_layout.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ts {

SymptomChoice::SymptomChoice(QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("card"));
    m_question = styledLabel("strong", {}, this);
    m_question->setWordWrap(true);
    m_answers = new FlowLayout(gap::small);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::normal, gap::small, gap::normal, gap::small);
    column->setSpacing(gap::small);
    column->addWidget(m_question);
    column->addLayout(m_answers);
    hide();
}

void SymptomChoice::offer(const QString &question, const QList<FaultOffer> &offers)
{
    putAway();
    m_question->setText(question);
    QPushButton *first = nullptr;
    for (const FaultOffer &each : offers) {
        auto *answer = button(QString(each.symptom).replace(QLatin1Char('&'), QLatin1String("&&")), this);
        answer->setToolTip(each.from.toHtmlEscaped());
        connect(answer, &QPushButton::clicked, this, [this, each] {
            putAway();
            Q_EMIT chosen(each);
        });
        m_answers->addWidget(answer);
        first = first ? first : answer;
    }
    auto *none = wordButton(tr("None of these"), this);
    connect(none, &QPushButton::clicked, this, [this] {
        putAway();
        Q_EMIT closed();
    });
    m_answers->addWidget(none);
    show();
    (first ? first : none)->setFocus();
}

void SymptomChoice::putAway()
{
    hide();
    while (QLayoutItem *item = m_answers->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater(); // one of them may be what was pressed
        delete item;
    }
}

QString SymptomChoice::question() const
{
    return isHidden() ? QString() : m_question->text();
}

void SymptomChoice::keyPressEvent(QKeyEvent *event)
{
    if (event->key() != Qt::Key_Escape)
        return QFrame::keyPressEvent(event);
    putAway();
    Q_EMIT closed();
}

} // namespace ts
