#pragma once

#include <QScrollArea>

namespace ts {

class GridView;

/// A page that scrolls as a whole: its tables are as high as their rows, and it follows the place in them.
class PageScroll : public QScrollArea {
    Q_OBJECT
public:
    PageScroll(QWidget *content, const QList<GridView *> &tables, QWidget *parent = nullptr);

private:
    void follow(GridView *table);
};

} // namespace ts
