#include "views/widgets/empty_place.h"

#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QLabel>
#include <QVBoxLayout>

namespace ts {

EmptyPlace::EmptyPlace(const QString &says, const QString &action, QWidget *parent) : QWidget(parent)
{
    auto *label = styledLabel("quiet", says, this);
    label->setObjectName(QStringLiteral("says"));
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignCenter);
    label->setMinimumWidth(260);
    label->setMaximumWidth(620); // a longer line is hard to read
    auto *middle = new QHBoxLayout;
    middle->addStretch(1);
    middle->addWidget(label, 40);
    middle->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setSpacing(gap::normal);
    column->addStretch(2);
    column->addLayout(middle);
    if (!action.isEmpty()) {
        auto *offer = primaryButton(action, this);
        connect(offer, &QPushButton::clicked, this, &EmptyPlace::actionWanted);
        column->addWidget(offer, 0, Qt::AlignHCenter);
        setFocusProxy(offer);
    }
    column->addStretch(3);
}

void EmptyPlace::setText(const QString &says)
{
    findChild<QLabel *>(QStringLiteral("says"))->setText(says);
}

} // namespace ts
