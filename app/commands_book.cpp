// new, demo, verify, backup, undo, redo: the workbook as a whole.
#include "app/commands.h"
#include "app/demo_book.h"

namespace ts {

Exit runNew(Invocation &run)
{
    Options options(run);
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    const auto desk = run.create(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    run.out() << "Made " << (*desk)->name() << ".\n";
    return Exit::Done;
}

Exit runDemo(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("units"), QStringLiteral("N"));
    options.add(QStringLiteral("seed"), QStringLiteral("S"));
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    bool unitsOk = true;
    bool seedOk = true;
    const int units = options.has(QStringLiteral("units")) ? options.value(QStringLiteral("units")).toInt(&unitsOk) : 0;
    const quint32 seed = options.has(QStringLiteral("seed")) ? options.value(QStringLiteral("seed")).toUInt(&seedOk) : 1;
    const bool bulk = options.has(QStringLiteral("units"));
    if (!unitsOk || !seedOk || (bulk && (units < 1 || units > 1'000'000)))
        return run.misuse(QStringLiteral("--units takes a number from 1 to 1000000, --seed a whole number."));

    const auto name = makeDemoBook(options.at(0), {.units = units, .seed = seed}, run.progress(bulk ? QStringLiteral("Units") : QStringLiteral("Demo")));
    if (!name)
        return run.refuse(name.trouble());
    run.out() << "Made " << *name << ".\n";
    return Exit::Done;
}

Exit runVerify(Invocation &run)
{
    Options options(run);
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto found = (*desk)->verify();
    if (!found)
        return run.refuse(found.trouble());
    if (found->isEmpty()) {
        run.out() << (*desk)->name() << " is sound.\n";
        return Exit::Done;
    }
    for (const QString &line : *found)
        run.remark(line);
    return Exit::Refused;
}

Exit runBackup(Invocation &run)
{
    Options options(run);
    options.add(QStringLiteral("o"), QStringLiteral("FILE"));
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    if (options.value(QStringLiteral("o")).isEmpty())
        return run.misuse(QStringLiteral("Say where the copy goes: turnscrew backup BOOK -o FILE."));
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    if (auto done = (*desk)->backup(options.value(QStringLiteral("o"))); !done)
        return run.refuse(done.trouble());
    run.out() << "Copied " << (*desk)->name() << " to " << options.value(QStringLiteral("o")) << " and checked the copy.\n";
    return Exit::Done;
}

namespace {

Exit takeBack(Invocation &run, Expected<QString> (Desk::*step)(), const QString &said)
{
    Options options(run);
    if (auto read = options.read(run.arguments(), 1, 1); !read)
        return run.misuse(read.trouble().sentence());
    const auto desk = run.open(options.at(0));
    if (!desk)
        return run.refuse(desk.trouble());
    const auto sentence = ((**desk).*step)();
    if (!sentence)
        return run.refuse(sentence.trouble());
    run.out() << said << *sentence << '\n';
    return Exit::Done;
}

} // namespace

Exit runUndo(Invocation &run)
{
    return takeBack(run, &Desk::undo, QStringLiteral("Undone: "));
}

Exit runRedo(Invocation &run)
{
    return takeBack(run, &Desk::redo, QStringLiteral("Done again: "));
}

} // namespace ts
