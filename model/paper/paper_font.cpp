#include "model/paper/paper_font.h"

#include <QFontDatabase>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>

#include <algorithm>

namespace ts {

namespace {

bool needsShaping(const QString &text)
{
    return std::any_of(text.cbegin(), text.cend(), [](QChar c) {
        switch (c.script()) {
        case QChar::Script_Common:
        case QChar::Script_Latin:
        case QChar::Script_Greek:
        case QChar::Script_Cyrillic:
            return c.isSurrogate();
        default:
            return true;
        }
    });
}

} // namespace

QFont paperFont(int pixels, int weight)
{
    const auto inter = QStringLiteral("Inter");
    QFont font(QFontDatabase::hasFamily(inter) ? inter : QFontDatabase::systemFont(QFontDatabase::GeneralFont).family());
    font.setPixelSize(pixels);
    font.setWeight(static_cast<QFont::Weight>(weight));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setStyleStrategy(QFont::PreferNoShaping);
    return font;
}

QFont fontFor(const QString &text, QFont font)
{
    if (needsShaping(text))
        font.setStyleStrategy(QFont::PreferDefault);
    return font;
}

void shapeWhereNeeded(QTextDocument &document)
{
    QTextCharFormat shaped;
    shaped.setFontStyleStrategy(QFont::PreferDefault);
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (!needsShaping(block.text()))
            continue;
        QTextCursor cursor(block);
        cursor.movePosition(QTextCursor::EndOfBlock, QTextCursor::KeepAnchor);
        cursor.mergeCharFormat(shaped);
    }
}

} // namespace ts
