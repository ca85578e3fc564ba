#include "model/values/name_key.h"

namespace ts {

bool turnsDirection(QChar c)
{
    const char16_t u = c.unicode();
    return u == 0x200e || u == 0x200f || u == 0x061c || (u >= 0x202a && u <= 0x202e) || (u >= 0x2066 && u <= 0x2069);
}

QString nameKey(QStringView text)
{
    QString key;
    key.reserve(text.size());
    for (const QChar c : text)
        if (!c.isSpace() && !turnsDirection(c))
            key += c;
    return key.toCaseFolded();
}

} // namespace ts
