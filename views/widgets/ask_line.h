#pragma once

#include <QFrame>

#include <functional>

class QLabel;
class QLineEdit;

namespace ts {

/// One more thing to be said in words, asked in the page: Enter takes it, Escape leaves everything as it was.
class AskLine : public QFrame {
    Q_OBJECT
public:
    explicit AskLine(QWidget *parent = nullptr);

    /// `take` answers whether it was taken; where it was not, the line stays.
    void ask(const QString &question, const QString &begin, const QString &hint, std::function<bool(const QString &typed)> take);
    void putAway();
    [[nodiscard]] QLineEdit *field() const { return m_field; }

Q_SIGNALS:
    void closed(); ///< taken or left: the keyboard is free

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QLabel *m_question;
    QLineEdit *m_field;
    std::function<bool(const QString &)> m_take;
};

} // namespace ts
