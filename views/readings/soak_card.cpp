#include "views/readings/soak_card.h"

#include "views/readings/soak_chart.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/measured_text.h"
#include "views/widgets/pill.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QLabel>
#include <QVBoxLayout>

namespace ts {

namespace {

QString tr(const char *text, int n = -1)
{
    return QCoreApplication::translate("ts", text, nullptr, n);
}

QString verdictWord(SoakVerdict verdict)
{
    switch (verdict) {
    case SoakVerdict::Steady:
        return tr("steady");
    case SoakVerdict::Drifting:
        return tr("drifting");
    case SoakVerdict::Out:
        return tr("out");
    case SoakVerdict::TooFew:
        break;
    }
    return {};
}

Tone toneOf(SoakVerdict verdict)
{
    return verdict == SoakVerdict::Steady ? Tone::Within : verdict == SoakVerdict::Out ? Tone::Outside : Tone::TooClose;
}

} // namespace

QString soakFacts(const Soak &soak, const SoakCourse &course, const QDateTime &now)
{
    const QDateTime end = soak.endedAt.isValid() ? soak.endedAt : now;
    const QString length = shown::duration(soak.startedAt.secsTo(end) / 60);
    QStringList facts;
    facts << (soak.intervalMinutes ? tr("every %1 min for %2").arg(shown::count(*soak.intervalMinutes), length) : tr("ran %1").arg(length));
    if (!soak.endedAt.isValid())
        facts << tr("still running");
    if (!course.points.isEmpty())
        facts << tr("%n readings", static_cast<int>(course.points.size()));
    if (course.driftLow()) {
        const auto figure = [](double value) { return shown::number(shown::rounded(value, 2)); };
        const QString each = course.measure.isNone() ? tr("an hour") : course.measure.text() + tr("/h");
        facts << tr("drift %1 %2 (95 %: %3 to %4)").arg(figure(*course.drift()), each, figure(*course.driftLow()), figure(*course.driftHigh()));
    }
    if (!soak.wanted.isNone())
        facts << tr("wanted %1").arg(shown::limit(soak.wanted));
    if (!soak.conditions.isEmpty())
        facts << soak.conditions;
    if (!soak.interruptions.isEmpty())
        facts << tr("interrupted: %1").arg(soak.interruptions);
    return facts.join(QStringLiteral(" · "));
}

SoakCard::SoakCard(const Style &style, QWidget *parent) : Card({}, parent)
{
    m_which = new QComboBox(this);
    m_which->setAccessibleName(tr("Which soak"));
    m_which->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_which->setMinimumContentsLength(14);
    m_verdict = new Pill({}, Tone::Neutral, this);
    headRow()->addWidget(m_which);
    headRow()->addWidget(m_verdict);
    m_facts = styledLabel("quiet", {}, this);
    m_facts->setWordWrap(true);
    m_chart = new SoakChart(style, this);
    body()->addWidget(m_facts);
    body()->addWidget(m_chart, 1);
    body()->addStretch(0);
    connect(m_which, &QComboBox::currentIndexChanged, this, &SoakCard::refresh);
    hide();
}

void SoakCard::show(const UnitFile &file, const QDateTime &now)
{
    m_file = file;
    m_now = now;
    const QList<Soak> &soaks = file.all<Soak>();
    const QVariant before = m_which->currentData();
    {
        const QSignalBlocker quiet(m_which);
        m_which->clear();
        for (auto soak = soaks.rbegin(); soak != soaks.rend(); ++soak)
            m_which->addItem(soak->name, soak->id.value);
        m_which->setCurrentIndex(std::max(0, m_which->findData(before)));
    }
    m_which->setVisible(soaks.size() > 1);
    setHidden(soaks.isEmpty());
    refresh();
}

void SoakCard::choose(const QUuid &soak)
{
    if (const int at = m_which->findData(soak); at >= 0)
        m_which->setCurrentIndex(at);
}

void SoakCard::refresh()
{
    const Soak *soak = m_file.find(Id<Soak>{m_which->currentData().toUuid()});
    if (!soak)
        return;
    const SoakCourse course = soakCourse(m_file, *soak);
    setHeading(m_which->count() > 1 ? tr("Soak") : tr("Soak: %1").arg(soak->name));
    m_facts->setText(soakFacts(*soak, course, m_now));
    m_verdict->show(verdictWord(course.verdict), toneOf(course.verdict));
    m_chart->setHidden(course.points.size() < 2);
    m_chart->setAccessibleName(tr("Chart of the soak %1: %2").arg(soak->name, m_facts->text()));
    if (course.points.size() >= 2)
        m_chart->show(course);
}

QString SoakCard::facts() const
{
    return m_facts->text();
}

QString SoakCard::verdict() const
{
    return m_verdict->text();
}

} // namespace ts
