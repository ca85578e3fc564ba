#pragma once

#include "views/workplace.h"

#include <QLineEdit>
#include <QPointer>

class QFrame;
class QLabel;
class QListView;
class QTimer;

namespace ts {

class FoundModel;

/// Finds anything in the workbook as one types, and goes there. A barcode scanner that types a tag opens its unit.
class FindField : public QLineEdit {
    Q_OBJECT
public:
    explicit FindField(Workplace &workplace, QWidget *parent = nullptr);
    void begin(); ///< takes the keyboard, with the last words marked
    [[nodiscard]] FoundModel *found() const { return m_found; }
    [[nodiscard]] QListView *list() const { return m_list; }
    [[nodiscard]] bool isOpen() const;

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void search();
    void open();       ///< shows the list below the field
    void putAway();
    void goBack();
    void goTo(int row);
    void enter();
    void step(int by);

    Workplace &m_work;
    FoundModel *m_found;
    QFrame *m_sheet;
    QListView *m_list;
    QLabel *m_none;
    QTimer *m_typed;
    QPointer<QWidget> m_before; ///< who had the keyboard
};

} // namespace ts
