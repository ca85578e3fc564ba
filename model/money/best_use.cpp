#include "model/money/best_use.h"

#include <algorithm>
#include <limits>

namespace ts {

namespace {

constexpr int nearDays = 7;

QString listed(const QStringList &texts)
{
    return texts.size() <= 2 ? texts.join(QStringLiteral(" and "))
                             : QStringLiteral("%1, %2 and %3 more").arg(texts.at(0), texts.at(1)).arg(texts.size() - 2);
}

class Placing {
public:
    Placing(const UseQuestion &asked, const QDate &today) : m_asked(asked), m_today(today) {}

    BenchUse made()
    {
        const Unit &unit = m_asked.file.unit;
        m_made.unit = unit.id;
        m_made.tag = unit.tag;
        m_made.name = unit.name;
        m_made.tiedUp = m_asked.spent;
        if (m_asked.boughtOn.isValid())
            m_made.days = static_cast<int>(std::max<qint64>(0, m_asked.boughtOn.daysTo(m_today)));
        lookAtParts();
        lookAtDates();
        weigh();
        if (m_asked.spent.minor() > 0)
            m_words << QStringLiteral("%1 tied up%2")
                           .arg(m_asked.spent.display(),
                                m_made.days > 0 ? QStringLiteral(" for %1 days").arg(m_made.days) : QString());
        for (QString &words : m_words)
            words[0] = words.at(0).toUpper();
        m_made.why = m_words.join(QStringLiteral(". ")) + QLatin1Char('.');
        return std::move(m_made);
    }

private:
    void pullBy(Pull pull)
    {
        if (!m_pulled)
            m_made.pull = pull;
        m_pulled = true;
    }

    void lookAtDates()
    {
        const auto look = [&](const QDate &day, const QString &what) {
            if (!day.isValid() || m_today.daysTo(day) > nearDays)
                return;
            if (!m_made.due.isValid() || day < m_made.due)
                m_made.due = day;
            const qint64 left = m_today.daysTo(day);
            m_words.prepend(left < 0    ? QStringLiteral("%1, %2 days ago").arg(what).arg(-left)
                            : left == 0 ? QStringLiteral("%1 today").arg(what)
                                        : QStringLiteral("%1 in %2 days").arg(what).arg(left));
            m_made.pull = Pull::DateNear;
            m_pulled = true;
        };
        if (const Plan *plan = planOf(m_asked.file); plan && plan->returnUntil >= m_today)
            look(plan->returnUntil, QStringLiteral("the seller's last day to take it back is"));
        // A held unit's day is one to look again; while its parts are still on the way, nothing can be done but ask.
        if (m_asked.file.unit.stage == Stage::Held && m_made.workable)
            look(m_asked.file.unit.heldUntil, QStringLiteral("held until"));
    }

    void lookAtParts()
    {
        QStringList here;
        QStringList missing;
        for (const Need &need : m_asked.file.all<Need>()) {
            if (need.removed)
                continue;
            if (need.state == NeedState::Here)
                here << need.text;
            else if (need.state != NeedState::Fitted)
                missing << need.text;
        }
        const bool held = m_asked.file.unit.stage == Stage::Held;
        if (!missing.isEmpty() && held) {
            m_made.workable = false;
            pullBy(Pull::Waiting);
            m_words << QStringLiteral("waits for %1").arg(listed(missing));
        } else if (!here.isEmpty()) {
            pullBy(Pull::PartsArrived);
            m_words << QStringLiteral("%1 %2 here")
                           .arg(listed(here), here.size() == 1 ? QStringLiteral("is") : QStringLiteral("are"));
        } else if (held && !m_asked.file.unit.heldBecause.isEmpty() && m_asked.file.unit.heldUntil > m_today) {
            m_made.workable = false;
            pullBy(Pull::Waiting);
            m_words << QStringLiteral("waits for %1").arg(m_asked.file.unit.heldBecause);
        }
    }

    void weigh()
    {
        const WayFigures *finish = m_asked.ways.of(WayOut::FinishAndSell);
        if (!m_asked.forecast || !finish || !finish->open) {
            m_words << (m_asked.file.unit.kind == UnitKind::ToSell
                            ? QStringLiteral("nothing says yet what it fetches")
                            : QStringLiteral("it is not to be sold, so an hour has no price"));
            return;
        }
        m_made.minutes = finish->minutes;
        std::optional<Money> other;
        for (const WayFigures &way : m_asked.ways.ways)
            if (way.open && way.way != WayOut::FinishAndSell && (!other || *other < way.mean))
                other = way.mean;
        m_made.gain = finish->mean - other.value_or(Money());
        if (finish->minutes > 0)
            m_made.perHour = m_made.gain->scaled(60, finish->minutes, Rounding::HalfUp);
        if (m_asked.ways.leads && *m_asked.ways.leads != WayOut::FinishAndSell) {
            if (m_made.pull != Pull::DateNear)
                m_made.pull = Pull::NotWorth;
            m_words << QStringLiteral("better not finished: to %1 is worth more").arg(wayText(*m_asked.ways.leads).toLower());
        } else if (m_made.perHour) {
            pullBy(m_asked.file.unit.stage == Stage::Proving || m_asked.file.unit.stage == Stage::Ready ? Pull::Finishing
                                                                                                        : Pull::WorthMost);
            m_words << QStringLiteral("%1 an hour for %2").arg(m_made.perHour->display(), durationText(finish->minutes));
        }
    }

    const UseQuestion &m_asked;
    QDate m_today;
    BenchUse m_made;
    QStringList m_words;
    bool m_pulled = false;
};

int groupOf(const BenchUse &use)
{
    return !use.workable ? 3 : use.pull == Pull::NotWorth ? 2 : use.pull == Pull::DateNear ? 0 : 1;
}

} // namespace

UseQuestion useQuestion(const MoneyQuestion &asked, const UnitMoney &money)
{
    UseQuestion made{asked.file, money.forecast, money.ways, money.sheet.spent.total, {}};
    for (const Spend &spend : asked.file.all<Spend>())
        if (!spend.removed && spend.kind == SpendKind::Purchase && spend.paidOn.isValid() &&
            (!made.boughtOn.isValid() || spend.paidOn < made.boughtOn))
            made.boughtOn = spend.paidOn;
    return made;
}

QList<BenchUse> bestUse(const QList<UseQuestion> &units, const QDate &today)
{
    QList<BenchUse> list;
    for (const UseQuestion &each : units) {
        const Stage stage = each.file.unit.stage;
        if (stage >= Stage::Shelved && stage <= Stage::Ready)
            list << Placing(each, today).made();
    }
    std::stable_sort(list.begin(), list.end(), [](const BenchUse &a, const BenchUse &b) {
        if (groupOf(a) != groupOf(b))
            return groupOf(a) < groupOf(b);
        if (groupOf(a) == 0 && a.due != b.due)
            return a.due < b.due;
        const auto worth = [](const BenchUse &use) {
            return use.perHour ? use.perHour->minor() : std::numeric_limits<qint64>::min();
        };
        return worth(a) > worth(b);
    });
    return list;
}

} // namespace ts
