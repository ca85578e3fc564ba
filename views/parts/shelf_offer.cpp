#include "views/parts/shelf_offer.h"

#include "model/sums/parts/order_list.h"
#include "views/widgets/buttons.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"

#include <QBoxLayout>

#include <algorithm>

using namespace Qt::StringLiterals;

namespace ts {

ShelfOffer::ShelfOffer(Workplace &workplace, QWidget *parent) : Card(tr("What of the shelf would fit"), parent), m_work(workplace)
{
    m_table = new GridView(workplace.style(), tr("What of the shelf would fit"),
                           {{.title = tr("Part"), .width = 20, .stretch = 3}, {.title = tr("Left"), .width = 5, .right = true}, {.title = tr("Where"), .width = 10, .stretch = 1},
                            {.title = tr("Fits"), .width = 12, .stretch = 3}},
                           this);
    m_table->addRowAction(tr("Take it for this unit"), QKeySequence(Qt::Key_Return), [this](const QUuid &key) { take(key); });
    auto *takeButton = button(tr("Take it"), this);
    connect(takeButton, &QPushButton::clicked, this, [this] { take(m_table->currentKey()); });
    connect(m_table, &GridView::currentRowChanged, takeButton, [takeButton](const QUuid &key) { takeButton->setEnabled(!key.isNull()); });
    headRow()->addWidget(takeButton);
    body()->addWidget(m_table);
    const auto stale = [this](const QString &kind) { m_stale = m_stale || kind == QLatin1String(Part::table) || kind == QLatin1String(Batch::table); };
    connect(&workplace.desk(), &Desk::recorded, this, stale);
    connect(&workplace.desk(), &Desk::everythingChanged, this, [this] { m_stale = true; });
    hide();
}

bool ShelfOffer::read()
{
    if (!m_stale)
        return true;
    const auto parts = m_work.desk().list<Part>();
    const auto batches = parts ? m_work.desk().list<Batch>() : Expected<QList<Batch>>(parts.trouble());
    if (!batches)
        return false; // whoever opens the store is told why
    m_parts = *parts;
    m_batches = *batches;
    m_stale = false;
    return true;
}

void ShelfOffer::showFor(const Need *need)
{
    m_need.reset();
    if (need && need->state <= NeedState::Ordered && read())
        m_need = *need;
    QList<GridRow> rows;
    if (m_need) {
        for (const ShelfPart &one : shelfFor(*m_need, m_parts, m_batches)) {
            QStringList places;
            for (const ShelfPick &pick : picksFrom({*m_need, 0, {}, Stage::Bench, m_need->quantity}, one.part, m_batches))
                if (!pick.place.isEmpty() && !places.contains(pick.place))
                    places << pick.place;
            GridCell name = shownCell(one.part.name);
            name.strong = true;
            GridCell fits = shownCell(one.fit.word == FitWord::Fits ? tr("fits") : tr("look first"));
            fits.pill = one.fit.word == FitWord::Fits ? Tone::Within : Tone::TooClose;
            fits.second = one.fit.why.join(u"; "_s);
            rows << GridRow{.kind = GridRowKind::Record, .key = one.part.id.value, .name = {}, .cells = {name, shownCell(shown::count(one.left)), shownCell(places.join(u", "_s)), fits}};
        }
    }
    setVisible(!rows.isEmpty());
    m_table->setRows(rows);
    if (!rows.isEmpty()) {
        setRemark(tr("for %1").arg(m_need->text));
        m_table->setCurrent(rows.first().key);
    }
}

void ShelfOffer::take(const QUuid &key)
{
    const auto part = std::find_if(m_parts.begin(), m_parts.end(), [&](const Part &each) { return each.id.value == key; });
    if (!m_need || part == m_parts.end())
        return;
    const auto picks = picksFrom({*m_need, m_work.file().unit.tag, m_work.file().unit.name, m_work.file().unit.stage, m_need->quantity}, *part, m_batches);
    m_work.record(takeFromShelf(picks, m_work.maker()));
}

} // namespace ts
