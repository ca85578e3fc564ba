#include "model/sums/category_facts.h"
#include "model/sums/electrical_safety.h"
#include "model/sums/standing.h"

#include <QRegularExpression>

#include <algorithm>

namespace ts {

namespace {

/// Whether a text has a word that begins with one of these.
bool speaksOf(const QString &text, const QStringList &words)
{
    return std::any_of(words.cbegin(), words.cend(), [&text](const QString &word) {
        // A word of two or three letters ("am", "vu", "cap") must stand whole, but for its plural, or it would be found in
        // others.
        const QString pattern = QStringLiteral("\\b%1%2").arg(QRegularExpression::escape(word),
                                                              word.size() <= 3 ? QStringLiteral("s?\\b") : QString());
        return QRegularExpression(pattern,
                                  QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption)
            .match(text)
            .hasMatch();
    });
}

/// A sentence of one line, whatever was typed.
QString sentence(const QString &text)
{
    const QString line = text.simplified();
    return line.endsWith(QLatin1Char('.')) ? line : line + QLatin1Char('.');
}

class Finder {
public:
    explicit Finder(const UnitFile &file) : m_file(file), m_facts(factsOf(file.unit.category)) {}

    QStringList found()
    {
        proofs();
        safety();
        acceptance();
        readings();
        soaks();
        symptoms();
        needs();
        teardown();
        worn();
        return std::move(m_found);
    }

private:
    void say(const QString &text) { m_found << sentence(text); }
    /// Several things of one kind, parted by semicolons: many of them have commas inside. Nothing where there is none.
    void sayOf(const QString &beginning, const QStringList &things)
    {
        QStringList lines;
        for (const QString &each : things)
            if (const QString line = each.simplified(); !line.isEmpty())
                lines << (line.endsWith(QLatin1Char('.')) ? line.chopped(1) : line);
        if (!lines.isEmpty())
            say(beginning + lines.join(QStringLiteral("; ")));
    }

    void proofs()
    {
        QStringList untested;
        for (const Proof &proof : m_file.all<Proof>())
            if (!proof.removed && proof.cameOut == ProofOutcome::NotTested && proof.kind != ProofKind::ElectricalSafety)
                untested << proof.text;
        sayOf(QStringLiteral("Not tested: "), untested);
    }

    void safety()
    {
        const SafetyRecord record = safetyRecord(m_file);
        QStringList undecided;
        QStringList before;
        for (const SafetyReading &each : record.readings)
            if (!each.decided())
                (each.reading.phase == Phase::AsItLeaves ? undecided : before) << each.reading.name;
        const bool proofs = record.tested || !record.proofs.isEmpty() || !record.untested.isEmpty();
        if (!proofs && undecided.isEmpty() && !before.isEmpty())
            sayOf(QStringLiteral("No electrical safety test is recorded as it leaves; before that was measured: "), before);
        else if (!proofs && undecided.isEmpty() && mainsPowered(m_file.unit))
            say(QStringLiteral("No electrical safety test is recorded"));
        sayOf(QStringLiteral("Electrical safety was measured, but nothing can be said from it, for want of a limit or of a surer meter: "), undecided);
        sayOf(QStringLiteral("Electrical safety, not tested: "), record.untested);
    }

    /// Areas of the category that neither a proof nor a reading as it leaves speaks of.
    void acceptance()
    {
        QStringList tried;
        for (const Proof &proof : m_file.all<Proof>())
            if (!proof.removed)
                tried << proof.text + QLatin1Char(' ') + proof.result; // one that was not tested is said above by its own words
        for (const Reading &reading : m_file.all<Reading>())
            if (!reading.removed && reading.value && reading.phase == Phase::AsItLeaves)
                tried << reading.name;
        const QString text = tried.join(QLatin1Char('\n'));
        QStringList missing;
        for (const AcceptanceArea &area : m_facts.acceptance)
            if (!speaksOf(text, area.words))
                missing << area.name;
        sayOf(QStringLiteral("No test is recorded of: "), missing);
    }

    void readings()
    {
        QStringList without;
        const QList<Reading> leaving = latestReadings(m_file, Phase::AsItLeaves);
        const auto hasLeaving = [&leaving](const Id<TestPoint> &point, const QString &name) {
            return std::any_of(leaving.cbegin(), leaving.cend(), [&](const Reading &r) {
                return r.value && ((!point.isNull() && r.point == point) || r.name.compare(name, Qt::CaseInsensitive) == 0);
            });
        };
        for (const TestPoint &point : m_file.all<TestPoint>())
            if (!point.removed && !hasLeaving(point.id, point.name))
                without << point.name;
        // A reading needs no test point of its own: what was measured as found ought to be measured again.
        for (const Reading &reading : latestReadings(m_file))
            if (reading.point.isNull() && !hasLeaving({}, reading.name) && !without.contains(reading.name, Qt::CaseInsensitive))
                without << reading.name;
        sayOf(QStringLiteral("Not measured as it leaves: "), without);
        for (const Reading &reading : leaving)
            if (verdictOf(reading) == Verdict::TooCloseToCall)
                say(QStringLiteral("Too close to call with the meter used: ") + reading.name);
    }

    void soaks()
    {
        bool any = false;
        for (const Soak &soak : m_file.all<Soak>()) {
            any = any || !soak.removed;
            if (!soak.removed && !soak.endedAt.isValid())
                say(QStringLiteral("Soak not ended: ") + soak.name);
        }
        if (!any && m_facts.soaked)
            say(QStringLiteral("No soak is recorded: how it behaves after hours of running is not known"));
    }

    void symptoms()
    {
        for (const Symptom &symptom : m_file.all<Symptom>())
            if (!symptom.removed && symptom.state == SymptomState::Open)
                say(QStringLiteral("Not put right: ") + symptom.text);
    }

    void needs()
    {
        for (const Need &need : m_file.all<Need>())
            if (!need.removed && need.state != NeedState::Fitted)
                say(QStringLiteral("Needed but not fitted: ") + need.text);
    }

    void teardown()
    {
        for (const TeardownItem &item : m_file.all<TeardownItem>()) {
            if (item.removed || item.state == TeardownState::Back || item.state == TeardownState::On)
                continue;
            const QString because = item.leftOutBecause.trimmed();
            if (item.state == TeardownState::Off)
                say(QStringLiteral("Not put back: ") + item.what);
            else
                say(QStringLiteral("Left out: ") + item.what +
                    (because.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(because)));
        }
    }

    /// Parts of limited life that no record says were renewed, and capacitors where only some were.
    void worn()
    {
        static const QRegularExpression capacitorPosition(QStringLiteral("^[A-Z]{0,2}C[0-9]+[A-Z]?$"));
        QStringList none;
        for (const WornParts &parts : m_facts.worn) {
            QStringList positions;
            bool renewed = false;
            const auto look = [&](const QString &text, const QString &position) {
                const bool capacitor = parts.byPosition && capacitorPosition.match(position.trimmed()).hasMatch();
                if (!capacitor && !speaksOf(text, parts.words))
                    return;
                renewed = true;
                if (!position.trimmed().isEmpty() && !positions.contains(position.trimmed()))
                    positions << position.trimmed();
            };
            for (const Need &need : m_file.all<Need>())
                if (!need.removed && need.state == NeedState::Fitted)
                    look(need.text, need.position);
            for (const Step &step : m_file.all<Step>())
                if (!step.removed && step.kind == StepKind::Renew)
                    look(step.text, step.position);
            if (!renewed)
                none << parts.name;
            else if (parts.byPosition && !positions.isEmpty())
                sayOf(parts.name + QStringLiteral(": as found but for those renewed here: "), positions);
        }
        sayOf(QStringLiteral("Not recorded as renewed, so as found: "), none);
    }

    const UnitFile &m_file;
    CategoryFacts m_facts;
    QStringList m_found;
};

} // namespace

QStringList notDone(const UnitFile &file)
{
    return Finder(file).found();
}

} // namespace ts
