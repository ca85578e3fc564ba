#pragma once

#include "model/records/unit.h"
#include "views/workplace.h"

class QLabel;
class QPushButton;

namespace ts {

/// A unit was taken in: its tag, large enough to be read from the shelf, to be tied to it now.
class TagGiven : public QWidget {
    Q_OBJECT
public:
    explicit TagGiven(Workplace &workplace, QWidget *parent = nullptr);
    void showFor(const Unit &unit);

Q_SIGNALS:
    void openWanted();
    void anotherWanted();

private:
    void offerNotes();
    void bring();

    Workplace &m_work;
    Id<Unit> m_unit;
    QLabel *m_known;
    QPushButton *m_bring;
    QLabel *m_says;
    QLabel *m_tag;
    QLabel *m_name;
};

} // namespace ts
