#pragma once

#include <QFrame>

class QLabel;
class QPushButton;
class QTimer;

namespace ts {

/// What went wrong and what to do about it, at the top of the window until it is put away.
class NoticeBar : public QFrame {
    Q_OBJECT
public:
    explicit NoticeBar(QWidget *parent = nullptr);
    void refuse(const QString &sentence);
    [[nodiscard]] QString text() const; ///< what is being said, or empty

private:
    QLabel *m_text;
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
