#pragma once

#include "app/invocation.h"

namespace ts {

/// One word of the command line.
struct Command {
    QString name;
    QString usage;      ///< what follows the name
    QString says;       ///< one line for the list
    bool draws = false; ///< needs fonts and images
    Exit (*run)(Invocation &) = nullptr;
};

/// Every command, in the order they are listed.
[[nodiscard]] const QList<Command> &commands();

// Each in the file named after its family.
Exit runNew(Invocation &);
Exit runDemo(Invocation &);
Exit runSet(Invocation &);
Exit runVerify(Invocation &);
Exit runBackup(Invocation &);
Exit runTakeIn(Invocation &);
Exit runJot(Invocation &);
Exit runPhoto(Invocation &);
Exit runStage(Invocation &);
Exit runBringIn(Invocation &);
Exit runLearn(Invocation &);
Exit runUndo(Invocation &);
Exit runRedo(Invocation &);
Exit runShow(Invocation &);
Exit runBench(Invocation &);
Exit runDecide(Invocation &);
Exit runPaper(Invocation &);
Exit runJudge(Invocation &);
Exit runReckon(Invocation &);
Exit runMeter(Invocation &);
Exit runSound(Invocation &);
Exit runImport(Invocation &);
Exit runExport(Invocation &);

} // namespace ts
