#pragma once

#include <QFrame>

#include <functional>

class QLabel;
class QPushButton;

namespace ts {

/// A question about what was just typed, in the page and not in a window of its own: asked once, answered by a button or by Enter again.
class QuestionLine : public QFrame {
    Q_OBJECT
public:
    explicit QuestionLine(QWidget *parent = nullptr);

    /// Asks; `yes` is done where the person agrees. Another question, or done(), takes its place.
    void ask(const QString &question, const QString &yesWord, std::function<void()> yes);
    void done();
    [[nodiscard]] QString question() const; ///< empty where nothing is asked

private:
    QLabel *m_text;
    QPushButton *m_yes;
    std::function<void()> m_do;
};

} // namespace ts
