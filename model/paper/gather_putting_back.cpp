#include "model/paper/putting_back.h"

#include "model/paper/plain_words.h"
#include "model/paper/unit_words.h"
#include "model/records/settings.h"
#include "model/records/tag_text.h"
#include "model/sums/standing.h"

#include <algorithm>

namespace ts {

namespace {

PuttingBackFacts::Step stepOf(const TeardownItem &item)
{
    PuttingBackFacts::Step step;
    step.number = item.position;
    step.what = plainText(item.what);
    step.fasteners = plainText(item.fasteners);
    if (step.fasteners.isEmpty() && item.fastenerCount)
        step.fasteners = QStringLiteral("%1 fasteners").arg(*item.fastenerCount);
    for (const auto &[label, text] : {std::pair{"Springs and washers: ", item.springs},
                                      std::pair{"Connectors: ", item.connectors}, std::pair{"Marks: ", item.marks}})
        if (const QString said = plainText(text); !said.isEmpty())
            step.more << QLatin1String(label) + said;
    step.keptIn = plainText(item.keptIn);
    step.caution = plainText(item.caution);
    return step;
}

} // namespace

Expected<PuttingBackFacts> gatherPuttingBack(const UnitFile &file, const BenchFile &bench, const QDateTime &now)
{
    const Standing stand = standing(file, bench);
    PuttingBackFacts facts;
    facts.tag = tagText(file.unit.tag);
    if (stand.loose.isEmpty())
        return Trouble{QStringLiteral("There is no putting-back sheet of unit %1").arg(facts.tag),
                       QStringLiteral("nothing of it is off"),
                       {}};
    facts.madeAt = now;
    facts.stage = stageOf(file.unit);
    facts.name = nameOf(file.unit);
    facts.identity = identityOf(file.unit, facts.name);
    facts.benchName = plainText(bench.setting(settings::benchName));
    facts.worker = plainText(bench.setting(settings::worker));
    facts.date = dayText(now.date());
    facts.doNotPower = plainText(stand.doNotPower);
    facts.whereAt = plainText(stand.whereAt);
    facts.next = plainText(stand.next);
    for (const TeardownItem &item : stand.loose)
        facts.steps << stepOf(item);
    for (const TeardownItem &item : file.all<TeardownItem>()) {
        if (item.removed)
            continue;
        if (item.state == TeardownState::Back)
            facts.back << plainText(item.what);
        if (item.state == TeardownState::LeftOut)
            facts.leftOut << plainText(item.what) + QStringLiteral(": ") + plainText(item.leftOutBecause);
    }
    facts.loose = stand.counted.text();
    facts.otherLoose = plainText(stand.otherLoose);
    for (const QString &caution : stand.cautions)
        if (!caution.startsWith(QStringLiteral("Do not power"))) // stands above by itself
            facts.cautions << plainText(caution);
    return facts;
}

} // namespace ts
