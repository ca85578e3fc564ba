#pragma once

#include "views/log/entry_fields.h"
#include "views/workplace.h"

#include <QFrame>

class QLabel;

namespace ts {

/// An entry being edited in its row. Enter and leaving it keep what was typed, Esc leaves the entry as it was; what is refused is
/// said in the form, which then stays open.
class EntryForm : public QFrame {
    Q_OBJECT
public:
    /// `before` is the row of the record that the event tells of.
    EntryForm(Workplace &workplace, const Event &event, const Row &before, QWidget *parent = nullptr);

    void focusFirst();
    /// Keeps what was typed; answers whether that went well. Emits done then.
    bool commit();
    /// The widget of a column, for whoever looks for it by name; null where it has none.
    [[nodiscard]] QWidget *field(const QString &column) const;
    [[nodiscard]] QString trouble() const; ///< what was refused, or empty

Q_SIGNALS:
    void done(bool byKey); ///< it is to be closed; by a key: the list goes on

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] QWidget *makeField(const EntryField &field);
    [[nodiscard]] QString typed(int index) const;
    void refuse(const QString &sentence);
    void lookWhetherLeft();
    void finish(bool byKey);

    Workplace &m_work;
    const Kind &m_kind;
    Row m_before;
    QList<EntryField> m_fields;
    QWidgetList m_widgets;
    QLabel *m_trouble;
    bool m_done = false;
};

} // namespace ts
