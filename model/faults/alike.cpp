#include "model/faults/alike.h"

#include <QSet>
#include <QStringList>

#include <algorithm>

namespace ts {

namespace {

QSet<QString> tellingWords(const QString &text)
{
    static const QSet<QString> filling{QStringLiteral("the"),  QStringLiteral("and"), QStringLiteral("its"),
                                       QStringLiteral("for"),  QStringLiteral("not"), QStringLiteral("does"),
                                       QStringLiteral("with"), QStringLiteral("from")};
    QSet<QString> words;
    QString word;
    const auto close = [&] {
        if (word.size() >= 3 && !filling.contains(word))
            words << (word.size() > 3 && word.endsWith(QLatin1Char('s')) ? word.chopped(1) : word);
        word.clear();
    };
    for (const QChar c : text.toLower()) {
        if (c.isLetterOrNumber())
            word += c;
        else
            close();
    }
    close();
    return words;
}

} // namespace

double sharedWords(const QString &a, const QString &b)
{
    if (a.simplified().compare(b.simplified(), Qt::CaseInsensitive) == 0)
        return 1;
    const QSet<QString> left = tellingWords(a), right = tellingWords(b);
    const qsizetype both = (left & right).size();
    const qsizetype all = (left | right).size();
    return all > 0 ? static_cast<double>(both) / static_cast<double>(all) : 0;
}

bool alike(const QString &a, const QString &b)
{
    if (sharedWords(a, b) >= 0.5)
        return true;
    const QSet<QString> left = tellingWords(a), right = tellingWords(b);
    const QSet<QString> &shorter = left.size() <= right.size() ? left : right;
    return shorter.size() >= 2 && (left & right).size() == shorter.size();
}

} // namespace ts
