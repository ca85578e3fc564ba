#pragma once

#include "model/records/unit.h"
#include "model/values/words.h"

#include <QImage>

namespace ts {

enum class DemoView { Front, Back, Inside, Detail };

template <>
struct Words<DemoView> {
    static constexpr std::array list{std::pair{DemoView::Front, "front"},
                                     std::pair{DemoView::Back, "back"},
                                     std::pair{DemoView::Inside, "inside"},
                                     std::pair{DemoView::Detail, "detail"}};
};

/// What a picture of the demo workbook is to show.
struct DemoPicture {
    DemoView view = DemoView::Front;
    Category category = Category::Other;
    QString name;    ///< of the unit; "oscilloscope" or "portable" in it changes the shape
    QString maker;
    QString makerModel;
    QString serial;
    QString subject; ///< of a detail: belt, tyre, clutch, gear, capacitor, joint, board, relay, lid, strobe, parcel
    int wear = 0;    ///< 0 clean to 3 bad
    quint32 seed = 0;
};

/// A drawn picture, 1600 by 1200; the same for the same description.
[[nodiscard]] QImage drawDemoPicture(const DemoPicture &picture);
/// What a detail can be of.
[[nodiscard]] QStringList demoSubjects();

} // namespace ts
