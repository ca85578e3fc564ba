#pragma once

#include <QFrame>

class QLabel;
class QPushButton;
class QTimer;

namespace ts {

/// What went wrong and what to do about it, at the top of the window until it is put away, Esc is pressed, or something else succeeds.
class NoticeBar : public QFrame {
    Q_OBJECT
public:
    explicit NoticeBar(QWidget *parent = nullptr);
    void refuse(const QString &sentence);
    /// Something succeeded since: what went wrong is behind us. What was said this moment stays, to be read.
    void settle();
    [[nodiscard]] QString text() const; ///< what is being said, or empty

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QLabel *m_text;
    QTimer *m_justSaid;
};

/// What was done last, at the foot of the window, with the offer to take it back. Always there, so that nothing moves when it speaks.
class SaidLine : public QFrame {
    Q_OBJECT
public:
    explicit SaidLine(QWidget *parent = nullptr);
    void say(const QString &sentence, bool undoable);
    [[nodiscard]] QString text() const;
    /// A place at the right for what runs in the background.
    void addAtRight(QWidget *widget);

Q_SIGNALS:
    void undoWanted();

private:
    QLabel *m_text;
    QPushButton *m_undo;
    QTimer *m_timer;
};

} // namespace ts
