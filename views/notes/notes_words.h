#pragma once

#include "views/workplace.h"

#include <QWidget>

class QComboBox;

namespace ts {

/// What is known of a model in plain words: a field for each, committed when it is left.
class NotesWords : public QWidget {
    Q_OBJECT
public:
    explicit NotesWords(Workplace &workplace, QWidget *parent = nullptr);
    void show(const ModelNotes &notes);
    void commit();
    void focusFirst();
    /// "Pellworth KD-7", or the category where it is of a whole category.
    [[nodiscard]] static QString title(const ModelNotes &notes);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Field {
        QString ModelNotes::*member;
        QWidget *editor;
    };
    void addField(const QString &label, QString ModelNotes::*member, bool oneLine, const QString &hint = {});

    Workplace &m_work;
    QComboBox *m_category;
    QList<Field> m_fields;
    Id<ModelNotes> m_of;
};

} // namespace ts
