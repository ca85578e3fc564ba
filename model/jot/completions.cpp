#include "model/jot/jot.h"

#include "model/jot/keywords.h"
#include "model/jot/likeness.h"
#include "model/jot/reading_line.h"

#include <algorithm>

namespace ts {

namespace {

constexpr qsizetype most = 12;

/// Gathers lines that fit, best first; of equals the one offered first.
class Gatherer {
public:
    /// `what` fits when what was typed of it (maybe nothing yet) names it; the line then reads before + what + after.
    void offer(const QString &before, const QString &typed, const QString &what, const QString &after = {})
    {
        const Likeness how = typed.isEmpty() ? Likeness::Beginning : likeness(typed, what);
        if (how < Likeness::Words || what.isEmpty())
            return;
        const QString line = before + what + after;
        for (const Offer &each : m_offers)
            if (each.line == line)
                return;
        m_offers << Offer{line, how == Likeness::Same ? Likeness::Beginning : how};
    }
    /// The texts of the records that fit, newest first.
    template <class R, class Fits>
    void offerAll(const QString &before, const QString &typed, const QList<R> &records, QString R::*text, Fits fits)
    {
        for (auto it = records.crbegin(); it != records.crend(); ++it)
            if (fits(*it))
                offer(before, typed, (*it).*text);
    }
    [[nodiscard]] QStringList lines(const QString &typed)
    {
        std::stable_sort(m_offers.begin(), m_offers.end(), [](const Offer &a, const Offer &b) { return a.how > b.how; });
        QStringList lines;
        for (const Offer &each : m_offers)
            if (each.line != typed && lines.size() < most)
                lines << each.line;
        return lines;
    }

private:
    struct Offer {
        QString line;
        Likeness how;
    };
    QList<Offer> m_offers;
};

template <class R>
bool all(const R &)
{
    return true;
}

void offerPoints(Gatherer &gatherer, const QString &typed, const UnitFile &file)
{
    const QString equals = QStringLiteral(" = ");
    QList<TestPoint> points = file.all<TestPoint>();
    std::stable_sort(points.begin(), points.end(),
                     [](const TestPoint &a, const TestPoint &b) { return a.position < b.position; });
    for (const TestPoint &point : points)
        gatherer.offer({}, typed, point.name, equals);
    const QList<Reading> &readings = file.all<Reading>();
    for (auto it = readings.crbegin(); it != readings.crend(); ++it)
        gatherer.offer({}, typed, it->name, equals);
}

/// What may follow the equals sign: the word that is being typed becomes a phase, "want" and the limit known, or a meter.
void offerClauses(Gatherer &gatherer, const QString &line, const UnitFile &file, const BenchFile &bench)
{
    if (const qsizetype with = line.lastIndexOf(QLatin1String(" with "), -1, Qt::CaseInsensitive); with >= 0) {
        gatherer.offerAll(line.left(with + 6), line.mid(with + 6), bench.all<Meter>(), &Meter::name, all<Meter>);
        return;
    }
    const qsizetype space = line.lastIndexOf(QLatin1Char(' '));
    const QString before = line.left(space + 1);
    const QString word = line.mid(space + 1).toLower();
    const auto reading = splitReading(line);
    if (word.isEmpty() || !reading || reading->value.isEmpty() || reading->value.compare(word, Qt::CaseInsensitive) == 0)
        return;
    if (QStringLiteral("want").startsWith(word)) {
        const QString key = nameKey(reading->name);
        for (const TestPoint &point : file.all<TestPoint>())
            if (nameKey(point.name) == key && !point.wanted.isNone())
                gatherer.offer(before, word, QStringLiteral("want ") + point.wanted.text());
        gatherer.offer(before, word, QStringLiteral("want "));
    }
    for (const auto &each : {QStringLiteral("found"), QStringLiteral("during"), QStringLiteral("after"), QStringLiteral("with ")})
        if (each.startsWith(word))
            gatherer.offer(before, word, each);
}

void offerNeeds(Gatherer &gatherer, const QString &before, const QString &typed, const UnitFile &file, NeedState last)
{
    gatherer.offerAll(before, typed, file.all<Need>(), &Need::text, [last](const Need &need) { return need.state <= last; });
}

void offerFor(Gatherer &gatherer, const QString &word, const QString &before, const QString &typed, const UnitFile &file)
{
    const auto openSymptom = [](const Symptom &each) { return each.state == SymptomState::Open; };
    if (word == QLatin1String("think") || word == QLatin1String("check")) {
        if (const qsizetype at = typed.lastIndexOf(QLatin1String(" for "), -1, Qt::CaseInsensitive); at > 0)
            gatherer.offerAll(before + typed.left(at + 5), typed.mid(at + 5), file.all<Symptom>(), &Symptom::text, openSymptom);
    }
    if (word == QLatin1String("cleared")) {
        gatherer.offerAll(before, typed, file.all<Symptom>(), &Symptom::text, openSymptom);
    } else if (word == QLatin1String("saw")) { // one that has come back
        gatherer.offerAll(before, typed, file.all<Symptom>(), &Symptom::text,
                          [](const Symptom &each) { return each.state == SymptomState::Cleared; });
    } else if (word == QLatin1String("ruled out") || word == QLatin1String("was")) {
        gatherer.offerAll(before, typed, file.all<Cause>(), &Cause::text,
                          [](const Cause &each) { return each.state == CauseState::Open; });
    } else if (word == QLatin1String("think")) {
        gatherer.offerAll(before, typed, file.all<Cause>(), &Cause::text, all<Cause>);
    } else if (word == QLatin1String("check")) {
        gatherer.offerAll(before, typed, file.all<Check>(), &Check::text,
                          [](const Check &each) { return each.cameOut == CameOut::NotDone; });
    } else if (word == QLatin1String("fitted")) {
        offerNeeds(gatherer, before, typed, file, NeedState::Here);
    } else if (word == QLatin1String("here") || word == QLatin1String("waiting")) {
        offerNeeds(gatherer, before, typed, file, NeedState::Ordered);
    } else if (word == QLatin1String("ordered")) {
        offerNeeds(gatherer, before, typed, file, NeedState::Needed);
    } else if (word == QLatin1String("need")) {
        offerNeeds(gatherer, before, typed, file, NeedState::Fitted);
    } else if (word == QLatin1String("off")) { // as known of the model, or once more
        gatherer.offerAll(before, typed, file.all<TeardownItem>(), &TeardownItem::what, [](const TeardownItem &each) {
            return each.state == TeardownState::On || each.state == TeardownState::Back;
        });
    } else if (word == QLatin1String("back")) {
        gatherer.offerAll(before, typed, file.all<TeardownItem>(), &TeardownItem::what,
                          [](const TeardownItem &each) { return each.state == TeardownState::Off; });
    } else if (word == QLatin1String("proved") || word == QLatin1String("failed") || word.startsWith(QLatin1String("not "))) {
        gatherer.offerAll(before, typed, file.all<Proof>(), &Proof::text,
                          [](const Proof &each) { return each.cameOut == ProofOutcome::NotTested; });
    }
}

} // namespace

QStringList completions(const QString &line, const UnitFile &unit, const BenchFile &bench)
{
    qsizetype start = 0;
    while (start < line.size() && line.at(start).isSpace())
        ++start;
    const QString typed = line.mid(start);
    if (typed.size() > 4000)
        return {};
    Gatherer gatherer;
    if (splitReading(typed)) {
        offerClauses(gatherer, typed, unit, bench);
        return gatherer.lines(typed);
    }
    const Begun begun = keywordOf(typed);
    if (begun.keyword && typed.size() > static_cast<qsizetype>(qstrlen(begun.keyword->word))) {
        const QString word = QString::fromLatin1(begun.keyword->word);
        const QString rest = typed.mid(word.size() + 1);
        offerFor(gatherer, word, typed.left(word.size()) + QLatin1Char(' '), rest.trimmed().isEmpty() ? QString() : rest, unit);
    }
    offerPoints(gatherer, typed, unit);
    if (!typed.isEmpty())
        for (const Keyword &keyword : keywords())
            if (QLatin1String(keyword.word).startsWith(typed.toLower()))
                gatherer.offer({}, typed, QString::fromLatin1(keyword.word), QStringLiteral(" "));
    return gatherer.lines(typed);
}

} // namespace ts
