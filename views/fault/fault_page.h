#pragma once

#include "model/faults/check_next.h"
#include "model/faults/fault_offer.h"
#include "views/unit/page.h"

class QBoxLayout;
class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace ts {

class AskLine;
class Background;
class GridView;
class NextCard;
class Pill;
class SymptomChoice;
struct GridRow;

/// The board of one symptom: its possible causes with their likelihoods, the checks that tell them apart, and what to do next.
class FaultPage : public Page {
    Q_OBJECT
public:
    explicit FaultPage(Workplace &workplace, QWidget *parent = nullptr);
    ~FaultPage() override;

    [[nodiscard]] bool showsStanding() const override { return true; }
    void focusFirst() override;
    void reveal(const QString &kind, const QUuid &record) override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

    [[nodiscard]] GridView *causes() const { return m_causes; }
    [[nodiscard]] GridView *checks() const { return m_checks; }
    [[nodiscard]] NextCard *nextCard() const { return m_next; }
    [[nodiscard]] AskLine *asking() const { return m_ask; }
    [[nodiscard]] SymptomChoice *choice() const { return m_choice; }
    [[nodiscard]] const FaultBoard &board() const { return m_board; }
    void chooseSymptom(const Id<Symptom> &symptom);
    void bringInUsual(); ///< what the notes on the model, else the category, know of this symptom

protected:
    void refresh() override;
    void resizeEvent(QResizeEvent *event) override;

private:
    void makeBoard(QWidget *board);
    void makeActions();
    void showBoard();
    void workOutNext();
    void takeMove(const NextMove &move);

    // fault_edit.cpp
    std::optional<QUuid> commitCause(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> commitCheck(const GridRow &row, int column, const QString &typed);
    std::optional<QUuid> addCauseTyped(const QString &typed);
    std::optional<QUuid> addCheckTyped(const QString &typed);
    std::optional<QUuid> editCause(const GridRow &row, int column, const QString &typed);
    void askWhy(const Id<Cause> &cause, CauseState state);
    void askMore();
    void askHowSure(const Id<Check> &check, int mark);
    void askResult(const Id<Check> &check);
    void askSymptom();
    void askSafety(const QString &step, bool inOrder);
    void turnSymptom();
    void bringIn(const FaultOffer &offer);
    void offerOthers(const QString &question);
    void removeCause(const QUuid &key);
    void removeCheck(const QUuid &key);

    QStackedWidget *m_whole;
    QComboBox *m_which;
    QLabel *m_heading;
    Pill *m_seen;
    QPushButton *m_clear;
    AskLine *m_ask;
    SymptomChoice *m_choice;
    GridView *m_causes;
    GridView *m_checks;
    NextCard *m_next;
    QLabel *m_remarks;
    QBoxLayout *m_below; ///< checks beside what to check next, or above it where there is no room
    Background *m_background;
    int m_generation = 0; ///< of what is being worked out; a late answer of an earlier one is dropped
    QList<FaultBoard> m_boards;
    FaultBoard m_board;
    Id<Unit> m_of;
    Id<Symptom> m_symptom;
};

} // namespace ts
