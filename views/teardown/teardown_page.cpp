#include "views/teardown/teardown_page.h"

namespace ts {

TeardownPage::TeardownPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void TeardownPage::refresh() {}

} // namespace ts
