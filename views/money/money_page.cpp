#include "views/money/money_page.h"

namespace ts {

MoneyPage::MoneyPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void MoneyPage::refresh() {}

} // namespace ts
