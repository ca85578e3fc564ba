#include "views/frame/help_card.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>

namespace ts {

HelpCard::HelpCard(QWidget *parent) : Card({}, parent)
{
    m_text = new QLabel(this);
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::PlainText);
    body()->addWidget(m_text);
    m_keys = styledLabel("quiet", tr("Ctrl+K finds anything. Ctrl+1 to Ctrl+8 are the unit’s pages, Ctrl+D its details, Alt+1 to Alt+9 move it to a stage from Scouted to Closed. "
                                     "Alt+Up and Alt+Down go along the rack, F9 starts and stops the clock, Ctrl+Z undoes."),
                          this);
    m_keys->setWordWrap(true);
    body()->addWidget(m_keys);
    auto *away = wordButton(tr("Put away"), this);
    headRow()->addWidget(away);
    connect(away, &QPushButton::clicked, this, &HelpCard::putAway);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("What this page is for"));
    parent->installEventFilter(this);
    hide();
}

void HelpCard::explain(const QString &page, const QString &text)
{
    if (isVisible()) {
        putAway();
        return;
    }
    setHeading(page);
    m_text->setText(text.isEmpty() ? tr("Every action is in the menu with its key.") : text);
    m_before = QApplication::focusWidget();
    place();
    show();
    raise();
    setFocus();
}

void HelpCard::place()
{
    const int width = qMin(parentWidget()->width() - 2 * gap::wide, 460);
    resize(width, heightForWidth(width) > 0 ? heightForWidth(width) : sizeHint().height());
    move(parentWidget()->width() - width - gap::wide, parentWidget()->height() - height() - 3 * gap::wide);
}

void HelpCard::putAway()
{
    hide();
    if (m_before && parentWidget()->isAncestorOf(m_before))
        m_before->setFocus();
    m_before = nullptr;
}

void HelpCard::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        putAway();
    else
        Card::keyPressEvent(event);
}

bool HelpCard::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == parent() && event->type() == QEvent::Resize && isVisible())
        place();
    return Card::eventFilter(watched, event);
}

} // namespace ts
