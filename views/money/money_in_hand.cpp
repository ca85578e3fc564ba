#include "views/money/money_in_hand.h"

#include "views/workplace.h"

namespace ts {

namespace {

constexpr ForecastOptions whole{100'000, 1, 1};
constexpr ForecastOptions quick{20'000, 1, 1}; // so many tell what a forecast rests on

bool isAround(const QString &kind)
{
    return kind == QLatin1String("plan") || kind == QLatin1String("spend") || kind == QLatin1String("unit") || kind == QLatin1String("stage_move") || kind == QLatin1String("clock_span") ||
           kind == QLatin1String("step");
}

} // namespace

MoneyInHand::MoneyInHand(Workplace &workplace) : QObject(&workplace), m_work(workplace)
{
    connect(&m_work, &Workplace::unitTaken, this, &MoneyInHand::forget);
    connect(&m_work, &Workplace::unitChanged, this, [this] {
        m_fresh = false;
        m_asking = false;
    });
    connect(&m_work.desk(), &Desk::recorded, this, [this](const QString &kind, const QUuid &, const QUuid &unit) { changed(kind, unit); });
    connect(&m_work.desk(), &Desk::everythingChanged, this, [this] { m_around.reset(); });
}

// What is read of the rest of the workbook stays good while the unit in hand is worked on: that unit is not closed.
void MoneyInHand::changed(const QString &kind, const QUuid &unit)
{
    const bool another = unit != m_work.file().unit.id.value;
    if (kind == QLatin1String("comparable") || (another && isAround(kind)) || (!another && kind == QLatin1String("unit")))
        m_around.reset();
}

void MoneyInHand::forget()
{
    ++m_generation;
    m_beside.forget();
    m_answer.reset();
    m_around.reset();
    m_trial = false;
    m_fresh = false;
    m_asking = false;
}

void MoneyInHand::want()
{
    if (!m_work.hasUnit() || m_asking || (m_fresh && !m_trial))
        return;
    m_asking = true;
    ask(m_work.file(), false);
}

void MoneyInHand::wantWith(const Plan &plan)
{
    if (!m_work.hasUnit() || plan.unit != m_work.file().unit.id)
        return;
    UnitFile file = m_work.file();
    file.all<Plan>() = {plan};
    m_asking = false;
    ask(file, true);
}

void MoneyInHand::ask(const UnitFile &file, bool trial)
{
    const quint64 generation = ++m_generation;
    m_beside.forget(); // what was not begun need not be
    std::optional<MoneyAround> around = m_around;
    if (!around && !m_work.again()) {
        // This window cannot open the workbook a second time; it is read here.
        auto read = moneyAround(m_work.desk(), file.unit);
        if (!read)
            return take(generation, read.trouble(), trial);
        around = *std::move(read);
        m_around = around;
    }
    const auto work = [file, bench = m_work.bench(), now = m_work.now(), around, again = m_work.again()]() -> Expected<Answer> {
        std::optional<MoneyAround> known = around;
        if (!known) {
            // The desk is made, used and dropped here: a database session belongs to one thread.
            const auto desk = again();
            if (!desk)
                return desk.trouble();
            auto read = moneyAround(**desk, file.unit);
            if (!read)
                return read.trouble();
            known = *std::move(read);
        }
        Answer made{{file, bench, known->others, known->past, now}, {}, {}};
        made.money = unitMoney(made.question, whole);
        if (made.money.forecast) {
            const auto rate = bench.hourlyRate();
            made.rests = forecastRests(made.money.basis.terms, *made.money.forecast, rate ? static_cast<double>(rate->minor()) / 60 : 0, quick);
        }
        return made;
    };
    m_beside.run(work, [this, generation, trial](const Expected<Answer> &answer) { take(generation, answer, trial); });
}

void MoneyInHand::take(quint64 generation, const Expected<Answer> &answer, bool trial)
{
    if (generation != m_generation)
        return; // another question was put since
    m_asking = false;
    if (!answer)
        return m_work.refuse(answer.trouble());
    m_answer = *answer;
    m_around = MoneyAround{m_answer->question.others, m_answer->question.past};
    m_trial = trial;
    m_fresh = true;
    Q_EMIT answered();
}

} // namespace ts
