#pragma once

#include "model/sums/reckon.h"
#include "views/places/place.h"

class QLineEdit;
class QListWidget;

namespace ts {

class SumForm;

/// All bench sums in one place: chosen at the left by name or by what they are for, worked out at the right.
class SumsPlace : public Place {
    Q_OBJECT
public:
    explicit SumsPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void fillList();

    QList<Sum> m_sums;
    QLineEdit *m_filter;
    QListWidget *m_list;
    SumForm *m_form;
};

} // namespace ts
