#include "model/jot/belonging.h"
#include "model/jot/designator.h"
#include "model/jot/families.h"
#include "model/jot/phrase.h"
#include "model/sums/hours.h"

#include <array>

namespace ts {

namespace {

struct Verb {
    const char *stem;
    StepKind kind;
};

/// The first of a step's words that begins with one of these says what kind of work it was.
constexpr std::array verbs{Verb{"clean", StepKind::Clean},          Verb{"wash", StepKind::Clean},
                           Verb{"wipe", StepKind::Clean},           Verb{"degreas", StepKind::Clean},
                           Verb{"dust", StepKind::Clean},           Verb{"polish", StepKind::Clean},
                           Verb{"lubricat", StepKind::Lubricate},   Verb{"oil", StepKind::Lubricate},
                           Verb{"greas", StepKind::Lubricate},      Verb{"regreas", StepKind::Lubricate},
                           Verb{"relubricat", StepKind::Lubricate}, Verb{"adjust", StepKind::Adjust},
                           Verb{"set", StepKind::Adjust},           Verb{"trim", StepKind::Adjust},
                           Verb{"readjust", StepKind::Adjust},      Verb{"tension", StepKind::Adjust},
                           Verb{"solder", StepKind::Solder},        Verb{"resolder", StepKind::Solder},
                           Verb{"desolder", StepKind::Solder},      Verb{"reflow", StepKind::Solder},
                           Verb{"unsolder", StepKind::Solder},      Verb{"renew", StepKind::Renew},
                           Verb{"replac", StepKind::Renew},         Verb{"fit", StepKind::Renew},
                           Verb{"swap", StepKind::Renew},           Verb{"rebuil", StepKind::Renew},
                           Verb{"chang", StepKind::Renew},          Verb{"align", StepKind::Align},
                           Verb{"realign", StepKind::Align},        Verb{"azimuth", StepKind::Align},
                           Verb{"calibrat", StepKind::Align},       Verb{"investigat", StepKind::Investigate},
                           Verb{"measur", StepKind::Investigate},   Verb{"trac", StepKind::Investigate},
                           Verb{"check", StepKind::Investigate},    Verb{"inspect", StepKind::Investigate},
                           Verb{"test", StepKind::Investigate},     Verb{"look", StepKind::Investigate},
                           Verb{"search", StepKind::Investigate},   Verb{"examin", StepKind::Investigate},
                           Verb{"read", StepKind::Investigate}};

StepKind kindOf(const QString &text)
{
    const QStringList words = wordsOf(text);
    for (qsizetype i = 0; i < words.size(); ++i) {
        // "re-soldered" comes as two words.
        const QString word = words.at(i) == QLatin1String("re") && i + 1 < words.size() ? words.at(i + 1) : words.at(i);
        for (const Verb &verb : verbs)
            if (word.startsWith(QLatin1String(verb.stem)))
                return verb.kind;
    }
    return StepKind::Other;
}

} // namespace

Jotted jotDid(const Jotting &jotting)
{
    if (jotting.text.startsWith(QLatin1String("not "), Qt::CaseInsensitive))
        return asNote(jotting); // "did not get to the tuner yet" is no work
    auto time = takeMinutes(jotting.text);
    Belonging to = belonging(time ? time->rest : jotting.text, jotting.file);
    QString text = time ? time->rest : jotting.text;
    if (const Belonging named = plainlyNamed(text, jotting.file); named.text != text) { // the minutes may stand before "for"
        to = named;
        text = named.text;
        if (!time && (time = takeMinutes(text)))
            text = time->rest;
    }
    Step step = jotting.fresh<Step>();
    step.symptom = to.id();
    step.text = text; // "cleaned the head for azimuth" keeps its end, where that names no symptom
    step.kind = kindOf(text);
    step.position = designatorsIn(text);
    if (time)
        step.minutes = time->value;
    QString sentence = startingBig(shown(text));
    if (step.minutes)
        sentence += QStringLiteral(", ") + minutesText(*step.minutes);
    // Otherwise the hours would seem to have lost what was just typed.
    const bool counted = step.minutes && withinClock(jotting.file, step.at);
    const QString aside = counted ? QStringLiteral(" · the clock runs: counted within it") : QString();
    return {QStringLiteral("step"),
            QStringLiteral("step, ") + toWord(step.kind),
            QStringLiteral("Step: ") + sentence + to.words() + aside,
            {},
            Change(sentence).add(step)};
}

} // namespace ts
