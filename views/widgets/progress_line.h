#pragma once

#include <QFrame>

class QLabel;
class QProgressBar;

namespace ts {

/// What is being done, how far it is, and Stop: for the foot of the window. Hidden while nothing is done.
class ProgressLine : public QFrame {
    Q_OBJECT
public:
    explicit ProgressLine(QWidget *parent = nullptr);
    void begin(const QString &what);
    /// `total` 0: nobody knows how long it takes.
    void advance(int done, int total);
    void end() { hide(); }

Q_SIGNALS:
    void stopWanted();

private:
    QLabel *m_what;
    QProgressBar *m_bar;
};

} // namespace ts
