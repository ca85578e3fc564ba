#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace ts {

class Workplace;

/// Beside the ladder: what to mind, how to drain a capacitor, and which lamp to put in line.
class PowerAids : public QWidget {
    Q_OBJECT
public:
    explicit PowerAids(Workplace &workplace, QWidget *parent = nullptr);
    [[nodiscard]] QLineEdit *capacitor() const { return m_capacitor; }
    [[nodiscard]] QLineEdit *idle() const { return m_idle; }
    [[nodiscard]] QString drainText() const;
    [[nodiscard]] QString lampText() const;

private:
    void reckonDrain();
    void reckonLamp();

    Workplace &m_work;
    QLineEdit *m_capacitor;
    QLabel *m_drain;
    QLineEdit *m_idle;
    QLabel *m_lamp;
};

/// "100 µF 450 V": how to drain it, in a few words; why it cannot be worked out where it cannot.
[[nodiscard]] QString drainingWords(const QString &typed);
/// "30 W" at these mains: which lamp; why it cannot be worked out where it cannot.
[[nodiscard]] QString lampWords(const QString &typed, const QString &mains);

} // namespace ts
