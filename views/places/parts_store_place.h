#pragma once

#include "views/places/place.h"

class QLineEdit;
class QTreeWidget;

namespace ts {

/// The parts store: what lies where, how much of it, and what it cost.
class PartsStorePlace : public Place {
    Q_OBJECT
public:
    explicit PartsStorePlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;

protected:
    void refresh() override;

private:
    void narrow();
    void addTyped();

    QLineEdit *m_filter;
    QLineEdit *m_line;
    QTreeWidget *m_list;
};

} // namespace ts
