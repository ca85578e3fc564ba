#include "views/widgets/buttons.h"

namespace ts {

namespace {

QPushButton *made(const QString &text, const char *role, QWidget *parent)
{
    auto *button = new QPushButton(text, parent);
    button->setProperty("role", QString::fromLatin1(role));
    button->setAutoDefault(false);
    button->setAccessibleName(QString(text).remove(QLatin1Char('&')));
    return button;
}

} // namespace

QPushButton *button(const QString &text, QWidget *parent)
{
    return made(text, "plain", parent);
}

QPushButton *primaryButton(const QString &text, QWidget *parent)
{
    return made(text, "primary", parent);
}

QPushButton *wordButton(const QString &text, QWidget *parent)
{
    return made(text, "word", parent);
}

} // namespace ts
