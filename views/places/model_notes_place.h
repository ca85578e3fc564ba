#pragma once

#include "views/places/place.h"

class QLineEdit;
class QListWidget;
class QPlainTextEdit;
class QStackedWidget;

namespace ts {

/// What is known of each model across units: chosen at the left, edited in place at the right.
class ModelNotesPlace : public Place {
    Q_OBJECT
public:
    explicit ModelNotesPlace(Workplace &workplace, QWidget *parent = nullptr);
    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

protected:
    void refresh() override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Field {
        QString ModelNotes::*member;
        QWidget *editor;
    };
    QWidget *makeForm();
    void addField(QWidget *form, const QString &label, QString ModelNotes::*member, bool oneLine);
    void showChosen();
    void add();
    void remove();
    [[nodiscard]] const ModelNotes *chosen() const;
    [[nodiscard]] QString title(const ModelNotes &notes) const;

    QListWidget *m_list;
    QStackedWidget *m_right;
    QList<Field> m_fields;
    Id<ModelNotes> m_chosen;
};

} // namespace ts
