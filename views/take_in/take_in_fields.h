#pragma once

#include "model/records/taking_in.h"
#include "views/workplace.h"

class QButtonGroup;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;

namespace ts {

class LikeUnits;

/// The fields of a unit that comes in. All but name and category may stay empty.
class TakeInFields : public QWidget {
    Q_OBJECT
public:
    explicit TakeInFields(Workplace &workplace, QWidget *parent = nullptr);

    void clear();
    void focusName();
    void focusCategory();
    [[nodiscard]] bool hasCategory() const;
    /// What was typed, checked; refused by what is wrong, with the field made current.
    [[nodiscard]] Expected<Arrival> arrival(Maker &maker);
    /// What was typed as far as it can be read, for what the page shows while typing goes on.
    [[nodiscard]] Arrival soFar() const;
    void copyFrom(const Id<Unit> &like);
    bool copyFirstOffered();

Q_SIGNALS:
    void edited();

private:
    [[nodiscard]] QLineEdit *line(const QString &label, const QString &hint = {});
    QLabel *place(QGridLayout *grid, int row, int column, int span, const QString &label, QWidget *field);
    void nameTyped(const QString &name);
    void setCategory(Category category);
    [[nodiscard]] std::optional<Category> category() const;
    [[nodiscard]] Expected<QString> text(QLineEdit *field, qsizetype most) const;
    [[nodiscard]] Expected<std::optional<Money>> money(QLineEdit *field) const;

    Workplace &m_work;
    QLineEdit *m_name;
    LikeUnits *m_like;
    QComboBox *m_category;
    bool m_categoryChosen = false; ///< by hand, not by the name
    QLineEdit *m_maker;
    QLineEdit *m_model;
    QLineEdit *m_serial;
    QLineEdit *m_mains;
    QComboBox *m_class;
    QButtonGroup *m_kind;
    QLineEdit *m_owner;
    QLineEdit *m_claim;
    QLineEdit *m_paid;
    QLineEdit *m_carriage;
    QLineEdit *m_resale;
    QLineEdit *m_hours;
    QList<TestPoint> m_points;
};

} // namespace ts
