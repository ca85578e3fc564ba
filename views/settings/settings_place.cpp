#include "views/settings/settings_place.h"

namespace ts {

SettingsPlace::SettingsPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent) {}

} // namespace ts
