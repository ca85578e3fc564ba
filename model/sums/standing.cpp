#include "model/sums/standing.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

QList<Reading> latest(const UnitFile &file, std::optional<Phase> phase)
{
    QList<Reading> found;
    QHash<QString, qsizetype> places;
    for (const Reading &reading : file.all<Reading>()) {
        if (reading.removed || (phase && reading.phase != *phase))
            continue;
        // A point has its name whether the reading refers to it or only names it.
        const TestPoint *point = file.find(reading.point);
        const QString key = (point ? point->name : reading.name).simplified().toLower();
        const auto place = places.constFind(key);
        if (place == places.constEnd()) {
            places.insert(key, found.size());
            found.append(reading);
        } else if (!(reading.at < found.at(*place).at)) {
            found[*place] = reading;
        }
    }
    return found;
}

/// One kind, whether a text says screw or screws.
QString kindKey(const QString &kind)
{
    QStringList words = kind.simplified().toLower().split(QLatin1Char(' '));
    for (QString &word : words)
        if (word.size() > 3 && word.endsWith(QLatin1Char('s')))
            word.chop(1);
    return words.join(QLatin1Char(' '));
}

} // namespace

QList<Reading> latestReadings(const UnitFile &file)
{
    return latest(file, {});
}

QList<Reading> latestReadings(const UnitFile &file, Phase phase)
{
    return latest(file, phase);
}

QList<FastenerCount> fastenersOf(const TeardownItem &item)
{
    static const QRegularExpression joint(QStringLiteral("\\s*(?:[,;+&]|\\band\\b)\\s*"));
    static const QRegularExpression counted(QStringLiteral("^([0-9]{1,4})\\s*(?:[x×]\\s+)?(?![0-9.,]*\\s*mm\\b)(\\D.*)$"));
    const QString text = item.fasteners.simplified();
    const QStringList pieces = text.split(joint, Qt::SkipEmptyParts);

    QList<FastenerCount> found;
    for (const QString &piece : pieces) {
        const auto match = counted.match(piece);
        if (match.hasMatch())
            found.append({match.captured(2).trimmed(), match.captured(1).toInt()});
    }
    const bool allCounted = !pieces.isEmpty() && found.size() == pieces.size();
    if (allCounted && (pieces.size() > 1 || !item.fastenerCount || *item.fastenerCount == found.first().count))
        return found;
    if (!item.fastenerCount || *item.fastenerCount <= 0)
        return found; // what could be read, however little
    // The count that was given by itself holds for the whole text.
    if (allCounted)
        return {{found.first().kind, *item.fastenerCount}};
    return {{text.isEmpty() ? QStringLiteral("fasteners") : text, *item.fastenerCount}};
}

Standing standing(const UnitFile &file, const BenchFile &bench)
{
    Standing stands;
    for (const LeftOff &left : file.all<LeftOff>()) {
        if (left.removed)
            continue;
        stands.whereAt = left.whereAt;
        stands.next = left.next;
        stands.leftOffAt = left.at;
        stands.doNotPower = left.doNotPower.trimmed();
        stands.otherLoose = left.loose;
    }
    for (const Symptom &symptom : file.all<Symptom>()) {
        if (symptom.removed)
            continue;
        ++stands.symptoms;
        if (symptom.state == SymptomState::Open)
            stands.openSymptoms.append(symptom);
    }
    for (const Reading &reading : latestReadings(file)) {
        const auto judged = judge(reading);
        if (judged && judged->verdict == Verdict::Outside)
            stands.outside.append({reading, *judged});
        if (judged && judged->verdict == Verdict::TooCloseToCall)
            stands.tooClose.append({reading, *judged});
    }
    for (const Need &need : file.all<Need>())
        if (!need.removed && (need.state == NeedState::Needed || need.state == NeedState::Ordered))
            stands.awaited.append(need);
    std::stable_sort(stands.awaited.begin(), stands.awaited.end(),
                     [](const Need &a, const Need &b) { return a.due.isValid() && (!b.due.isValid() || a.due < b.due); });

    for (const TeardownItem &item : file.all<TeardownItem>())
        if (!item.removed && item.state == TeardownState::Off)
            stands.loose.prepend(item);
    std::stable_sort(stands.loose.begin(), stands.loose.end(),
                     [](const TeardownItem &a, const TeardownItem &b) { return a.position > b.position; });
    for (const TeardownItem &item : stands.loose) {
        for (const FastenerCount &each : fastenersOf(item)) {
            const auto same = std::find_if(stands.fasteners.begin(), stands.fasteners.end(), [&each](const FastenerCount &known) {
                return kindKey(known.kind) == kindKey(each.kind);
            });
            if (same == stands.fasteners.end())
                stands.fasteners.append(each);
            else
                same->count += each.count;
        }
        if (!item.keptIn.trimmed().isEmpty() && !stands.keptIn.contains(item.keptIn.trimmed()))
            stands.keptIn.append(item.keptIn.trimmed());
    }
    std::stable_sort(stands.fasteners.begin(), stands.fasteners.end(),
                     [](const FastenerCount &a, const FastenerCount &b) { return a.count > b.count; });
    stands.counted = looseOf(file);
    stands.cautions = cautions(file, bench);
    return stands;
}

} // namespace ts
