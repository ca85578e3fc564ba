#include "model/jot/belonging.h"
#include "model/jot/designator.h"
#include "model/jot/families.h"
#include "model/jot/likeness.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

/// "normal", "abnormal" or "unclear" at the end, also as "was normal" or ": normal".
std::optional<Taken<CameOut>> takeCameOut(const QString &text)
{
    const qsizetype at = text.lastIndexOf(QLatin1Char(' '));
    if (at <= 0)
        return std::nullopt;
    const auto outcome = fromWord<CameOut>(text.mid(at + 1).toLower());
    if (!outcome || *outcome == CameOut::NotDone)
        return std::nullopt;
    QString rest = text.left(at).trimmed();
    for (const auto end :
         {QLatin1String(" was"), QLatin1String(" came out"), QLatin1String(" is"), QLatin1String(":"), QLatin1String(",")})
        if (rest.size() > end.size() && rest.endsWith(end, Qt::CaseInsensitive))
            rest = rest.chopped(end.size()).trimmed();
    return Taken<CameOut>{*outcome, rest};
}

/// What a check bears on, as typed: "points to CAUSE" or "points to CAUSE and CAUSE" at the end.
QStringList takePointsTo(QString &text)
{
    const auto words = QStringLiteral(" points to ");
    const qsizetype at = text.lastIndexOf(words, -1, Qt::CaseInsensitive);
    if (at <= 0)
        return {};
    static const QRegularExpression joint(QStringLiteral("\\s*,\\s*|\\s+and\\s+"));
    const QStringList named = text.mid(at + words.size()).split(joint, Qt::SkipEmptyParts);
    text = text.left(at).trimmed();
    return named;
}

/// The open causes of the symptom that a check bears on: those named, else those at a place on the board that the check names too
/// (ESR of C214, coupling capacitor C214 open).
QList<Cause> bearsOn(const Jotting &jotting, const Id<Symptom> &symptom, const QString &text, const QStringList &named)
{
    QList<Cause> found;
    const auto open = [&](const Cause &cause) { return cause.symptom == symptom && cause.state != CauseState::Confirmed; };
    for (const QString &name : named)
        if (const auto cause = bestNamed(jotting.file.all<Cause>(), name, &Cause::text, open);
            cause && !found.contains(*cause.record))
            found << *cause.record;
    const QStringList places = designatorsIn(text).split(QStringLiteral(", "), Qt::SkipEmptyParts);
    if (named.isEmpty())
        for (const Cause &cause : jotting.file.all<Cause>())
            if (open(cause) && std::any_of(places.begin(), places.end(), [&](const QString &place) {
                    return designatorsIn(cause.text).split(QStringLiteral(", ")).contains(place);
                }))
                found << cause;
    return found;
}

} // namespace

Jotted jotCheck(const Jotting &jotting)
{
    QString text = jotting.text;
    std::optional<CameOut> cameOut;
    std::optional<int> minutes;
    const auto takeFigures = [&] {
        for (bool more = true; more;) {
            more = false;
            if (const auto word = takeCameOut(text); word && !cameOut) {
                cameOut = word->value;
                text = word->rest;
                more = true;
            } else if (const auto time = takeMinutes(text); time && !minutes) {
                minutes = time->value;
                text = time->rest;
                more = true;
            }
        }
    };
    takeFigures();
    const QStringList pointsTo = takePointsTo(text);
    takeFigures();
    const Belonging to = belonging(text, jotting.file);
    text = to.text;
    takeFigures();

    // An outcome goes to the check that waits for it; done once more it is a check of its own, so that the first stays known.
    const auto waiting = bestNamed(
        jotting.file.all<Check>(), text, &Check::text, [](const Check &check) { return check.cameOut == CameOut::NotDone; },
        cameOut ? Likeness::Words : Likeness::Same);
    Check check = waiting ? *waiting.record : jotting.fresh<Check>();
    if (!waiting) {
        check.symptom = to.id();
        check.text = text;
    }
    if (minutes)
        check.minutes = minutes;
    if (cameOut) {
        check.cameOut = *cameOut;
        check.doneAt = jotting.maker.now();
    }

    const QString outcome = cameOut ? toWord(*cameOut) : QString();
    QString sentence =
        (cameOut ? QStringLiteral("Check came out %1: ").arg(outcome) : QStringLiteral("Check to do: ")) + shown(check.text);
    if (check.minutes)
        sentence += QStringLiteral(", ") + minutesText(*check.minutes);
    Jotted jotted{QStringLiteral("check"),
                  cameOut ? QStringLiteral("check, ") + outcome : QStringLiteral("check, not done"),
                  sentence,
                  {},
                  Change(sentence)};
    if (waiting) {
        jotted.change.edit(*waiting.record, check);
        if (check == *waiting.record)
            jotted.preview += QStringLiteral(" · recorded so already");
        else if (waiting.rivals)
            jotted.preview += QStringLiteral(" · the newest of %1 that read so").arg(waiting.rivals + 1);
    } else {
        jotted.change.add(check);
        jotted.preview += to.words();
    }
    const auto marked = [&](const Cause &cause) {
        const QList<Bearing> &marks = jotting.file.all<Bearing>();
        return std::any_of(marks.begin(), marks.end(),
                           [&](const Bearing &mark) { return mark.check == check.id && mark.cause == cause.id; });
    };
    QStringList on;
    for (const Cause &cause : bearsOn(jotting, check.symptom, check.text, pointsTo)) {
        if (marked(cause))
            continue;
        Bearing mark = jotting.fresh<Bearing>();
        mark.check = check.id;
        mark.cause = cause.id;
        jotted.change.add(mark);
        on << shown(cause.text);
    }
    if (!on.isEmpty())
        jotted.preview += QStringLiteral(" · bears on ") + on.join(QStringLiteral(", "));
    if (on.size() < pointsTo.size())
        jotted.preview += QStringLiteral(" · no open cause reads so for each that was named");
    return jotted;
}

} // namespace ts
