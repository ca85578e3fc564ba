#include "views/fault/fault_page.h"

namespace ts {

FaultPage::FaultPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void FaultPage::refresh() {}

} // namespace ts
