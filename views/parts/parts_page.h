#pragma once

#include "views/unit/page.h"

namespace ts {

/// Parts that the unit needs, waits for, has and got.
class PartsPage : public Page {
    Q_OBJECT
public:
    explicit PartsPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
