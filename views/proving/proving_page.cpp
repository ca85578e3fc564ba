#include "views/proving/proving_page.h"

namespace ts {

ProvingPage::ProvingPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void ProvingPage::refresh() {}

} // namespace ts
