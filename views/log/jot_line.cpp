#include "views/log/jot_line.h"

#include "views/log/offer_list.h"
#include "views/style/style.h"

#include <QKeyEvent>
#include <QPainter>

namespace ts {

namespace {
constexpr qsizetype mostOffered = 7; // as many as are taken in at a glance
}

JotLine::JotLine(const Style &style, QWidget *over, QWidget *parent) : QLineEdit(parent), m_style(style)
{
    setProperty("role", QStringLiteral("jot"));
    setMaxLength(4000);
    setAccessibleName(tr("Jot a line"));
    setPlaceholderText(tr("Jot what you saw, read, did, paid…"));
    m_list = new OfferList(style, over);
    connect(m_list, &OfferList::taken, this, [this](int index) {
        take(index);
        endOffer();
        setFocus();
    });
    connect(this, &QLineEdit::textChanged, this, [this] {
        if (!m_offering)
            endOffer();
        lookAhead();
        Q_EMIT lineChanged();
    });
    connect(this, &QLineEdit::textEdited, this, [this] { m_recalled = m_recall.size(); });
    connect(this, &QLineEdit::cursorPositionChanged, this, [this] { update(); });
}

void JotLine::setRecall(const QStringList &lines)
{
    m_recall = lines;
    m_recalled = lines.size();
    m_typed.clear();
}

OfferList *JotLine::offerList() const
{
    return m_list;
}

void JotLine::setLine(const QString &line)
{
    setText(line);
    setCursorPosition(static_cast<int>(line.size()));
}

void JotLine::keyPressEvent(QKeyEvent *event)
{
    const bool plain = event->modifiers() == Qt::NoModifier || event->modifiers() == Qt::KeypadModifier;
    switch (event->key()) {
    case Qt::Key_Up:
    case Qt::Key_Down:
        if (!plain)
            break;
        if (m_list->isVisible())
            [[maybe_unused]] const bool moved = complete(event->key() == Qt::Key_Up ? -1 : 1);
        else
            recall(event->key() == Qt::Key_Up ? -1 : 1);
        return;
    case Qt::Key_Escape:
        if (!m_list->isVisible())
            break;
        setLine(QString(m_stem)); // a copy: what is offered ends with the text
        return;
    case Qt::Key_Right:
    case Qt::Key_End:
        // At the end there is nowhere else to go: take what stands there in grey.
        if (plain && !m_ghost.isEmpty() && cursorPosition() == text().size() && !hasSelectedText()) {
            setLine(text() + m_ghost);
            return;
        }
        break;
    default:
        break;
    }
    if (event->key() == Qt::Key_Escape) {
        event->ignore(); // whoever is around may have something to leave
        return;
    }
    QLineEdit::keyPressEvent(event);
}

bool JotLine::focusNextPrevChild(bool next)
{
    if (hasFocus() && isVisible() && (next || m_list->isVisible()) && complete(next ? 1 : -1))
        return true;
    return QLineEdit::focusNextPrevChild(next);
}

void JotLine::focusOutEvent(QFocusEvent *event)
{
    endOffer();
    QLineEdit::focusOutEvent(event);
}

// Tab goes through the offers and back to what was typed; from there the next Tab leaves the line, so that nobody is kept in it.
bool JotLine::complete(int by)
{
    if (m_offered.isEmpty()) {
        if (text().trimmed().isEmpty() || cursorPosition() != text().size() || !m_offers || (m_offer == -1 && m_stem == text()))
            return false;
        m_stem = text();
        m_offered = m_offers(m_stem).mid(0, mostOffered);
        if (m_offered.isEmpty())
            return false;
        if (m_offered.size() > 1) {
            m_list->offer(m_offered, mapTo(m_list->parentWidget(), QPoint(0, -gap::tight)), qMin(width(), m_style.space(120)));
        }
    }
    const int count = static_cast<int>(m_offered.size());
    m_offer = m_offer + by < -1 ? count - 1 : m_offer + by;
    if (m_offer >= count || m_offer == -1) {
        const QString stem = m_stem;
        m_offering = true;
        setLine(stem);
        m_offering = false;
        endOffer();
        m_stem = stem; // nothing more to offer for this one
        return true;
    }
    take(m_offer);
    if (count == 1) {
        endOffer(); // the next Tab completes further
        lookAhead();
    }
    return true;
}

void JotLine::take(int index)
{
    m_offering = true;
    setLine(m_offered.value(index));
    m_offering = false;
    m_list->mark(index);
}

void JotLine::endOffer()
{
    m_offered.clear();
    m_offer = -1;
    m_stem = QString();
    if (m_list)
        m_list->hide();
}

void JotLine::recall(int by)
{
    const qsizetype to = m_recalled + by;
    if (to < 0 || to > m_recall.size())
        return;
    if (m_recalled == m_recall.size())
        m_typed = text();
    m_recalled = to;
    setLine(to == m_recall.size() ? m_typed : m_recall.at(to));
}

void JotLine::lookAhead()
{
    m_ghost.clear();
    const QString line = text();
    if (m_offers && !line.trimmed().isEmpty() && m_offered.isEmpty()) {
        const QString best = m_offers(line).value(0);
        if (best.size() > line.size() && best.startsWith(line, Qt::CaseInsensitive))
            m_ghost = best.mid(line.size());
    }
    update();
}

void JotLine::paintEvent(QPaintEvent *event)
{
    QLineEdit::paintEvent(event);
    const QRect cursor = cursorRect();
    const bool atEnd = cursorPosition() == text().size() && !hasSelectedText();
    const int from = cursor.center().x() + 1;
    const int to = width() - m_style.space(3);
    QPainter painter(this);
    painter.setPen(m_style.ink().faint);
    int room = to - from;
    if (hasFocus() && !m_ghost.isEmpty() && atEnd && room > 0) {
        painter.setFont(font());
        const QString shown = fontMetrics().elidedText(m_ghost, Qt::ElideRight, room);
        painter.drawText(QRect(from, 0, room, height()), Qt::AlignVCenter | Qt::AlignLeft, shown);
        room -= fontMetrics().horizontalAdvance(shown);
    }
    // The hint stands where the text leaves it room.
    const QString hint = m_ghost.isEmpty() || !hasFocus() ? tr("Enter to record") : tr("Tab completes");
    painter.setFont(m_style.text(0.95));
    const int needed = QFontMetrics(painter.font()).horizontalAdvance(hint);
    const int used = text().isEmpty() ? fontMetrics().horizontalAdvance(placeholderText()) + from : to - room;
    if (to - used > needed + m_style.space(4) && (!text().isEmpty() || hasFocus()) && (atEnd || text().isEmpty()))
        painter.drawText(QRect(to - needed, 0, needed, height()), Qt::AlignVCenter | Qt::AlignLeft, hint);
}

} // namespace ts
