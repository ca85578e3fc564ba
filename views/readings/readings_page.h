#pragma once

#include "views/unit/page.h"

namespace ts {

/// Test points with what is wanted, what was found and what is left after work.
class ReadingsPage : public Page {
    Q_OBJECT
public:
    explicit ReadingsPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
