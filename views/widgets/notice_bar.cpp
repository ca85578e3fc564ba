#include "views/widgets/notice_bar.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QTimer>
#include <QWindow>

namespace ts {

namespace {
constexpr int justSaidMs = 300; // a click may refuse what it leaves and succeed where it goes
}

NoticeBar::NoticeBar(QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("notice"));
    m_text = styledLabel("trouble", {}, this);
    m_text->setWordWrap(true);
    m_text->setAccessibleName(tr("What went wrong"));
    auto *away = wordButton(tr("Put away"), this);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::wide, gap::small, gap::normal, gap::small);
    row->addWidget(m_text, 1);
    row->addWidget(away);
    connect(away, &QPushButton::clicked, this, &QWidget::hide);
    m_justSaid = new QTimer(this);
    m_justSaid->setSingleShot(true);
    m_justSaid->setInterval(justSaidMs);
    hide();
}

void NoticeBar::refuse(const QString &sentence)
{
    m_text->setText(sentence);
    m_justSaid->start();
    show();
    // Whoever has the keyboard may want Esc for something of its own, and gets it.
    if (QWindow *whole = window()->windowHandle())
        whole->installEventFilter(this);
}

void NoticeBar::settle()
{
    if (!m_justSaid->isActive())
        hide();
}

bool NoticeBar::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent *>(event)->key() == Qt::Key_Escape)
        hide();
    return QFrame::eventFilter(watched, event);
}

QString NoticeBar::text() const
{
    return isHidden() ? QString() : m_text->text();
}

SaidLine::SaidLine(QWidget *parent) : QFrame(parent)
{
    setObjectName(QStringLiteral("said"));
    m_text = styledLabel("quiet", {}, this);
    m_text->setAccessibleName(tr("What was done last"));
    m_text->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred); // a long sentence does not widen the window
    m_undo = wordButton(tr("Undo"), this);
    QSizePolicy keeps = m_undo->sizePolicy();
    keeps.setRetainSizeWhenHidden(true);
    m_undo->setSizePolicy(keeps);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::normal, 2, gap::normal, 2);
    row->addWidget(m_undo);
    row->addWidget(m_text, 1);
    m_undo->hide();
    m_timer = new QTimer(this);
    m_timer->setSingleShot(true);
    m_timer->setInterval(15000);
    connect(m_timer, &QTimer::timeout, this, [this] { say({}, false); });
    connect(m_undo, &QPushButton::clicked, this, &SaidLine::undoWanted);
}

void SaidLine::say(const QString &sentence, bool undoable)
{
    m_text->setText(sentence);
    m_text->setToolTip(sentence.toHtmlEscaped());
    m_undo->setVisible(undoable);
    if (sentence.isEmpty())
        m_timer->stop();
    else
        m_timer->start();
}

QString SaidLine::text() const
{
    return m_text->text();
}

void SaidLine::addAtRight(QWidget *widget)
{
    layout()->addWidget(widget);
}

} // namespace ts
