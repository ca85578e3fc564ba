#include "views/log/move_bar.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/unit_field.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>

namespace ts {

MoveBar::MoveBar(Workplace &workplace, QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("jotBar"));
    m_label = styledLabel("strong", {}, this);
    m_field = new UnitField(workplace, tr("Unit to move the entries to"), this);
    m_label->setBuddy(m_field);
    QPushButton *leave = wordButton(tr("Leave them here"), this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::wide, gap::small, gap::wide, gap::small);
    row->setSpacing(gap::small);
    row->addWidget(m_label);
    row->addWidget(m_field, 1);
    row->addWidget(leave);
    connect(m_field, &UnitField::chosen, this, &MoveBar::chosen);
    connect(leave, &QPushButton::clicked, this, &MoveBar::closed);
    hide();
}

void MoveBar::ask(int entries)
{
    m_label->setText(tr("Move %n entries to", nullptr, entries));
    show();
    m_field->setFocus();
}

void MoveBar::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape) {
        Q_EMIT closed();
        return;
    }
    // Enter chooses in the field and goes no further.
    if (event->key() != Qt::Key_Return && event->key() != Qt::Key_Enter)
        QFrame::keyPressEvent(event);
}

} // namespace ts
