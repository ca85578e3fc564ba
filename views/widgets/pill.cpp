#include "views/widgets/pill.h"

#include "views/style/style.h"

#include <QStyle>

namespace ts {

QString toneName(Tone tone)
{
    switch (tone) {
    case Tone::Within:
        return QStringLiteral("within");
    case Tone::Outside:
        return QStringLiteral("outside");
    case Tone::TooClose:
        return QStringLiteral("too_close");
    case Tone::Hint:
        return QStringLiteral("hint");
    case Tone::Copper:
        return QStringLiteral("copper");
    case Tone::Neutral:
        break;
    }
    return QStringLiteral("neutral");
}

Tone toneOf(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Within:
        return Tone::Within;
    case Verdict::Outside:
        return Tone::Outside;
    case Verdict::TooCloseToCall:
        return Tone::TooClose;
    case Verdict::NoLimit:
        break;
    }
    return Tone::Neutral;
}

ToneInk toneInk(Tone tone, const Style &style)
{
    const QString name = toneName(tone);
    return {inkNamed(style.ink(), name), inkNamed(style.ink(), name + QStringLiteral("_paper"))};
}

Pill::Pill(const QString &word, Tone tone, QWidget *parent) : QLabel(parent)
{
    setObjectName(QStringLiteral("pill"));
    setTextFormat(Qt::PlainText);
    setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Maximum);
    show(word, tone);
}

void Pill::show(const QString &word, Tone tone)
{
    setText(word);
    setHidden(word.isEmpty());
    setProperty("tone", toneName(tone));
    style()->unpolish(this);
    style()->polish(this);
}

} // namespace ts
