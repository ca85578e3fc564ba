#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace ts {

class StagePanel;
class StageRibbon;

/// What unit is in hand: photo, name, tag, serial, mains, and its stage.
class UnitHead : public QFrame {
    Q_OBJECT
public:
    explicit UnitHead(Workplace &workplace, QWidget *parent = nullptr);
    [[nodiscard]] StageRibbon *ribbon() const { return m_ribbon; }
    [[nodiscard]] StagePanel *panel() const { return m_panel; }

Q_SIGNALS:
    void detailsWanted();

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void refresh();
    [[nodiscard]] QString secondLine() const;

    Workplace &m_work;
    QLabel *m_photo;
    QLabel *m_name;
    QLabel *m_line;
    QPushButton *m_details;
    StageRibbon *m_ribbon;
    StagePanel *m_panel;
};

} // namespace ts
