#include "views/frame/strip.h"

#include "views/clock/clock_box.h"
#include "views/find/find_field.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QHBoxLayout>

namespace ts {

QString Strip::placeName(PlaceKey place)
{
    switch (place) {
    case PlaceKey::Units:
        return tr("Units");
    case PlaceKey::ModelNotes:
        return tr("Model notes");
    case PlaceKey::PartsStore:
        return tr("Parts store");
    case PlaceKey::Ledger:
        return tr("Ledger");
    case PlaceKey::Overview:
        return tr("Overview");
    case PlaceKey::Photos:
        return tr("Photos");
    case PlaceKey::History:
        return tr("History");
    case PlaceKey::Exchange:
        return tr("Lists in and out");
    case PlaceKey::BenchToday:
        return tr("Bench today");
    case PlaceKey::Settings:
        return tr("Settings");
    case PlaceKey::Sums:
        return tr("Bench sums");
    }
    return {};
}

Strip::Strip(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("strip"));
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(gap::normal + 1, gap::small, gap::normal + 1, gap::small);
    row->setSpacing(gap::tight);
    auto *takeIn = primaryButton(tr("Take in a unit"), this);
    connect(takeIn, &QPushButton::clicked, this, &Strip::takeInWanted);
    row->addWidget(takeIn);
    row->addSpacing(gap::normal);
    m_places = new QButtonGroup(this);
    for (const auto place : {PlaceKey::Units, PlaceKey::ModelNotes, PlaceKey::PartsStore, PlaceKey::Ledger, PlaceKey::Overview}) {
        auto *button = new QPushButton(placeName(place), this);
        button->setProperty("role", QStringLiteral("place"));
        button->setAccessibleName(placeName(place));
        button->setCheckable(true);
        m_places->addButton(button, static_cast<int>(place));
        row->addWidget(button);
    }
    connect(m_places, &QButtonGroup::idClicked, this, [this](int place) { m_work.goTo(static_cast<PlaceKey>(place)); });
    row->addSpacing(gap::normal);
    auto *find = new FindField(workplace, this);
    find->setObjectName(QStringLiteral("find"));
    row->addWidget(find, 1);
    row->addStretch(0);
    row->addSpacing(gap::normal);
    row->addWidget(new ClockBox(workplace, this));
    showPlace(PlaceKey::Units);
}

void Strip::showPlace(PlaceKey place)
{
    // The places of the menu alone have no button here: then none is marked.
    QAbstractButton *button = m_places->button(static_cast<int>(place));
    m_places->setExclusive(button != nullptr);
    if (button)
        button->setChecked(true);
    else if (QAbstractButton *marked = m_places->checkedButton())
        marked->setChecked(false);
}

void Strip::focusFind()
{
    findChild<FindField *>()->begin();
}

} // namespace ts
