#pragma once

#include "views/workplace.h"

#include <QLineEdit>

namespace ts {

/// Finds anything in the workbook as one types, and goes there. A barcode scanner that types a tag opens its unit.
class FindField : public QLineEdit {
    Q_OBJECT
public:
    explicit FindField(Workplace &workplace, QWidget *parent = nullptr);
    void begin(); ///< takes the keyboard, with the last words marked

private:
    Workplace &m_work;
};

} // namespace ts
