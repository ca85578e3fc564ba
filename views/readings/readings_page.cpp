#include "views/readings/readings_page.h"

namespace ts {

ReadingsPage::ReadingsPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void ReadingsPage::refresh() {}

} // namespace ts
