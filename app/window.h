#pragma once

namespace ts {

/// Opens the window on the workbook that the arguments name; answers the program's exit status.
int runWindow(int &argc, char **argv);

} // namespace ts
