#include "model/values/expected.h"

namespace ts {

QString Trouble::sentence() const
{
    QString text = did;
    if (!wrong.isEmpty())
        text += text.isEmpty() ? wrong : QStringLiteral(": ") + wrong;
    if (!todo.isEmpty())
        text += QStringLiteral("; ") + todo;
    text = text.simplified();
    if (!text.endsWith(QLatin1Char('.')) && !text.endsWith(QLatin1Char('?')))
        text += QLatin1Char('.');
    return text;
}

} // namespace ts
