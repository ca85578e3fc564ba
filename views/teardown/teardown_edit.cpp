// What is typed and done on the teardown page, each as one change.
#include "model/faults/model_learning.h"
#include "model/jot/jot.h"
#include "model/keeping/outgoing_sheet.h"
#include "model/paper/putting_back.h"
#include "model/values/plain_text.h"
#include "views/teardown/pinned_photo.h"
#include "views/teardown/teardown_page.h"
#include "views/teardown/teardown_rows.h"
#include "views/unit/record_edit.h"
#include "views/widgets/ask.h"
#include "views/widgets/ask_line.h"
#include "views/widgets/grid_view.h"

#include <QDir>

namespace ts {

std::optional<QUuid> TeardownPage::commit(const GridRow &row, int column, const QString &typed)
{
    if (row.kind == GridRowKind::Adding)
        return add(typed);
    const TeardownItem *before = file().find(Id<TeardownItem>{row.key});
    if (!before)
        return std::nullopt;
    const auto at = static_cast<TeardownColumn>(column);
    if (at == TeardownColumn::Number) {
        const TeardownItem after = tickedItem(*before, m_way, typed == QLatin1String("yes"), work().now());
        const QString sentence = after.state == TeardownState::Back ? tr("Back: %1") : after.state == TeardownState::Off ? tr("Off: %1") : tr("Still on: %1");
        return recordEdit(work(), *before, after, sentence.arg(after.what));
    }
    const auto after = editedItem(*before, at, typed);
    if (!after) {
        work().refuse(after.trouble());
        return std::nullopt;
    }
    return recordEdit(work(), *before, *after, tr("Teardown %1, %2: %3").arg(after->what, teardownColumns(m_way).at(column).title, typed));
}

std::optional<QUuid> TeardownPage::commitDetail(const GridRow &row, const QString &typed)
{
    const TeardownItem *before = current();
    if (!before)
        return std::nullopt;
    const auto after = editedDetail(*before, static_cast<TeardownDetail>(row.name.toInt()), typed);
    if (!after) {
        work().refuse(after.trouble());
        return std::nullopt;
    }
    if (!recordEdit(work(), *before, *after, tr("Teardown %1, %2: %3").arg(after->what, row.cells.first().text, typed)))
        return std::nullopt;
    return QUuid();
}

// In the words of the log: what, its fasteners, springs and plugs, and where they are kept.
std::optional<QUuid> TeardownPage::add(const QString &typed)
{
    if (typed.isEmpty())
        return QUuid();
    Maker maker = work().maker();
    const auto jotted = jot(QStringLiteral("off ") + typed, file(), bench(), maker);
    if (!jotted) {
        work().refuse(jotted.trouble());
        return std::nullopt;
    }
    for (const ChangeItem &item : jotted->change.items())
        if (item.kind == &description<TeardownItem>() && item.after)
            return work().record(jotted->change) ? std::optional(Kind::id(*item.after)) : std::nullopt;
    TeardownItem item = freshOfUnit<TeardownItem>(work()); // words that the log takes as a note came off all the same when typed here
    item.what = typed;
    for (const TeardownItem &each : file().all<TeardownItem>())
        item.position = std::max(item.position, each.position);
    ++item.position;
    return recordNew(work(), item, tr("Off: %1").arg(typed));
}

void TeardownPage::remove(const QUuid &key)
{
    const TeardownItem *item = file().find(Id<TeardownItem>{key});
    if (!item)
        return;
    Change change(tr("Taken off the teardown list: %1").arg(item->what));
    for (const PhotoPin &pin : file().all<PhotoPin>())
        if (pin.item == item->id)
            change.remove(pin);
    work().record(change.remove(*item));
}

void TeardownPage::move(const QUuid &key, int by)
{
    QList<TeardownItem> items = inOrder(file());
    const auto found = std::find_if(items.begin(), items.end(), [&key](const TeardownItem &item) { return item.id.value == key; });
    const qsizetype from = found - items.begin();
    if (found == items.end() || from + by < 0 || from + by >= items.size())
        return;
    Change change(tr("Teardown order: %1").arg(found->what));
    items.move(from, from + by);
    for (qsizetype i = 0; i < items.size(); ++i) {
        TeardownItem after = items.at(i);
        after.position = static_cast<int>(i) + 1;
        change.edit(items.at(i), after);
    }
    work().record(change);
}

void TeardownPage::askLeftOut(const QUuid &key)
{
    const TeardownItem *item = file().find(Id<TeardownItem>{key});
    if (!item)
        return;
    m_ask->ask(tr("Why does it stay out: %1?").arg(item->what), item->leftOutBecause, tr("thread stripped, two others hold it"), [this, key](const QString &why) {
        const auto reason = plainText(why, tr("The reason"), shortText);
        const TeardownItem *before = file().find(Id<TeardownItem>{key});
        if (!before)
            return true;
        if (!reason || reason->isEmpty()) {
            work().refuse(reason ? tr("Say why it stays out: whoever opens the unit next wants to know.") : reason.trouble().sentence());
            return false;
        }
        TeardownItem after = *before;
        after.state = TeardownState::LeftOut;
        after.leftOutBecause = *reason;
        after.backAt = work().now();
        m_table->setFocus();
        return recordEdit(work(), *before, after, tr("Left out: %1, %2").arg(after.what, *reason)).has_value();
    });
}

void TeardownPage::askCopy()
{
    m_ask->ask(tr("Tag of the unit whose teardown is copied:"), {}, tr("0022"), [this](const QString &typed) {
        bool isTag = false;
        const int tag = typed.toInt(&isTag);
        const auto id = isTag ? work().desk().unitByTag(tag) : Expected<Id<Unit>>(Trouble{tr("\"%1\" is no tag").arg(typed.left(20)), {}, tr("type its four digits")});
        const auto from = id ? work().desk().unitFile(*id) : Expected<UnitFile>(id.trouble());
        if (!from) {
            work().refuse(from.trouble());
            return false;
        }
        Maker maker = work().maker();
        m_table->setFocus();
        return work().record(copyTeardown(file(), *from, maker));
    });
}

void TeardownPage::putPin(double x, double y)
{
    const TeardownItem *item = current();
    const Photo *photo = photoAtHand();
    if (!item || !photo)
        return work().refuse(tr("Choose what is pinned first: the row in the list."));
    PhotoPin pin = freshOfUnit<PhotoPin>(work());
    pin.photo = photo->id;
    pin.item = item->id;
    pin.x = x;
    pin.y = y;
    pin.label = QString::number(item->position);
    if (recordNew(work(), pin, tr("Pinned on a photo: %1").arg(item->what)))
        m_photo->choosePin(pin.id.value);
}

void TeardownPage::movePin(const QUuid &id, double x, double y)
{
    const PhotoPin *before = file().find(Id<PhotoPin>{id});
    if (!before)
        return;
    PhotoPin after = *before;
    after.x = x;
    after.y = y;
    const TeardownItem *item = file().find(before->item);
    if (!recordEdit(work(), *before, after, tr("Pin moved: %1").arg(item ? item->what : before->label)))
        refreshPins();
}

void TeardownPage::removePin(const QUuid &id)
{
    const PhotoPin *pin = file().find(Id<PhotoPin>{id});
    if (!pin)
        return;
    const TeardownItem *item = file().find(pin->item);
    work().record(Change(tr("Pin taken off: %1").arg(item ? item->what : pin->label)).remove(*pin));
}

void TeardownPage::print()
{
    auto facts = gatherPuttingBack(file(), bench(), work().now().toLocalTime());
    if (!facts)
        return work().refuse(facts.trouble());
    const QString name = tr("putting-back %1.pdf").arg(facts->tag);
    const QString target = ask::newFile(this, tr("Write the putting-back sheet"), QDir::home().filePath(name), tr("PDF (*.pdf);;Web page (*.html)"));
    if (target.isEmpty())
        return;
    const bool web = target.endsWith(QLatin1String(".html"), Qt::CaseInsensitive);
    const SheetWish wish{.format = web ? QStringLiteral("html") : QStringLiteral("pdf"), .size = benchPageSize(bench()), .file = target};
    const auto kept = handOver(work().desk(), file().unit,
                               {PaperKind::PuttingBack, QStringLiteral("Putting-back sheet"), facts->name, work().now().toLocalTime(),
                                [&](const Paper &numbered) {
                                    facts->number = numbered.number;
                                    facts->edition = numbered.edition;
                                    return web ? Expected<QByteArray>(puttingBackHtml(*facts)) : puttingBackPdf(*facts, wish.size);
                                }},
                               wish);
    if (!kept)
        return work().refuse(kept.trouble());
    work().say(tr("Wrote %1").arg(QDir::toNativeSeparators(target)));
}

} // namespace ts
