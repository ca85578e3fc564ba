#pragma once

#include "views/workplace.h"

#include <QTimer>
#include <QWidget>

class QHBoxLayout;

namespace ts {

/// Units of the workbook that are called like the one being taken in, each with the offer to copy it.
class LikeUnits : public QWidget {
    Q_OBJECT
public:
    explicit LikeUnits(Workplace &workplace, QWidget *parent = nullptr);
    /// Looks for units like this name once typing pauses.
    void lookFor(const QString &name);
    void clear();
    /// Copies the first that is offered; false where none is.
    bool chooseFirst();

Q_SIGNALS:
    void chosen(const ts::Id<ts::Unit> &unit);

private:
    void look();
    void offer(const Found &unit);

    Workplace &m_work;
    QTimer m_pause;
    QString m_name;
    QHBoxLayout *m_row;
};

} // namespace ts
