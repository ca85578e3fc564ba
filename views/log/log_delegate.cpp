#include "views/log/log_delegate.h"

#include "views/log/entry_text.h"
#include "views/log/log_model.h"
#include "views/photos/thumbnails.h"
#include "views/style/style.h"
#include "views/widgets/measured_text.h"

#include <QPainter>
#include <QWidget>
#include <QtMath>

namespace ts {

namespace {
constexpr int keptLayouts = 400; // a few screens up and down
constexpr qreal photoShape = 0.7; // of its width
} // namespace

LogDelegate::LogDelegate(const LogModel &model, const Style &style, Thumbnails &thumbnails, QObject *parent)
    : QAbstractItemDelegate(parent), m_model(model), m_style(style), m_thumbnails(thumbnails), m_laid(keptLayouts)
{
}

void LogDelegate::setWidth(int width)
{
    if (width == m_width)
        return;
    m_width = width;
    forgetAll();
}

void LogDelegate::forget(const QString &key)
{
    m_laid.remove(key);
    m_heights.remove(key);
}

void LogDelegate::forgetAll()
{
    m_laid.clear();
    m_heights.clear();
}

void LogDelegate::setEditor(const QString &key, const QWidget *editor)
{
    m_editedKey = key;
    m_editor = editor;
}

int LogDelegate::timeWidth() const
{
    return QFontMetrics(m_style.text(0.95)).horizontalAdvance(QLocale().toString(QTime(20, 58), QLocale::ShortFormat)) + m_style.space(2);
}

int LogDelegate::lineX() const
{
    return m_style.space(3) + timeWidth() + m_style.space(4);
}

int LogDelegate::textLeft() const
{
    return lineX() + m_style.space(5);
}

int LogDelegate::rightWidth() const
{
    return QFontMetrics(m_style.text(0.95)).horizontalAdvance(QStringLiteral("takes 00 h 00 m")) + m_style.space(1);
}

int LogDelegate::textWidth() const
{
    return qMax(80, m_width - textLeft() - rightWidth() - m_style.space(4));
}

QFont LogDelegate::headlineFont(const LogEntry &entry) const
{
    // A note is running text; anything else has a headline.
    return m_style.text(1.0, entry.what() == EventKind::Note ? QFont::Normal : QFont::DemiBold);
}

const LogDelegate::Laid &LogDelegate::laid(const LogEntry &entry) const
{
    if (const Laid *known = m_laid.object(entry.key))
        return *known;
    auto *laid = new Laid;
    laid->headlineHeight = breakLines(laid->headline, entry.headline, headlineFont(entry), textWidth());
    laid->detailHeight = breakLines(laid->detail, entry.figures.isEmpty() ? entry.detail : entry.figures + QStringLiteral("  ") + entry.detail, m_style.text(0.97), textWidth(),
                                    {m_style.figures(0.97), static_cast<int>(entry.figures.size())});
    m_laid.insert(entry.key, laid);
    return *laid;
}

int LogDelegate::photosPerLine() const
{
    return qMax(1, (textWidth() + gap::small) / (m_style.space(16) + gap::small));
}

QRect LogDelegate::photoRect(int index, int top, int left) const
{
    const QSize size(m_style.space(16), qRound(m_style.space(16) * photoShape));
    const int across = photosPerLine();
    return {QPoint(left + index % across * (size.width() + gap::small), top + index / across * (size.height() + gap::small)), size};
}

int LogDelegate::heightOf(const LogEntry &entry) const
{
    const int line = QFontMetrics(m_style.text()).lineSpacing();
    if (entry.isDay)
        return line + m_style.space(3);
    const QString detail = entry.figures.isEmpty() ? entry.detail : entry.figures + QStringLiteral("  ") + entry.detail;
    int height = 0;
    // Most texts stand on one line and are only measured for that, which is much quicker than breaking them.
    const bool oneLine = fitsOneLine(entry.headline, headlineFont(entry), textWidth() - (entry.verdict ? m_style.space(20) : 0)) &&
                         (entry.figures.isEmpty() ? fitsOneLine(detail, m_style.text(0.97), textWidth()) : fitsOneLine(detail, m_style.figures(0.97), textWidth()));
    if (oneLine)
        height = qCeil(QFontMetricsF(headlineFont(entry)).height()) + (detail.isEmpty() ? 0 : detailLine(m_style, !entry.figures.isEmpty()));
    else
        height = qCeil(laid(entry).headlineHeight) + (detail.isEmpty() ? 0 : qCeil(laid(entry).detailHeight));
    if (!entry.photos.isEmpty())
        height = photoRect(static_cast<int>(entry.photos.size()) - 1, height + gap::tight, 0).bottom() + 1;
    return height + m_style.space(3.2);
}

QSize LogDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    Q_UNUSED(option)
    const LogEntry &entry = m_model.entry(index.row());
    if (m_editor && entry.key == m_editedKey)
        return {m_width, (m_editor->hasHeightForWidth() ? m_editor->heightForWidth(m_width - textLeft() - m_style.space(4)) : m_editor->sizeHint().height()) + m_style.space(2)};
    auto known = m_heights.constFind(entry.key);
    if (known == m_heights.constEnd())
        known = m_heights.insert(entry.key, heightOf(entry));
    return {m_width, *known};
}

void LogDelegate::updateEditorGeometry(QWidget *editor, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    Q_UNUSED(index)
    editor->setGeometry(option.rect.adjusted(textLeft() - m_style.space(1), m_style.space(1), -m_style.space(3), -m_style.space(1)));
}

int LogDelegate::photoAt(const LogEntry &entry, const QRect &row, const QPoint &point) const
{
    if (entry.photos.isEmpty())
        return -1;
    const Laid &lines = laid(entry);
    const int top = row.top() + m_style.space(1) + qCeil(lines.headlineHeight) + (entry.detail.isEmpty() ? 0 : qCeil(lines.detailHeight)) + gap::tight;
    for (int i = 0; i < entry.photos.size(); ++i)
        if (photoRect(i, top, row.left() + textLeft()).contains(point))
            return i;
    return -1;
}

void LogDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const LogEntry &entry = m_model.entry(index.row());
    const QRect row = option.rect;
    const Ink &ink = m_style.ink();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (entry.isDay) {
        paintDay(*painter, row, entry);
        painter->restore();
        return;
    }
    const bool edited = m_editor && entry.key == m_editedKey; // its editor covers the words
    const bool selected = !edited && (option.state & QStyle::State_Selected);
    const bool current = (option.state & QStyle::State_HasFocus) && option.state & QStyle::State_KeyboardFocusChange;
    const QRect ground = row.adjusted(textLeft() - m_style.space(1.5), 0, -m_style.space(1), -1);
    if (selected || (!edited && (option.state & QStyle::State_HasFocus))) {
        painter->setPen(option.state & QStyle::State_HasFocus ? QPen(ink.copper, current ? 2 : 1) : QPen(Qt::NoPen));
        painter->setBrush(selected ? QBrush(ink.copperPaper) : Qt::NoBrush);
        painter->drawRoundedRect(QRectF(ground).adjusted(1, 1, -1, 0), m_style.radius(), m_style.radius());
    }
    // The line of the day runs from mark to mark.
    const int top = row.top() + m_style.space(1);
    const int centre = top + QFontMetrics(m_style.text()).lineSpacing() / 2;
    painter->setPen(QPen(ink.strong, 1.5));
    const bool first = index.row() == 0 || m_model.entry(index.row() - 1).isDay;
    painter->drawLine(QPointF(row.left() + lineX(), first ? centre : row.top()), QPointF(row.left() + lineX(), m_model.endsDay(index.row()) ? centre : row.bottom() + 1));
    paintMark(*painter, QPoint(row.left() + lineX(), centre), entry);

    painter->setFont(m_style.text(0.95));
    painter->setPen(ink.faint);
    const int line = QFontMetrics(m_style.text()).lineSpacing();
    painter->drawText(QRect(row.left(), top, m_style.space(3) + timeWidth(), line), Qt::AlignRight | Qt::AlignVCenter, entry.time);
    if (edited) {
        painter->restore();
        return;
    }
    painter->setPen(ink.quiet);
    paintRight(*painter, QRect(row.right() - m_style.space(3) - rightWidth(), top, rightWidth(), row.height() - m_style.space(1)), line, entry.right);

    const Laid &lines = laid(entry);
    const QPointF at(row.left() + textLeft(), top);
    painter->setPen(ink.ink);
    lines.headline.draw(painter, at);
    if (entry.verdict && *entry.verdict != Verdict::NoLimit) {
        const QTextLine last = lines.headline.lineAt(lines.headline.lineCount() - 1);
        paintPill(*painter, m_style, toneOf(*entry.verdict), shown::verdict(*entry.verdict), QPointF(at.x() + last.naturalTextWidth() + m_style.space(2), at.y() + last.y()), last.height());
    }
    painter->setPen(ink.quiet);
    lines.detail.draw(painter, at + QPointF(0, lines.headlineHeight));
    if (!entry.photos.isEmpty())
        paintPhotos(*painter, entry, top + qCeil(lines.headlineHeight) + (entry.detail.isEmpty() ? 0 : qCeil(lines.detailHeight)) + gap::tight, row.left() + textLeft());
    painter->restore();
}

void LogDelegate::paintDay(QPainter &painter, const QRect &row, const LogEntry &entry) const
{
    painter.setFont(m_style.text(0.92, QFont::DemiBold));
    painter.setPen(m_style.ink().faint);
    const QRect words = row.adjusted(lineX() - m_style.space(2), m_style.space(1), -m_style.space(3), 0);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, entry.headline);
    const int from = words.left() + painter.fontMetrics().horizontalAdvance(entry.headline) + m_style.space(2);
    painter.setPen(m_style.ink().line);
    if (from < words.right())
        painter.drawLine(QPointF(from, words.center().y() + 0.5), QPointF(words.right(), words.center().y() + 0.5));
}

void LogDelegate::paintMark(QPainter &painter, const QPoint &centre, const LogEntry &entry) const
{
    const int size = m_style.space(4.5);
    const QRect round(centre.x() - size / 2, centre.y() - size / 2, size, size);
    const bool plain = entry.mark.tone == Tone::Neutral;
    const QColor colour = plain ? m_style.ink().neutral : toneInk(entry.mark.tone, m_style).text;
    painter.setPen(QPen(plain ? m_style.ink().strong : colour, 1.6));
    painter.setBrush(m_style.ink().sheet);
    painter.drawEllipse(round);
    if (!entry.mark.icon.isEmpty()) {
        paintTinted(painter, m_style.icon(entry.mark.icon), round.adjusted(size / 4, size / 4, -size / 4, -size / 4), colour);
        return;
    }
    painter.setFont(m_style.text(0.82, QFont::Bold));
    painter.setPen(colour);
    painter.drawText(round, Qt::AlignCenter, entry.mark.sign);
}

void LogDelegate::paintPhotos(QPainter &painter, const LogEntry &entry, int top, int left) const
{
    for (int i = 0; i < entry.photos.size(); ++i) {
        const QRect place = photoRect(i, top, left);
        const QPixmap cover = m_thumbnails.cover(entry.photos.at(i), place.size(), 4, painter.device()->devicePixelRatioF());
        if (!cover.isNull()) {
            painter.drawPixmap(place.topLeft(), cover);
            continue;
        }
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_style.ink().bar);
        painter.drawRoundedRect(place, 4, 4);
    }
}

} // namespace ts
