#pragma once

#include "model/desk/desk.h"

namespace ts {

/// What the demo workbook is to be: the story of demo-db, or many invented units for measuring.
struct DemoWish {
    int units = 0; ///< 0: the story
    quint32 seed = 1;
};

/// Makes the demo workbook as a new file or in an empty database and answers its name; leaves nothing where it does not come about.
[[nodiscard]] Expected<QString> makeDemoBook(const QString &book, const DemoWish &wish, const Progress &progress = {});

} // namespace ts
