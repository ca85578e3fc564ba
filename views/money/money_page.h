#pragma once

#include "views/unit/page.h"

namespace ts {

/// Cost against resale.
class MoneyPage : public Page {
    Q_OBJECT
public:
    explicit MoneyPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
