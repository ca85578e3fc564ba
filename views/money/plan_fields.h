#pragma once

#include "views/money/plan_edit.h"
#include "views/workplace.h"

#include <QWidget>

class QGridLayout;
class QLineEdit;

namespace ts {

/// Fields of the unit's plan. While one is typed in, the money in hand is worked out with it; Enter or leaving records it, Esc puts back
/// what is recorded.
class PlanFields : public QWidget {
    Q_OBJECT
public:
    explicit PlanFields(Workplace &workplace, QWidget *parent = nullptr);
    /// A row: its word, and one field or three (hardly less, likely, hardly more).
    void addRow(const QString &label, const QList<PlanField> &fields, const QString &hint = {});
    /// Words above the columns.
    void addHeads(const QStringList &heads);
    void refresh(); ///< what is recorded; what is being typed stays
    void commitEdits();
    [[nodiscard]] QLineEdit *field(PlanField field) const;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void tried(PlanField field, const QString &typed);
    void commit(PlanField field);

    Workplace &m_work;
    QGridLayout *m_grid;
    QList<std::pair<PlanField, QLineEdit *>> m_fields;
    Id<Unit> m_of;
};

} // namespace ts
