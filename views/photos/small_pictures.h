#pragma once

#include "views/photos/photo_source.h"
#include "views/widgets/background.h"

#include <QWidget>

class QHBoxLayout;

namespace ts {

class Style;

/// A row of small pictures of what is not in the workbook yet, to see what it is; unpacked beside the window.
class SmallPictures : public QWidget {
    Q_OBJECT
public:
    explicit SmallPictures(const Style &style, QWidget *parent = nullptr);
    void add(const PhotoSource &source); ///< the first few are shown
    void clear();

private:
    const Style &m_style;
    int m_generation = 0; ///< a late picture of an earlier lot is not shown
    int m_asked = 0;
    QHBoxLayout *m_row;
    Background m_background;
};

} // namespace ts
