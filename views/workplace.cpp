#include "views/workplace.h"

#include "views/money/money_in_hand.h"
#include "views/photos/thumbnails.h"
#include "model/desk/money_recorded.h"
#include "model/sums/setting_rules.h"
#include "views/style/style.h"

#include <QTimer>

namespace ts {

Workplace::Workplace(Desk &desk, Style &style, QObject *parent) : QObject(parent), m_desk(desk), m_style(style), m_thumbnails(new Thumbnails(desk, this))
{
    connect(&m_desk, &Desk::recorded, this, [this](const QString &kind, const QUuid &, const QUuid &unit) { note(kind, unit); });
    connect(&m_desk, &Desk::everythingChanged, this, [this] { note({}, {}); });
    readBench();
    m_money = new MoneyInHand(*this);
}

// One change tells of each of its records: they are gathered, and everything is read again once.
void Workplace::note(const QString &kind, const QUuid &unit)
{
    const bool all = kind.isEmpty();
    m_benchStale |= all || unit.isNull();
    m_unitStale |= all || (hasUnit() && unit == m_file->unit.id.value);
    m_recorded = true;
    m_rackStale |= all || !unit.isNull() || kind == QLatin1String("setting");
    if (m_waiting)
        return;
    m_waiting = true;
    QTimer::singleShot(0, this, &Workplace::catchUp);
}

void Workplace::catchUp()
{
    m_waiting = false;
    const bool bench = std::exchange(m_benchStale, false);
    const bool unit = std::exchange(m_unitStale, false);
    const bool rack = std::exchange(m_rackStale, false);
    if (bench && readBench())
        Q_EMIT benchChanged();
    if ((unit || bench) && hasUnit()) {
        if (readUnit(m_file->unit.id))
            Q_EMIT unitChanged();
        else
            putDown();
    }
    if (rack)
        Q_EMIT rackChanged();
    if (bench || unit || rack)
        Q_EMIT journalChanged();
}

bool Workplace::readUnit(const Id<Unit> &unit)
{
    auto file = m_desk.unitFile(unit);
    if (!file) {
        refuse(file.trouble());
        return false;
    }
    letGo(std::exchange(m_file, std::make_shared<const UnitFile>(*std::move(file))));
    return true;
}

void Workplace::letGo(std::shared_ptr<const void> before)
{
    QTimer::singleShot(0, this, [before = std::move(before)] {});
}

bool Workplace::readBench()
{
    auto bench = m_desk.benchFile();
    if (!bench) {
        refuse(bench.trouble());
        return false;
    }
    letGo(std::exchange(m_bench, std::make_shared<const BenchFile>(*std::move(bench))));
    return true;
}

void Workplace::takeInHand(const Id<Unit> &unit)
{
    if (unit == m_file->unit.id)
        return;
    if (hasUnit())
        Q_EMIT unitLeaving();
    if (!readUnit(unit))
        return;
    Q_EMIT unitTaken();
    Q_EMIT unitChanged();
}

void Workplace::putDown()
{
    if (!hasUnit())
        return;
    Q_EMIT unitLeaving();
    letGo(std::exchange(m_file, std::make_shared<const UnitFile>()));
    Q_EMIT unitTaken();
    Q_EMIT unitChanged();
}

bool Workplace::record(const Change &change)
{
    if (change.isEmpty())
        return true;
    const auto applied = m_desk.apply(change);
    if (!applied) {
        refuse(applied.trouble());
        return false;
    }
    catchUp();
    Q_EMIT said(change.sentence(), true);
    return true;
}

bool Workplace::record(const Expected<Change> &change)
{
    if (change)
        return record(*change);
    refuse(change.trouble());
    return false;
}

Expected<Change> Workplace::settingChange(const QString &name, const QString &value) const
{
    const auto recorded = moneyIsRecorded(m_desk);
    if (!recorded)
        return recorded.trouble();
    Maker ids = maker();
    return ts::settingChange(*m_bench, name, value, *recorded, ids);
}

void Workplace::undo()
{
    const auto sentence = m_desk.undo();
    if (!sentence)
        return refuse(sentence.trouble());
    catchUp();
    say(tr("Undone: %1").arg(*sentence));
}

void Workplace::redo()
{
    const auto sentence = m_desk.redo();
    if (!sentence)
        return refuse(sentence.trouble());
    catchUp();
    say(tr("Done again: %1").arg(*sentence));
}

void Workplace::say(const QString &sentence) const
{
    Q_EMIT said(sentence, false);
}

void Workplace::refuse(const QString &sentence) const
{
    Q_EMIT refused(sentence);
}

void Workplace::goTo(const Id<Unit> &unit, PageKey page, const QString &kind, const QUuid &record)
{
    Q_EMIT placeWanted(PlaceKey::Units);
    takeInHand(unit);
    Q_EMIT pageWanted(page, kind, record);
}

void Workplace::showPhoto(const Id<Unit> &unit, const Id<Photo> &photo)
{
    takeInHand(unit);
    Q_EMIT placeWanted(PlaceKey::Photos);
    Q_EMIT photoWanted(photo.value);
}

void Workplace::goTo(PlaceKey place)
{
    Q_EMIT placeWanted(place);
}

void Workplace::startWork(const QString &what, Job job)
{
    Q_EMIT workWanted(what, job);
}

void Workplace::poll()
{
    if (const auto polled = m_desk.poll(); !polled)
        refuse(polled.trouble());
}

} // namespace ts
