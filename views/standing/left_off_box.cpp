#include "views/standing/left_off_box.h"

#include "model/sums/loose.h"
#include "model/sums/standing.h"
#include "views/standing/edit_line.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QLabel>
#include <QLocale>
#include <QVBoxLayout>

namespace ts {

QString looseWords(const UnitFile &file, const Standing &standing)
{
    QStringList parts;
    const Loose loose = looseOf(file);
    if (!loose.nothing())
        parts << (loose.text().isEmpty() ? looseItems(file) : loose.text());
    if (!standing.otherLoose.isEmpty())
        parts << standing.otherLoose;
    if (!parts.isEmpty() && !standing.keptIn.isEmpty())
        parts << standing.keptIn.join(QStringLiteral(", "));
    return parts.join(QStringLiteral(", "));
}

Change leftOffChange(const UnitFile &file, Maker maker, const QString &sentence, QString LeftOff::*field, const QString &value)
{
    Change change(sentence);
    for (const LeftOff &left : file.all<LeftOff>()) {
        if (left.removed)
            continue;
        LeftOff now = left;
        now.*field = value;
        if (now == left)
            return change;
        now.at = maker.now(); // it was left off now
        return change.edit(left, now);
    }
    if (value.isEmpty())
        return change;
    LeftOff fresh = maker.fresh<LeftOff>();
    fresh.unit = file.unit.id;
    fresh.*field = value;
    return change.add(fresh);
}

LeftOffBox::LeftOffBox(Workplace &workplace, QWidget *parent) : QFrame(parent), m_work(workplace)
{
    setObjectName(QStringLiteral("leftOff"));
    m_title = styledLabel("strong", {}, this);
    m_title->setWordWrap(true);
    m_where = new EditLine(tr("Where you were"), tr("Where were you?"), this);
    m_next = new EditLine(tr("What comes next"), tr("What comes next?"), this);
    m_loose = new EditLine(tr("What else lies loose"), tr("Nothing lies loose"), this);
    m_noPower = new EditLine(tr("Why it must not be powered"), tr("May be powered, as far as is known"), this);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::normal, gap::small, gap::normal, gap::small);
    column->setSpacing(3);
    column->addWidget(m_title);
    for (EditLine *line : {m_where, m_next, m_loose, m_noPower})
        column->addWidget(line);
    connect(m_where, &EditLine::typed, this, [this](const QString &value) { change(tr("Left off: %1").arg(value), &LeftOff::whereAt, value); });
    connect(m_next, &EditLine::typed, this, [this](const QString &value) { change(value.isEmpty() ? tr("Nothing is next") : tr("Next: %1").arg(value), &LeftOff::next, value); });
    connect(m_loose, &EditLine::typed, this, [this](const QString &value) { change(tr("Loose: %1").arg(value), &LeftOff::loose, value); });
    connect(m_noPower, &EditLine::typed, this,
            [this](const QString &value) { change(value.isEmpty() ? tr("Safe to power") : tr("Do not power: %1").arg(value), &LeftOff::doNotPower, value); });
}

void LeftOffBox::change(const QString &sentence, QString LeftOff::*field, const QString &value)
{
    m_work.record(leftOffChange(m_work.file(), m_work.maker(), sentence, field, value));
}

void LeftOffBox::show(const Standing &standing)
{
    const QDateTime at = standing.leftOffAt.toLocalTime();
    const bool lately = at.isValid() && at.date().daysTo(m_work.today()) < 7;
    m_title->setText(!at.isValid() ? tr("Where you left off")
                     : lately      ? tr("Left off %1 %2").arg(QLocale().dayName(at.date().dayOfWeek()), shown::time(at))
                                   : tr("Left off %1").arg(shown::day(at.date(), m_work.today())));
    const QString loose = looseWords(m_work.file(), standing);
    m_where->show(standing.whereAt, standing.whereAt);
    m_next->show(standing.next.isEmpty() ? QString() : tr("Next: %1").arg(standing.next), standing.next);
    m_loose->show(loose.isEmpty() ? QString() : tr("Loose: %1").arg(loose), standing.otherLoose);
    m_noPower->show(standing.doNotPower.isEmpty() ? QString() : tr("Do not power: %1").arg(standing.doNotPower), standing.doNotPower, !standing.doNotPower.isEmpty());
    restyle(this, "warns", !standing.doNotPower.isEmpty());
}

void LeftOffBox::commitEdits()
{
    for (EditLine *line : {m_where, m_next, m_loose, m_noPower})
        line->commit();
}

} // namespace ts
