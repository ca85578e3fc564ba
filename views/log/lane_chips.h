#pragma once

#include "views/log/log_entry.h"

#include <QSet>
#include <QWidget>

class QPushButton;

namespace ts {

/// By which kinds the log is filtered: one chip for each that the unit has entries of, and one for all. Tab comes to them once;
/// the arrow keys go from one to the next.
class LaneChips : public QWidget {
    Q_OBJECT
public:
    explicit LaneChips(QWidget *parent = nullptr);

    void offer(const QList<Lane> &lanes);
    [[nodiscard]] QSet<Lane> only() const; ///< none: all are shown
    void clear();                          ///< all are shown
    [[nodiscard]] QPushButton *chip(Lane lane) const { return m_chips.value(static_cast<int>(lane)); }

Q_SIGNALS:
    void changed();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QPushButton *add(const QString &name);
    void settle();
    void step(QObject *from, int by);

    QPushButton *m_all;
    QList<QPushButton *> m_chips; ///< in the order of Lane
};

} // namespace ts
