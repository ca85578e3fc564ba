#pragma once

#include "views/unit/page.h"

namespace ts {

/// The restoration sheet as the buyer will get it.
class HandoverPage : public Page {
    Q_OBJECT
public:
    explicit HandoverPage(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override;
};

} // namespace ts
