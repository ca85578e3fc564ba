#pragma once

#include "views/widgets/card.h"
#include "views/workplace.h"

#include <QTemporaryDir>

namespace ts {

/// The sheets of the unit in hand that were handed over, each as it was then, to be opened.
class EarlierSheets : public Card {
    Q_OBJECT
public:
    explicit EarlierSheets(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    void open(const Paper &paper);

private:
    Workplace &m_work;
    QList<Paper> m_shown;
    QTemporaryDir m_folder; ///< copies for the viewer; gone with the window
};

} // namespace ts
