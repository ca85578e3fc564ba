#pragma once

#include "views/photos/photo_list.h"
#include "views/widgets/card.h"
#include "views/workplace.h"

class QListView;
class QPushButton;

namespace ts {

/// Which photos go on the sheet, and in which order.
class SheetPhotos : public Card {
    Q_OBJECT
public:
    explicit SheetPhotos(Workplace &workplace, QWidget *parent = nullptr);
    void refresh();
    /// Those that go on without being marked; shown as what they are.
    void setByThemselves(const QList<Id<Photo>> &photos);

    void toggleCurrent();
    void moveCurrent(int by); ///< earlier or later among those of its phase

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] const Photo *current() const;
    void showState();

    Workplace &m_work;
    PhotoListModel m_model{this};
    QList<Id<Photo>> m_byThemselves;
    QListView *m_list;
    QLabel *m_says;
    QPushButton *m_toggle;
    QPushButton *m_earlier;
    QPushButton *m_later;
};

} // namespace ts
