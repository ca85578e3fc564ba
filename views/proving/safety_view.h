#pragma once

#include "model/jot/tried.h"
#include "views/workplace.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ts {

class Pill;
class TriedGrid;

/// The electrical safety test of the unit in hand before it is handed over, by a rule set and its protection class.
class SafetyView : public QWidget {
    Q_OBJECT
public:
    explicit SafetyView(Workplace &workplace, QWidget *parent = nullptr);

    void refresh();
    void focusFirst(); ///< onto the first test that is open
    void commitEdits();
    [[nodiscard]] TriedGrid *table() const { return m_table; }
    [[nodiscard]] QComboBox *rules() const { return m_rules; }
    [[nodiscard]] QComboBox *protectionClass() const { return m_class; }
    [[nodiscard]] QLineEdit *instrument() const { return m_instrument; }
    [[nodiscard]] QLineEdit *lead() const { return m_lead; }

private:
    [[nodiscard]] QWidget *makeHead();
    bool record(const QUuid &row, Said said, const QString &typed);
    void chooseRules(int at);
    void chooseClass(int at);

    Workplace &m_work;
    QComboBox *m_class;
    QComboBox *m_rules;
    QLineEdit *m_instrument; ///< for what is typed next; not on record by itself
    QLineEdit *m_lead;       ///< likewise
    Pill *m_verdict;
    QWidget *m_head;
    TriedGrid *m_table;
    QLabel *m_none;
    QLabel *m_remark;
};

} // namespace ts
