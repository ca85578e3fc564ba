#pragma once

#include "views/workplace.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;

namespace ts {

class StageAsk;

/// Below the ribbon: what the stage needs that was clicked, why it is refused, and the reason to go there all the same. Nothing else of
/// the window waits for it.
class StagePanel : public QFrame {
    Q_OBJECT
public:
    explicit StagePanel(Workplace &workplace, QWidget *parent = nullptr);

    /// Moves the unit there where the stage needs nothing; else asks. At the stage where it stands, shows what can be changed of it.
    void ask(Stage stage);
    void commitEdits(); ///< keeps what was changed of the stage where the unit stands
    void putAway();

Q_SIGNALS:
    void settled(); ///< moved, or thought better of: the keyboard is free

protected:
    void keyPressEvent(QKeyEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] StageAsk *askOf(Stage stage);
    [[nodiscard]] bool edits() const { return m_stage == m_work.file().unit.stage; }
    void showObstacles();
    void showSafety();
    void orderTabs();
    bool commit();

    Workplace &m_work;
    Stage m_stage = Stage::Shelved;
    Id<Unit> m_unit;
    QLabel *m_title;
    QWidget *m_body;
    QHash<int, StageAsk *> m_asks;
    QLabel *m_why;
    QLabel *m_safety; ///< what nobody has tested of electrical safety; it keeps nothing from moving
    QWidget *m_overrule;
    QLineEdit *m_because;
    QPushButton *m_proofs;
    QPushButton *m_loose;
    QPushButton *m_move;
    QPushButton *m_away;
};

} // namespace ts
