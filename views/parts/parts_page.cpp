#include "views/parts/parts_page.h"

namespace ts {

PartsPage::PartsPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void PartsPage::refresh() {}

} // namespace ts
