#pragma once

#include "views/workplace.h"

#include <QWidget>

class QPushButton;

namespace ts {

/// The stages from scouted to closed, the unit's own marked. Where there is no room for all, one button that opens them as a menu.
/// Below them, what is known of the unit's own: what it waits for, what is asked for it, how it ended.
class StageRibbon : public QWidget {
    Q_OBJECT
public:
    explicit StageRibbon(Workplace &workplace, QWidget *parent = nullptr);
    void setCompact(bool compact);
    [[nodiscard]] bool isCompact() const { return m_compact; }
    [[nodiscard]] int wideWidth() const; ///< that all stages side by side take
    void takeFocus();

Q_SIGNALS:
    void stageWanted(ts::Stage stage);

private:
    void refresh();
    [[nodiscard]] QString particulars() const;

    Workplace &m_work;
    QWidget *m_row;
    QList<QPushButton *> m_stages; ///< in the order of the stages
    QPushButton *m_one;
    QPushButton *m_more;
    bool m_compact = false;
};

} // namespace ts
