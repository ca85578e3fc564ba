#include "views/money/forecast_card.h"

#include "views/money/figures_list.h"
#include "views/money/money_in_hand.h"
#include "views/money/money_words.h"
#include "views/style/style.h"
#include "views/widgets/locale_text.h"

#include <QLabel>
#include <QVBoxLayout>

#include <cmath>

namespace ts {

namespace {

constexpr int restsShown = 2;
constexpr int causesShown = 6;

} // namespace

ForecastCard::ForecastCard(Workplace &workplace, QWidget *parent) : Card(tr("Forecast"), parent), m_work(workplace)
{
    m_none = wrappedLabel("quiet", {}, this);
    m_all = new QWidget(this);
    m_figures = new FiguresList(tr("Forecast"), {tr("In all"), tr("1 in 10"), tr("Middle"), tr("9 in 10")}, false, m_all);
    m_chances = wrappedLabel("strong", {}, m_all);
    m_causes = new FiguresList(tr("Causes still open"), {tr("Cause still open"), tr("Chance"), tr("From here"), tr("Hours")}, false, m_all);
    m_rests = wrappedLabel("plain", {}, m_all);
    m_record = wrappedLabel("quiet", {}, m_all);
    auto *column = new QVBoxLayout(m_all);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addWidget(m_figures);
    column->addWidget(m_chances);
    column->addWidget(m_causes);
    column->addWidget(m_rests);
    column->addWidget(m_record);
    body()->addWidget(m_none);
    body()->addWidget(m_all);
}

void ForecastCard::refresh()
{
    const UnitMoney *money = m_work.money().answer();
    const bool there = money && money->forecast;
    m_all->setVisible(there);
    m_none->setVisible(!there);
    setRemark({});
    if (!there) {
        m_none->setText(!money ? tr("Being worked out…")
                               : tr("Nothing says yet what it fetches. Write sales down at the right, or type a planned resale in the table: then this says what could come of it."));
        return;
    }
    setRemark(m_work.money().isTrial() ? tr("as you type, not recorded") : tr("%1 draws").arg(shown::count(money->forecast->draws)));
    showFigures();
    showCauses();
    QStringList rests;
    if (!m_work.money().rests().isEmpty())
        rests << tr("With your hours to come paid it comes to %1 on average.").arg(shown::drawn(m_work.money().rests().first().worth, money->sheet.currency));
    for (const ForecastRest &rest : m_work.money().rests().mid(0, restsShown))
        rests << shown::rest(rest, money->sheet.currency);
    m_rests->setText(rests.join(QLatin1Char(' ')));
    m_rests->setHidden(rests.isEmpty());
    QStringList record;
    for (const OwnFactor *factor : {&money->record.hours, &money->record.price})
        if (factor->count > 0)
            record << factor->why;
    m_record->setText(record.join(QLatin1Char(' ')));
    m_record->setHidden(record.isEmpty());
    setToolTip(money->basis.sentences.join(QLatin1Char(' ')).toHtmlEscaped());
}

void ForecastCard::showFigures()
{
    const UnitMoney &money = *m_work.money().answer();
    const Forecast &forecast = *money.forecast;
    const auto row = [&](const char *key, const QString &what, const Spread &spread, auto text) {
        return m_figures->addRow(QString::fromLatin1(key), {what, text(spread.low), text(spread.middle), text(spread.high)});
    };
    const auto sum = [&](double minor) { return shown::drawn(minor, money.sheet.currency); };
    const auto hours = [](double minutes) { return shown::duration(std::llround(minutes)); };
    const auto days = [](double value) { return shown::count(std::llround(value)); };
    m_figures->begin();
    auto *profit = row("profit", tr("Profit before your hours"), forecast.profit, sum);
    for (int column = 0; column < 4; ++column)
        profit->setFont(column, m_work.style().text(1, column == 0 || column == 2 ? QFont::DemiBold : QFont::Normal));
    for (int column = 1; column < 4; ++column)
        if (const double value = column == 1 ? forecast.profit.low : column == 2 ? forecast.profit.middle : forecast.profit.high; value < 0)
            profit->setForeground(column, m_work.style().ink().outside);
    row("per_hour", tr("Earned per hour"), forecast.perHour, sum);
    row("minutes", tr("Hours to come"), forecast.minutes, hours);
    row("parts", tr("Parts to come"), forecast.parts, sum);
    row("days", tr("Days that money is tied up"), forecast.days, days);
    m_figures->end();
    m_chances->setText(tr("Chance of a loss: %1. Chance that it is put right: %2.").arg(shown::percent(forecast.chanceOfLoss), shown::percent(forecast.chanceRepaired)));
}

void ForecastCard::showCauses()
{
    const UnitMoney &money = *m_work.money().answer();
    m_causes->begin();
    QList<CauseOutcome> causes = money.forecast->causes;
    std::stable_sort(causes.begin(), causes.end(), [](const CauseOutcome &a, const CauseOutcome &b) { return a.likelihood > b.likelihood; });
    for (const CauseOutcome &cause : causes.mid(0, causesShown)) {
        auto *row = m_causes->addRow(cause.symptom + QLatin1Char('\n') + cause.text,
                                     {cause.text, shown::percent(cause.likelihood), shown::drawn(cause.meanNet, money.sheet.currency), shown::duration(std::llround(cause.meanMinutes))});
        row->setToolTip(0, tr("%1 (%2)").arg(cause.text, cause.symptom).toHtmlEscaped());
    }
    m_causes->end();
    m_causes->setHidden(causes.isEmpty());
}

} // namespace ts
