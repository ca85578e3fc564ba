#include "views/handover/handover_page.h"

namespace ts {

HandoverPage::HandoverPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void HandoverPage::refresh() {}

} // namespace ts
