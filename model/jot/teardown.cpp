#include "model/jot/families.h"
#include "model/jot/likeness.h"
#include "model/jot/teardown_line.h"

#include <algorithm>

namespace ts {

Jotted jotOff(const Jotting &jotting)
{
    for (const auto word : {QLatin1String("to "), QLatin1String("for "), QLatin1String("home"), QLatin1String("until ")})
        if (jotting.text.startsWith(word, Qt::CaseInsensitive))
            return asNote(jotting); // "off to lunch" came off no unit
    const TeardownLine line = splitTeardown(jotting.text);
    // What notes or another unit said would come off, comes off now: what the line says more is taken over.
    const QList<TeardownItem> &items = jotting.file.all<TeardownItem>();
    const auto known = bestNamed(
        items, line.what, &TeardownItem::what, [](const TeardownItem &each) { return each.state == TeardownState::On; },
        Likeness::Beginning);
    TeardownItem item = known ? *known.record : jotting.fresh<TeardownItem>();
    if (known) {
        item.state = TeardownState::Off;
        item.at = jotting.maker.now();
    } else {
        for (const TeardownItem &each : items)
            item.position = std::max(item.position, each.position);
        ++item.position;
        item.what = line.what;
    }
    const auto take = [](QString &into, const QString &said) { into = said.isEmpty() ? into : said; };
    if (!line.fasteners.isEmpty())
        item.fastenerCount = line.fastenerCount;
    take(item.fasteners, line.fasteners);
    take(item.springs, line.springs);
    take(item.connectors, line.connectors);
    take(item.keptIn, line.keptIn);
    QString sentence = QStringLiteral("Off: ") + shown(item.what);
    for (const QString &more : {item.fasteners, item.springs, item.connectors})
        if (!more.isEmpty())
            sentence += QStringLiteral(", ") + shown(more);
    if (!item.keptIn.isEmpty())
        sentence += QStringLiteral(", in ") + shown(item.keptIn);
    Jotted jotted{QStringLiteral("teardown"), QStringLiteral("teardown, off"),
                  sentence + QStringLiteral(" · number %1").arg(item.position), {}, Change(sentence)};
    if (known && !item.caution.isEmpty())
        jotted.preview += QStringLiteral(" · caution: ") + shown(item.caution);
    if (known && !item.marks.isEmpty())
        jotted.preview += QStringLiteral(" · marks: ") + shown(item.marks);
    if (known)
        jotted.change.edit(*known.record, item);
    else
        jotted.change.add(item);
    return jotted;
}

Jotted jotBack(const Jotting &jotting)
{
    const QList<TeardownItem> &items = jotting.file.all<TeardownItem>();
    const auto off = [](const TeardownItem &item) { return item.state == TeardownState::Off; };
    const auto putBack = [&](const TeardownItem &item) {
        TeardownItem after = item;
        after.state = TeardownState::Back;
        after.backAt = jotting.maker.now();
        return after;
    };
    const qsizetype offNow = std::count_if(items.begin(), items.end(), off);
    Jotted jotted{QStringLiteral("teardown"), QStringLiteral("teardown, back"), {}, {}, Change()};
    const QString word = jotting.text.toLower();
    if ((word == QLatin1String("all") || word == QLatin1String("everything")) && offNow > 0) {
        for (auto it = items.crbegin(); it != items.crend(); ++it)
            if (off(*it))
                jotted.change.edit(*it, putBack(*it));
        jotted.preview = offNow == 1 ? QStringLiteral("Back: the one item that was off")
                                     : QStringLiteral("Back: all %1 items that were off").arg(offNow);
        jotted.change.setSentence(jotted.preview);
        return jotted;
    }
    const auto named = bestNamed(items, jotting.text, &TeardownItem::what, off);
    if (!named)
        return asNote(jotting, QStringLiteral("nothing that is off reads ") + inQuotes(jotting.text));
    const TeardownItem &item = *named.record;
    const QString sentence = QStringLiteral("Back: ") + shown(item.what);
    jotted.preview = sentence;
    if (!item.fasteners.isEmpty())
        jotted.preview += QStringLiteral(", with ") + shown(item.fasteners);
    if (!item.keptIn.isEmpty())
        jotted.preview += QStringLiteral(" from ") + shown(item.keptIn);
    if (named.rivals)
        jotted.preview += QStringLiteral(" · the newest of %1 that read so").arg(named.rivals + 1);
    jotted.preview += offNow == 1 ? QStringLiteral(" · nothing is left off") : QStringLiteral(" · %1 still off").arg(offNow - 1);
    jotted.change = Change(sentence).edit(item, putBack(item));
    return jotted;
}

} // namespace ts
