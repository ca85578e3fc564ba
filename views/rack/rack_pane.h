#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLineEdit;
class QListView;

namespace ts {

class RackModel;

/// The rack of tags at the left: grouped by stage, narrowed as one types.
class RackPane : public QFrame {
    Q_OBJECT
public:
    explicit RackPane(Workplace &workplace, QWidget *parent = nullptr);

    void step(int by);      ///< takes the next or the previous tag in hand
    void focusFilter();
    void takeFirst();       ///< takes the top tag in hand, where there is one and none is in hand

private:
    void reload();
    void follow(); ///< marks the tag of the unit in hand

    Workplace &m_work;
    RackModel *m_model;
    QLineEdit *m_filter;
    QListView *m_view;
};

} // namespace ts
