#pragma once

#include "model/money/overviews.h"

namespace ts {

/// One overview as it is drawn and as its table.
struct OverviewPicture {
    QString title;
    QString says;    ///< what is counted, and what is not
    QString measure; ///< of the bars: "GBP", "hours"
    QStringList names;
    QList<std::pair<QString, QList<double>>> sets; ///< a bar for each name
    bool counts = false;                           ///< whole numbers
    bool upright = false;                          ///< columns from left to right; else bars from top to bottom
    QStringList heads;
    QList<QStringList> rows;
    QString empty; ///< what stands where there is nothing to draw
};

/// All of them, in the order of their tabs.
[[nodiscard]] QList<OverviewPicture> overviewPictures(const Overviews &overviews, const Currency &currency);

} // namespace ts
