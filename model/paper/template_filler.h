#pragma once

#include <QHash>
#include <QList>
#include <QString>

namespace ts {

/// What a template is filled with: texts and lists by name. A name that is not here is looked for one level further out.
struct Filling {
    QHash<QString, QString> texts;
    QHash<QString, QList<Filling>> lists;

    Filling &put(const char *name, const QString &text)
    {
        texts.insert(QString::fromLatin1(name), text);
        return *this;
    }
    Filling &put(const char *name, const QList<Filling> &list)
    {
        lists.insert(QString::fromLatin1(name), list);
        return *this;
    }
};

/// Fills a template. `[[name]]` becomes the text of that name, always escaped for HTML text and attributes; `[[name|lines]]`
/// likewise, with its line breaks kept as <br>. `<!-- each name -->…<!-- end -->` is repeated for every member of a list,
/// `<!-- if name -->…<!-- end -->` stands where a text or list is not empty, `<!-- unless name -->…<!-- end -->` where it is.
/// There is no way to fill in anything unescaped. A name that nothing was put under becomes nothing, with a warning.
[[nodiscard]] QString filled(const QString &pattern, const Filling &filling);

/// The text with & < > " ' escaped.
[[nodiscard]] QString escaped(const QString &text);

} // namespace ts
