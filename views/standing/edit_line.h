#pragma once

#include <QWidget>

#include <functional>

class QLabel;
class QLineEdit;

namespace ts {

/// Words that become a field when they are clicked, or when Enter is pressed on them. Enter and leaving the field keep what was typed;
/// Escape does not.
class EditLine : public QWidget {
    Q_OBJECT
public:
    /// `name` says what it is to somebody who does not see it; `empty` stands there while nothing is known.
    EditLine(const QString &name, const QString &empty, QWidget *parent = nullptr);
    /// Shows `words` (perhaps with something before and behind what is edited); `value` is what is edited. While somebody types, what is
    /// typed stays.
    void show(const QString &words, const QString &value, bool warns = false);
    void begin();
    void commit();
    [[nodiscard]] bool isEditing() const;
    [[nodiscard]] QString words() const;

Q_SIGNALS:
    void typed(const QString &value); ///< something else than before

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void leave();

    QString m_name;
    QString m_empty;
    QString m_value;
    QLabel *m_words;
    QLineEdit *m_field;
};

} // namespace ts
