#include "views/log/log_page.h"

namespace ts {

LogPage::LogPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent) {}

void LogPage::refresh() {}

} // namespace ts
