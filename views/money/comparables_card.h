#pragma once

#include "model/sums/resale.h"
#include "views/widgets/card.h"
#include "views/workplace.h"

class QLineEdit;
class QTreeWidget;

namespace ts {

class ResalePicture;

/// What it should fetch: the picture, the sales it rests on, and a line to write another one down; several at once are pasted or
/// taken from a file.
class ComparablesCard : public Card {
    Q_OBJECT
public:
    explicit ComparablesCard(Workplace &workplace, QWidget *parent = nullptr);
    void refresh(const Resale &resale, const std::optional<Money> &breakEven);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    QLayout *buttons();
    void addTyped();
    void paste();
    void fromFile();
    void addText(const QString &text);
    void removeCurrent();

    Workplace &m_work;
    ResalePicture *m_picture;
    QLabel *m_range;
    QLabel *m_says;
    QTreeWidget *m_list;
    QLineEdit *m_line;
};

/// The sale that a typed line speaks of: "118.00 27 Sep working, measured", "31 not working", "asking 95". The price comes first, a day
/// and the words "not working", "asking" and "carriage included" may follow, the rest is its condition. Refused without a price.
[[nodiscard]] Expected<Comparable> comparableTyped(const QString &line, const Unit &unit, const Currency &currency, const QDate &today, Maker &maker);

} // namespace ts
