#include "views/standing/due_line.h"

#include "model/money/ways_out.h"
#include "model/sums/hours.h"
#include "views/money/money_in_hand.h"
#include "views/money/money_words.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"

#include <QFontMetrics>
#include <QPainter>
#include <QTimer>

namespace ts {

namespace {
constexpr int minuteMs = 60'000; // a running clock comes to a full hour by itself
}

DueLine::DueLine(Workplace &workplace, QWidget *parent) : QAbstractButton(parent), m_work(workplace), m_eachMinute(new QTimer(this))
{
    setObjectName(QStringLiteral("dueLine"));
    setFocusPolicy(Qt::TabFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    hide();
    connect(this, &QAbstractButton::clicked, this, [this] { m_work.goTo(m_work.file().unit.id, PageKey::Money, QString::fromLatin1(Decision::table)); });
    connect(&m_work.money(), &MoneyInHand::answered, this, &DueLine::refresh);
    connect(&m_work.style(), &Style::changed, this, &QWidget::updateGeometry);
    connect(m_eachMinute, &QTimer::timeout, this, &DueLine::refresh);
    m_eachMinute->start(minuteMs);
}

void DueLine::refresh()
{
    const bool seen = parentWidget() && parentWidget()->isVisible();
    const auto due = m_work.hasUnit() ? dueNow(m_work.file(), hoursOf(m_work.file(), m_work.now()).minutes()) : std::nullopt;
    setHidden(!due);
    if (!due)
        return;
    if (seen && !m_work.money().isTrial())
        m_work.money().want(); // what is answered already is not asked again
    const UnitMoney *money = m_work.money().answer();
    QString says = tr("Worth a look: %1").arg(shown::asked(*due));
    if (money && money->ways.leads && money->ways.of(*money->ways.leads))
        says = tr("%1; %2 brings %3 from here").arg(says, shown::way(*money->ways.leads).toLower(), shown::moneyRound(money->ways.of(*money->ways.leads)->middle));
    setText(says);
    setAccessibleName(says);
    setToolTip(tr("Shows the ways out on the Money page").toHtmlEscaped());
    updateGeometry();
    update();
}

QRect DueLine::textRect(int width) const
{
    const int bar = m_work.style().space(2);
    return {bar, gap::tight, qMax(40, width - bar - gap::tight), 10'000};
}

int DueLine::heightForWidth(int width) const
{
    return QFontMetrics(m_work.style().text()).boundingRect(textRect(width), Qt::TextWordWrap, text()).height() + 2 * gap::tight;
}

QSize DueLine::sizeHint() const
{
    const int wide = m_work.style().space(50);
    return {wide, heightForWidth(wide)};
}

QSize DueLine::minimumSizeHint() const
{
    return {60, QFontMetrics(m_work.style().text()).height() + 2 * gap::tight};
}

void DueLine::enterEvent(QEnterEvent *event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void DueLine::leaveEvent(QEvent *event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void DueLine::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Ink &ink = m_work.style().ink();
    painter.setPen(hasFocus() ? QPen(ink.copper, 1.5) : QPen(Qt::NoPen));
    painter.setBrush(underMouse() ? ink.bar : ink.copperPaper);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), m_work.style().radius(), m_work.style().radius());
    painter.fillRect(QRectF(1, gap::tight, 3, height() - 2 * gap::tight), ink.copper);
    painter.setFont(m_work.style().text());
    painter.setPen(ink.ink);
    painter.drawText(textRect(width()), Qt::TextWordWrap, text());
}

} // namespace ts
