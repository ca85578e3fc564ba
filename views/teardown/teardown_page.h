#pragma once

#include "views/unit/page.h"

namespace ts {

/// What came off, in order, and back again.
class TeardownPage : public Page {
    Q_OBJECT
public:
    explicit TeardownPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
