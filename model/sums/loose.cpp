#include "model/sums/loose.h"

#include <QHash>
#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

/// The kind that a word names, in the singular; empty where it names none.
QString nounOf(QString word)
{
    static const QHash<QString, QString> known = [] {
        QHash<QString, QString> all;
        for (const auto *noun : {"screw",  "bolt", "nut",  "washer", "rivet", "stud", "pin",  "peg", "standoff", "spacer", "shim",
                                 "spring", "clip", "plug", "ribbon", "lead",  "wire", "knob", "cap", "ring",     "felt",   "pad"})
            all.insert(QString::fromLatin1(noun), QString::fromLatin1(noun));
        all.insert(QStringLiteral("circlip"), QStringLiteral("clip"));
        all.insert(QStringLiteral("e-clip"), QStringLiteral("clip"));
        all.insert(QStringLiteral("c-clip"), QStringLiteral("clip"));
        all.insert(QStringLiteral("connector"), QStringLiteral("plug"));
        all.insert(QStringLiteral("socket"), QStringLiteral("plug"));
        all.insert(QStringLiteral("grubscrew"), QStringLiteral("screw"));
        return all;
    }();
    static const QRegularExpression thread(QStringLiteral("^m[0-9]"), QRegularExpression::CaseInsensitiveOption);
    while (!word.isEmpty() && !word.back().isLetterOrNumber())
        word.chop(1);
    if (thread.match(word).hasMatch())
        return QStringLiteral("screw");
    word = word.toLower();
    if (known.contains(word))
        return known.value(word);
    return word.endsWith(QLatin1Char('s')) ? known.value(word.chopped(1)) : QString();
}

/// 5 of "5", "5x", "5×" and "five"; 0 where the word is no count.
int countOf(const QString &word)
{
    static const QStringList words{QStringLiteral("one"),   QStringLiteral("two"),    QStringLiteral("three"),
                                   QStringLiteral("four"),  QStringLiteral("five"),   QStringLiteral("six"),
                                   QStringLiteral("seven"), QStringLiteral("eight"),  QStringLiteral("nine"),
                                   QStringLiteral("ten"),   QStringLiteral("eleven"), QStringLiteral("twelve")};
    static const QRegularExpression figure(QStringLiteral("^([0-9]{1,3})[x×]?$"));
    const QString low = word.toLower();
    if (const auto match = figure.match(low); match.hasMatch())
        return match.captured(1).toInt();
    return static_cast<int>(words.indexOf(low)) + 1;
}

void add(QList<ThingCount> &things, const QString &noun, int count)
{
    if (count <= 0)
        return;
    for (ThingCount &each : things)
        if (each.noun == noun) {
            each.count += count;
            return;
        }
    things << ThingCount{noun, count};
}

/// Counts in a text: a number, then within its piece the kind that it counts ("4 long black screws").
QList<ThingCount> counted(const QString &text)
{
    static const QRegularExpression joint(QStringLiteral("\\s*(?:[,;+&]|\\band\\b)\\s*"));
    QList<ThingCount> things;
    for (const QString &piece : text.simplified().split(joint, Qt::SkipEmptyParts)) {
        int count = 0;
        for (const QString &word : piece.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
            if (const int number = countOf(word); number > 0 && count == 0) {
                count = number;
                continue;
            }
            if (const QString noun = count > 0 ? nounOf(word) : QString(); !noun.isEmpty()) {
                add(things, noun, count);
                break;
            }
        }
    }
    return things;
}

bool namesPlug(const QString &text)
{
    static const QRegularExpression plug(QStringLiteral("\\b(?:plug|ribbon|connector|lead|CN[0-9]+)"),
                                         QRegularExpression::CaseInsensitiveOption);
    return plug.match(text).hasMatch();
}

} // namespace

QString Loose::text() const
{
    QStringList said;
    for (const ThingCount &each : things)
        said << QStringLiteral("%1 %2%3").arg(each.count).arg(each.noun, each.count == 1 ? QString() : QStringLiteral("s"));
    return said.join(QStringLiteral(", "));
}

QList<ThingCount> thingsOf(const TeardownItem &item)
{
    QList<ThingCount> things = counted(item.fasteners);
    int fasteners = 0;
    for (const ThingCount &each : things)
        fasteners += each.count;
    if (item.fastenerCount && *item.fastenerCount > fasteners) {
        // What the text leaves out: more of its first kind, or screws.
        add(things, things.isEmpty() ? QStringLiteral("screw") : things.first().noun, *item.fastenerCount - fasteners);
    }
    for (const ThingCount &each : counted(item.springs))
        add(things, each.noun, each.count);
    const QList<ThingCount> plugs = counted(item.connectors);
    for (const ThingCount &each : plugs)
        add(things, each.noun, each.count);
    if (plugs.isEmpty() && (!item.connectors.trimmed().isEmpty() || namesPlug(item.what)))
        add(things, QStringLiteral("plug"), 1);
    return things;
}

Loose looseOf(const UnitFile &file)
{
    Loose loose;
    for (const TeardownItem &item : file.all<TeardownItem>()) {
        if (item.removed || item.state == TeardownState::On)
            continue;
        const bool off = item.state == TeardownState::Off;
        (off ? loose.items : item.state == TeardownState::Back ? loose.itemsBack : loose.itemsLeftOut) += 1;
        for (const ThingCount &each : thingsOf(item)) {
            (off ? loose.count : loose.backCount) += each.count;
            if (off)
                add(loose.things, each.noun, each.count);
        }
    }
    std::stable_sort(loose.things.begin(), loose.things.end(),
                     [](const ThingCount &a, const ThingCount &b) { return a.count > b.count; });
    return loose;
}

QString looseItems(const UnitFile &file)
{
    QStringList items;
    for (const TeardownItem &item : file.all<TeardownItem>()) {
        if (item.removed || item.state != TeardownState::Off)
            continue;
        Loose of;
        of.things = thingsOf(item);
        const QString things = of.text();
        items << item.what.simplified() + (things.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(things));
    }
    return items.join(QStringLiteral(", "));
}

} // namespace ts
