#pragma once

#include <QFrame>

#include <functional>

class QHBoxLayout;
class QLabel;

namespace ts {

/// A question to which there are several answers, in the window and never in its way: it stays until one is given.
class AnswersBar : public QFrame {
    Q_OBJECT
public:
    struct Answer {
        QString word;
        std::function<void()> act; ///< may be empty: nothing is done
    };
    explicit AnswersBar(QWidget *parent = nullptr);

    /// Asks in the place of what was asked before. The first answer is the usual one.
    void ask(const QString &question, const QList<Answer> &answers);
    void done();
    [[nodiscard]] bool isAsking() const { return !isHidden(); }
    [[nodiscard]] QString question() const;
    /// A place before the answers, for a field.
    void setField(QWidget *field);
    void takeFocus();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    QLabel *m_text;
    QHBoxLayout *m_row;
    QWidget *m_field = nullptr;
    QList<QWidget *> m_buttons;
    std::function<void()> m_last; ///< what Escape does: the last answer, the one that changes least
};

} // namespace ts
