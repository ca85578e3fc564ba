#pragma once

#include <QWidget>

#include <functional>

class QComboBox;
class QLineEdit;

namespace ts {

class GrowingText;

/// One detail of the unit, edited in place. Enter and leaving it keep what was typed, Esc puts back what is recorded; what is refused
/// stays in the field, marked, until it is mended.
class DetailField : public QWidget {
    Q_OBJECT
public:
    enum class Form { Line, Text, Choice };
    /// Records what was typed (of a choice: its word); false where it was refused.
    using Take = std::function<bool(const QString &typed)>;

    DetailField(const QString &label, Form form, Take take, QWidget *parent = nullptr);
    [[nodiscard]] QWidget *editor() const;
    void setHint(const QString &hint);
    void setChoices(const QList<std::pair<QString, QString>> &wordAndText); ///< for Form::Choice
    void setCompletions(const QStringList &texts);                          ///< for Form::Line

    /// What is recorded; what is being typed stays.
    void setRecorded(const QString &recorded);
    void commit();
    void forget(); ///< lets go what is being typed: it was of another unit

Q_SIGNALS:
    void entered(); ///< the keyboard came here

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void mark(bool wrong);
    void takeChoice();

    Take m_take;
    QString m_recorded;
    bool m_typing = false;
    // One of the three.
    QLineEdit *m_line = nullptr;
    GrowingText *m_text = nullptr;
    QComboBox *m_box = nullptr;
};

} // namespace ts
