#include "views/rack/tag_delegate.h"

#include "views/rack/rack_model.h"
#include "views/style/style.h"

#include <QFontMetrics>
#include <QLocale>
#include <QPainter>
#include <QPainterPath>

namespace ts {

namespace {

constexpr int between = 6; // tags hang this far apart
constexpr int inside = 9;  // left and right of the words

QString cut(const QFontMetrics &metrics, const QString &text, int width)
{
    return metrics.elidedText(text, Qt::ElideRight, width);
}

// The end with the eyelet is cut straighter than the other.
QPainterPath outline(const QRectF &tag)
{
    constexpr qreal eyeletEnd = 4;
    constexpr qreal other = 9;
    QPainterPath path;
    path.moveTo(tag.left() + eyeletEnd, tag.top());
    path.lineTo(tag.right() - other, tag.top());
    path.quadTo(tag.topRight(), tag.topRight() + QPointF(0, other));
    path.lineTo(tag.right(), tag.bottom() - other);
    path.quadTo(tag.bottomRight(), tag.bottomRight() - QPointF(other, 0));
    path.lineTo(tag.left() + eyeletEnd, tag.bottom());
    path.quadTo(tag.bottomLeft(), tag.bottomLeft() - QPointF(0, eyeletEnd));
    path.lineTo(tag.left(), tag.top() + eyeletEnd);
    path.quadTo(tag.topLeft(), tag.topLeft() + QPointF(eyeletEnd, 0));
    return path;
}

} // namespace

TagDelegate::TagDelegate(const Style &style, QObject *parent) : QStyledItemDelegate(parent), m_style(style)
{
    measure();
}

void TagDelegate::measure()
{
    m_figures = m_style.figures(0.95);
    m_name = m_style.text(1.0, QFont::DemiBold);
    m_quiet = m_style.text(0.95);
    m_foot = m_style.text(0.88);
    m_mark = m_style.text(0.84, QFont::DemiBold);
    m_group = m_style.text(0.92, QFont::DemiBold);
    m_headingHeight = QFontMetrics(m_group).height() + 14;
    m_tagHeight = QFontMetrics(m_name).height() + QFontMetrics(m_quiet).height() + QFontMetrics(m_foot).height() + 2 * 7 + 4 + between;
}

QSize TagDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    return {option.rect.width(), index.data(RackModel::IsHeading).toBool() ? m_headingHeight : m_tagHeight};
}

void TagDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (index.data(RackModel::IsHeading).toBool()) {
        paintHeading(*painter, option, index);
        painter->restore();
        return;
    }
    const Ink &ink = m_style.ink();
    const QRect tag = option.rect.adjusted(1, 1, -2, -between);
    const bool inHand = !m_inHand.isNull() && index.data(RackModel::UnitId).toUuid() == m_inHand;
    const bool hover = option.state.testFlag(QStyle::State_MouseOver);
    const QRectF edge = QRectF(tag).adjusted(inHand ? 1 : 0.5, inHand ? 1 : 0.5, inHand ? -1 : -0.5, inHand ? -1 : -0.5);
    painter->setBrush(ink.sheet);
    painter->setPen(QPen(inHand ? ink.copper : hover ? ink.strong : ink.line, inHand ? 2 : 1));
    painter->drawPath(outline(edge));
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setBrush(Qt::NoBrush);
        painter->setPen(QPen(inHand ? ink.copper : ink.ink, 1, Qt::DashLine));
        painter->drawPath(outline(edge.adjusted(3, 3, -3, -3)));
    }
    if (const QVariant words = index.data(RackModel::Words); words.isValid())
        paintTag(*painter, tag.adjusted(inside, 7, -inside, -7), words.value<TagWords>());
    painter->restore();
}

void TagDelegate::paintHeading(QPainter &painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const Ink &ink = m_style.ink();
    const QRect line = option.rect.adjusted(4, 6, -5, 0);
    const bool folded = index.data(RackModel::Folded).toBool();
    const QString count = QLocale().toString(index.data(RackModel::Count).toInt());
    painter.setFont(m_group);
    painter.setPen(option.state.testFlag(QStyle::State_MouseOver) ? ink.ink : ink.faint);
    const QFontMetrics metrics(m_group);
    const int counted = metrics.horizontalAdvance(count);
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, count);
    const QString name = cut(metrics, index.data().toString(), line.width() - counted - metrics.height());
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, name);
    if (folded) { // a mark that there is more behind it
        const qreal size = metrics.ascent() / 3.0;
        const QPointF at(line.left() + metrics.horizontalAdvance(name) + 2 * size, line.center().y() + 1);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(painter.pen().color(), 1.4));
        painter.drawPolyline(QPolygonF({at + QPointF(0, -size), at + QPointF(size, 0), at + QPointF(0, size)}));
    }
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(ink.copper, 1));
        painter.drawRoundedRect(QRectF(option.rect).adjusted(0.5, 4.5, -1.5, -1.5), 4, 4);
    }
}

void TagDelegate::paintTag(QPainter &painter, const QRect &tag, const TagWords &words) const
{
    const Ink &ink = m_style.ink();
    const QFontMetrics figures(m_figures);
    const QFontMetrics name(m_name);
    const QFontMetrics quiet(m_quiet);
    const QFontMetrics foot(m_foot);
    const int eyelet = qRound(name.ascent() * 0.75);
    QRect line(tag.left(), tag.top(), tag.width(), name.height());
    painter.setBrush(ink.rack);
    painter.setPen(QPen(ink.strong, 1.2));
    painter.drawEllipse(QRectF(line.left() + 0.5, line.center().y() - eyelet / 2.0, eyelet, eyelet));
    const int indent = eyelet + 5;
    line.adjust(indent, 0, 0, 0);
    const int base = line.top() + name.ascent();
    painter.setFont(m_figures);
    painter.setPen(ink.copper);
    painter.drawText(line.left(), base, words.tag);
    painter.setFont(m_name);
    painter.setPen(ink.ink);
    const int after = figures.horizontalAdvance(words.tag) + 6;
    painter.drawText(line.left() + after, base, cut(name, words.name, line.width() - after));
    line = QRect(line.left(), line.bottom() + 3, line.width(), quiet.height());
    painter.setFont(m_quiet);
    painter.setPen(ink.quiet);
    painter.drawText(line.left(), line.top() + quiet.ascent(), cut(quiet, words.matter, line.width()));
    paintFoot(painter, QRect(line.left(), line.bottom() + 3, line.width(), foot.height()), words);
}

// What can hurt comes first: where the tag is narrow, hours, money and at last the day give way to it.
void TagDelegate::paintFoot(QPainter &painter, const QRect &line, const TagWords &words) const
{
    const Ink &ink = m_style.ink();
    const QFontMetrics foot(m_foot);
    const QFontMetrics mark(m_mark);
    const int base = line.top() + foot.ascent();
    int left = line.left();
    int needed = foot.horizontalAdvance(words.days);
    for (const TagWords::Mark &each : words.marks)
        needed += mark.horizontalAdvance(each.word) + 14 + 6;
    QString right = words.hours.isEmpty() ? words.spent : words.spent + QStringLiteral(" · ") + words.hours;
    for (const QString &shorter : {words.spent, QString()})
        if (needed + 8 + foot.horizontalAdvance(right) > line.width())
            right = shorter;
    painter.setFont(m_foot);
    painter.setPen(ink.faint);
    painter.drawText(line, Qt::AlignRight | Qt::AlignVCenter, right);
    const int end = line.right() - (right.isEmpty() ? 0 : foot.horizontalAdvance(right) + 8);
    if (needed <= line.width() || words.marks.isEmpty()) {
        painter.drawText(left, base, cut(foot, words.days, end - left));
        left += foot.horizontalAdvance(words.days) + 7;
    }
    for (const TagWords::Mark &each : words.marks) {
        const QString word = cut(mark, each.word, end - left - 14);
        const int width = mark.horizontalAdvance(word) + 14;
        if (left + width > end + 1)
            break;
        const ToneInk tone = toneInk(each.tone, m_style);
        const QRectF box(left, line.top() - 1, width, line.height() + 2);
        painter.setPen(Qt::NoPen);
        painter.setBrush(tone.ground);
        painter.drawRoundedRect(box, box.height() / 2, box.height() / 2);
        painter.setPen(tone.text);
        painter.setFont(m_mark);
        painter.drawText(box, Qt::AlignCenter, word);
        left += width + 6;
    }
}

} // namespace ts
