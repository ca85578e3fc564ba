#pragma once

#include "views/unit/page.h"

namespace ts {

/// Symptoms with their possible causes and checks.
class FaultPage : public Page {
    Q_OBJECT
public:
    explicit FaultPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
