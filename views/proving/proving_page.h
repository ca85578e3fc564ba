#pragma once

#include "views/unit/page.h"

namespace ts {

/// The acceptance checks before handover.
class ProvingPage : public Page {
    Q_OBJECT
public:
    explicit ProvingPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
