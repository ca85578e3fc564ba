#include "model/paper/even_figures.h"

#include <QFontMetricsF>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>

#include <algorithm>
#include <array>
#include <cmath>

namespace ts {

namespace {

using Widths = std::array<qreal, 10>; ///< what each digit lacks to a nought

// Readers of a PDF take a gap of a tenth of the letter's height for a space between words; "11" must stay one word.
constexpr qreal widestGap = 0.09;

Widths lackOf(const QFont &font)
{
    const QFontMetricsF metrics(font);
    Widths lack{};
    for (size_t digit = 0; digit < lack.size(); ++digit)
        lack[digit] = metrics.horizontalAdvance(u'0') - metrics.horizontalAdvance(QChar(u'0' + static_cast<char16_t>(digit)));
    return lack;
}

} // namespace

void evenOutFigures(QTextDocument &document)
{
    QHash<QString, Widths> known;
    QTextCursor edit(&document);
    edit.beginEditBlock();
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (!block.blockFormat().alignment().testFlag(Qt::AlignRight) || !QTextCursor(block).currentTable())
            continue;
        const QString text = block.text();
        const QFont font = block.begin().fragment().charFormat().font().resolve(document.defaultFont());
        auto lack = known.constFind(font.key());
        if (lack == known.constEnd())
            lack = known.insert(font.key(), lackOf(font));
        // Half of what is lacking goes before the digit, half behind it.
        QList<qreal> behind(text.size(), 0);
        for (qsizetype i = 0; i < text.size(); ++i) {
            if (text.at(i) < u'0' || text.at(i) > u'9')
                continue;
            const qreal half = (*lack)[static_cast<size_t>(text.at(i).unicode() - u'0')] / 2;
            behind[i] += half;
            if (i > 0)
                behind[i - 1] += half;
        }
        for (qsizetype i = 0; i < text.size(); ++i) {
            const qreal spacing = std::min(behind[i], widestGap * font.pixelSize());
            if (std::abs(spacing) < 0.01)
                continue;
            QTextCursor cursor(block);
            cursor.setPosition(block.position() + static_cast<int>(i));
            cursor.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor);
            QTextCharFormat wider;
            wider.setFontLetterSpacingType(QFont::AbsoluteSpacing);
            wider.setFontLetterSpacing(spacing);
            cursor.mergeCharFormat(wider);
        }
    }
    edit.endEditBlock();
}

} // namespace ts
