#pragma once

#include "views/unit/page.h"

namespace ts {

/// Everything that happened to the unit, by day, and the line to jot into.
class LogPage : public Page {
    Q_OBJECT
public:
    explicit LogPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
