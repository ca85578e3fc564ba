#pragma once

#include "views/places/place.h"

namespace ts {

/// Settings of the workbook and of this computer.
class SettingsPlace : public Place {
    Q_OBJECT
public:
    explicit SettingsPlace(Workplace &workplace, QWidget *parent = nullptr);

protected:
    void refresh() override {}
};

} // namespace ts
