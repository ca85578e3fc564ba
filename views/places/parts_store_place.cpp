#include "views/places/parts_store_place.h"

#include "model/values/plain_text.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ts {

namespace {

namespace column {
enum { Name, Kind, Rating, Left, Minimum, UnitCost, Where, Supplier, Count };
}

} // namespace

PartsStorePlace::PartsStorePlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    m_filter = new QLineEdit(this);
    m_filter->setPlaceholderText(tr("Narrow: belt, 63 V, drawer C3…"));
    m_filter->setAccessibleName(tr("Narrow the parts store"));
    m_filter->setClearButtonEnabled(true);
    m_filter->setMaximumWidth(320);
    connect(m_filter, &QLineEdit::textChanged, this, &PartsStorePlace::narrow);
    m_list = new QTreeWidget(this);
    m_list->setAccessibleName(tr("Parts on the shelf"));
    m_list->setRootIsDecorated(false);
    m_list->setUniformRowHeights(true);
    m_list->setTabKeyNavigation(false);
    m_list->setSortingEnabled(true);
    m_list->sortByColumn(column::Name, Qt::AscendingOrder);
    m_list->setHeaderLabels({tr("Part"), tr("Kind"), tr("Rating"), tr("Left"), tr("Keep at least"), tr("Each"), tr("Where"), tr("Supplier")});
    for (const int each : {column::Left, column::Minimum, column::UnitCost})
        m_list->headerItem()->setTextAlignment(each, Qt::AlignRight);
    m_line = new QLineEdit(this);
    m_line->setAccessibleName(tr("Write a part down"));
    m_line->setPlaceholderText(tr("Write a part down: 10 × capacitor 100 µF 63 V at 0.12 in drawer C3"));
    connect(m_line, &QLineEdit::returnPressed, this, &PartsStorePlace::addTyped);
    auto *top = new QHBoxLayout;
    top->addWidget(styledLabel("heading", tr("Parts store"), this));
    top->addSpacing(gap::wide);
    top->addWidget(m_filter, 1);
    top->addStretch(1);
    auto *rows = new QVBoxLayout(this);
    rows->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    rows->setSpacing(gap::normal);
    rows->addLayout(top);
    rows->addWidget(m_list, 1);
    rows->addWidget(m_line);
}

void PartsStorePlace::focusFirst()
{
    m_list->setFocus();
}

QString PartsStorePlace::help() const
{
    return tr("What lies on the shelf, with what it cost and where it is. A part that falls below what you keep at least is marked. What a unit needs stands on its own page, Parts.");
}

void PartsStorePlace::refresh()
{
    const auto parts = work().desk().list<Part>();
    if (!parts)
        return work().refuse(parts.trouble());
    const auto batches = work().desk().list<Batch>();
    if (!batches)
        return work().refuse(batches.trouble());
    QHash<Id<Part>, QList<const Batch *>> ofPart;
    for (const Batch &batch : *batches)
        ofPart[batch.part] << &batch;
    m_list->setSortingEnabled(false);
    m_list->clear();
    for (const Part &part : *parts) {
        int left = 0;
        std::optional<Money> cost;
        QStringList places;
        QString supplier = part.supplier;
        for (const Batch *batch : ofPart.value(part.id)) {
            left += batch->left;
            if (batch->left > 0 && batch->unitCost)
                cost = batch->unitCost; // the newest that is left
            if (batch->left > 0 && !batch->place.isEmpty() && !places.contains(batch->place))
                places << batch->place;
            if (supplier.isEmpty())
                supplier = batch->supplier;
        }
        if (places.isEmpty() && !part.place.isEmpty())
            places << part.place;
        auto *item = new QTreeWidgetItem(m_list);
        item->setText(column::Name, part.name);
        item->setText(column::Kind, part.kind);
        item->setText(column::Rating, QString(part.rating).replace(QLatin1Char('\n'), QLatin1String(", ")));
        item->setData(column::Left, Qt::DisplayRole, left);
        if (part.minimumStock)
            item->setData(column::Minimum, Qt::DisplayRole, *part.minimumStock);
        item->setText(column::UnitCost, cost ? shown::money(*cost) : QString());
        item->setText(column::Where, places.join(QStringLiteral(", ")));
        item->setText(column::Supplier, supplier);
        for (const int each : {column::Left, column::Minimum, column::UnitCost})
            item->setTextAlignment(each, Qt::AlignRight);
        if (part.minimumStock && left < *part.minimumStock) {
            item->setForeground(column::Left, work().style().ink().outside);
            item->setToolTip(column::Left, tr("Below what you keep at least"));
        }
    }
    m_list->setSortingEnabled(true);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setSectionResizeMode(column::Rating, QHeaderView::Stretch);
    m_list->header()->setStretchLastSection(false);
    narrow();
}

void PartsStorePlace::narrow()
{
    const QString words = m_filter->text().trimmed();
    for (int row = 0; row < m_list->topLevelItemCount(); ++row) {
        QTreeWidgetItem *item = m_list->topLevelItem(row);
        bool found = words.isEmpty();
        for (int each = 0; each < column::Count && !found; ++each)
            found = item->text(each).contains(words, Qt::CaseInsensitive);
        item->setHidden(!found);
    }
}

// "10 × capacitor 100 µF 63 V at 0.12 in drawer C3": how many, what, each, where; only what is needed.
void PartsStorePlace::addTyped()
{
    const auto clean = plainText(m_line->text(), tr("The line"), shortText);
    if (!clean)
        return work().refuse(clean.trouble());
    if (clean->isEmpty())
        return;
    static const QRegularExpression form(QStringLiteral("^(?:(\\d{1,6})\\s*[x×*]\\s+)?(.+?)(?:\\s+at\\s+(\\S+))?(?:\\s+in\\s+(.+))?$"));
    const auto match = form.match(*clean);
    Part part = work().maker().fresh<Part>();
    part.name = match.captured(2);
    part.place = match.captured(4);
    Batch batch = work().maker().fresh<Batch>();
    batch.part = part.id;
    batch.quantity = match.captured(1).isEmpty() ? 1 : match.captured(1).toInt();
    batch.left = batch.quantity;
    batch.place = part.place;
    batch.boughtOn = work().today();
    if (!match.captured(3).isEmpty()) {
        const auto price = shown::parseMoney(match.captured(3), work().currency());
        if (!price)
            return work().refuse(price.trouble());
        batch.unitCost = *price;
    }
    if (work().record(Change(tr("Into the parts store: %1 × %2").arg(shown::count(batch.quantity), part.name)).add(part).add(batch)))
        m_line->clear();
}

} // namespace ts
