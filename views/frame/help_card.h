#pragma once

#include "views/widgets/card.h"

#include <QPointer>

namespace ts {

/// What a page is for, over the window's lower right corner until a key or a click puts it away.
class HelpCard : public Card {
    Q_OBJECT
public:
    explicit HelpCard(QWidget *parent);
    void explain(const QString &page, const QString &text);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void putAway();
    void place();

    QLabel *m_text;
    QLabel *m_keys; ///< those that hold on every page
    QPointer<QWidget> m_before; ///< had the keyboard
};

} // namespace ts
