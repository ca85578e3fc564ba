// jot, photo, stage: one thing on one unit.
#include "app/commands.h"

#include "model/jot/jot.h"
#include "model/keeping/kept_photos.h"
#include "model/records/tag_text.h"
#include "model/sums/stage_rules.h"

namespace ts {

Exit runJot(Invocation &run)
{
    // No option parser here: a line may begin with a dash.
    QStringList given = run.arguments();
    if (given.value(2) == QLatin1String("--"))
        given.removeAt(2);
    if (given.size() < 3)
        return run.misuse(QStringLiteral("Something is missing after turnscrew jot; %1.").arg(run.usageHint()));
    const auto desk = run.open(given.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto unit = unitOf(**desk, given.at(1));
    if (!unit)
        return run.refuse(unit.trouble());
    const auto file = (*desk)->unitFile(*unit);
    if (!file)
        return run.refuse(file.trouble());
    const auto bench = (*desk)->benchFile();
    if (!bench)
        return run.refuse(bench.trouble());
    Maker maker = (*desk)->maker();
    const auto jotted = jot(given.mid(2).join(QLatin1Char(' ')), *file, *bench, maker);
    if (!jotted)
        return run.refuse(jotted.trouble());
    Change change = jotted->change;
    change.setSentence(tagText(file->unit.tag) + QLatin1Char(' ') + change.sentence()); // undo has no page that says whose it was
    if (auto applied = (*desk)->apply(change); !applied)
        return run.refuse(applied.trouble());
    run.out() << tagText(file->unit.tag) << ' ' << jotted->badge << ": " << jotted->preview << '\n';
    if (!jotted->question.isEmpty())
        run.remark(jotted->question + QStringLiteral(" It is recorded; if it should not be, turnscrew undo takes it back."));
    return Exit::Done;
}

Exit runPhoto(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("phase"), QStringLiteral("phase"));
    options.add(QStringLiteral("caption"), QStringLiteral("text"));
    if (auto read = options.read(run.arguments(), 3, -1); !read)
        return run.misuse(read.trouble().sentence());
    static const QHash<QString, Phase> phases{{QStringLiteral("found"), Phase::AsFound},
                                              {QStringLiteral("during"), Phase::DuringWork},
                                              {QStringLiteral("leaves"), Phase::AsItLeaves}};
    const QString phase =
        options.has(QStringLiteral("phase")) ? options.value(QStringLiteral("phase")) : QStringLiteral("during");
    if (!phases.contains(phase))
        return run.refuse(
            Trouble{QStringLiteral("\"%1\" is no phase").arg(phase), {}, QStringLiteral("choose one of found, during, leaves")});
    const auto caption = plainText(options.value(QStringLiteral("caption")), QStringLiteral("The caption"));
    if (!caption)
        return run.refuse(caption.trouble());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto unit = unitOf(**desk, options.at(1));
    if (!unit)
        return run.refuse(unit.trouble());
    const QStringList files = options.places().mid(2);
    QList<PreparedPhoto> prepared;
    for (const QString &file : files) { // all are looked at before the first is kept
        auto photo = preparePhoto(file);
        if (!photo)
            return run.refuse(photo.trouble());
        prepared << *std::move(photo);
    }
    const auto taken = (*desk)->get(*unit);
    if (!taken)
        return run.refuse(taken.trouble());
    auto change = keepingPhotos(**desk, prepared, {.unit = *unit, .phase = phases.value(phase), .caption = *caption});
    if (!change)
        return run.refuse(change.trouble());
    change->setSentence(tagText(taken->tag) + QLatin1Char(' ') + change->sentence());
    if (auto applied = (*desk)->apply(*change); !applied)
        return run.refuse(applied.trouble());
    run.out() << change->sentence() << '\n';
    return Exit::Done;
}

Exit runStage(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("because"), QStringLiteral("text"));
    options.add(QStringLiteral("until"), QStringLiteral("date"));
    options.add(QStringLiteral("outcome"), QStringLiteral("outcome"));
    if (auto read = options.read(run.arguments(), 3, 3); !read)
        return run.misuse(read.trouble().sentence());
    StageWish wish;
    const auto stage = parseWord<Stage>(options.at(2), QStringLiteral("stage"));
    if (!stage)
        return run.refuse(stage.trouble());
    wish.stage = *stage;
    const auto because = plainText(options.value(QStringLiteral("because")), QStringLiteral("The reason"));
    if (!because)
        return run.refuse(because.trouble());
    wish.because = *because;
    if (options.has(QStringLiteral("until"))) {
        wish.until = QDate::fromString(options.value(QStringLiteral("until")), Qt::ISODate);
        if (!wish.until.isValid())
            return run.refuse(Trouble{QStringLiteral("\"%1\" is no date").arg(options.value(QStringLiteral("until"))),
                                      {},
                                      QStringLiteral("write it as 2026-11-28")});
    }
    if (options.has(QStringLiteral("outcome"))) {
        const auto outcome = parseWord<Outcome>(options.value(QStringLiteral("outcome")), QStringLiteral("outcome"));
        if (!outcome)
            return run.refuse(outcome.trouble());
        wish.outcome = *outcome;
    }
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto id = unitOf(**desk, options.at(1));
    if (!id)
        return run.refuse(id.trouble());
    const auto file = (*desk)->unitFile(*id);
    if (!file)
        return run.refuse(file.trouble());
    Maker maker = (*desk)->maker();
    const auto change = ruledStageChange(*file, wish, maker);
    if (!change)
        return run.refuse(change.trouble());
    if (auto applied = (*desk)->apply(*change); !applied)
        return run.refuse(applied.trouble());
    run.out() << (change->isEmpty() ? QStringLiteral("%1 stands there already").arg(tagText(file->unit.tag)) : change->sentence())
              << '\n';
    return Exit::Done;
}

} // namespace ts
