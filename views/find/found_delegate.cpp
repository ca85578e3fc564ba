#include "views/find/found_delegate.h"

#include "views/find/found_model.h"
#include "views/style/style.h"

#include <QFontMetrics>
#include <QPainter>

namespace ts {

QSize FoundDelegate::sizeHint(const QStyleOptionViewItem &, const QModelIndex &index) const
{
    return {100, m_style.space(index.data(FoundModel::IsHeading).toBool() ? 6 : 6.6)};
}

void FoundDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    painter->save();
    const Ink &ink = m_style.ink();
    QRect line = option.rect.adjusted(10, 0, -10, 0);
    const auto words = [&](const QFont &font, const QColor &colour, const QString &text, int most) {
        if (text.isEmpty())
            return;
        painter->setFont(font);
        painter->setPen(colour);
        const QString shown = QFontMetrics(font).elidedText(text, Qt::ElideRight, most);
        painter->drawText(line, Qt::AlignLeft | Qt::AlignVCenter, shown);
        line.setLeft(line.left() + QFontMetrics(font).horizontalAdvance(shown) + 8);
    };
    if (index.data(FoundModel::IsHeading).toBool()) {
        line.adjust(0, m_style.space(1), 0, 0);
        words(m_style.text(0.92, QFont::DemiBold), ink.faint, index.data().toString(), line.width());
        painter->restore();
        return;
    }
    if (option.state.testFlag(QStyle::State_Selected)) {
        painter->fillRect(option.rect, ink.copperPaper);
        painter->fillRect(QRect(option.rect.left(), option.rect.top(), 3, option.rect.height()), ink.copper);
    }
    words(m_style.figures(0.95), ink.copper, index.data(FoundModel::Tag).toString(), line.width());
    const QString text = index.data().toString();
    const QString unit = index.data(FoundModel::UnitName).toString();
    if (text.isEmpty()) {
        words(m_style.text(1.0, QFont::DemiBold), ink.ink, unit, line.width());
    } else {
        words(m_style.text(), ink.ink, text, unit.isEmpty() ? line.width() : line.width() * 2 / 3);
        words(m_style.text(0.92), ink.quiet, unit, line.width());
    }
    painter->restore();
}

} // namespace ts
