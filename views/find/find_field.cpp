#include "views/find/find_field.h"

namespace ts {

FindField::FindField(Workplace &workplace, QWidget *parent) : QLineEdit(parent), m_work(workplace)
{
    setPlaceholderText(tr("Find anything: tag, part, reading, words…"));
    setAccessibleName(tr("Find anything"));
    setMaximumWidth(460);
}

void FindField::begin()
{
    setFocus();
    selectAll();
}

} // namespace ts
