#pragma once

#include "model/money/best_use.h"
#include "views/places/place.h"

class QLabel;
class QTreeWidget;

namespace ts {

class EmptyPlace;

/// What to work on today, across all units, and why. It is worked out beside the window, with progress.
class BenchTodayPlace : public Place {
    Q_OBJECT
public:
    explicit BenchTodayPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;
    void showEvent(QShowEvent *event) override;

private:
    void workOut();
    void take(const QList<BenchUse> &uses);
    void openCurrent();

    QLabel *m_says;
    QTreeWidget *m_list;
    EmptyPlace *m_empty;
    bool m_asked = false; ///< since the place was opened
    int m_generation = 0; ///< of the latest question: an answer to an earlier one is dropped
};

} // namespace ts
