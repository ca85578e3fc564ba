#include "views/take_in/take_in_page.h"

namespace ts {

TakeInPage::TakeInPage(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace) {}

void TakeInPage::begin() {}

} // namespace ts
