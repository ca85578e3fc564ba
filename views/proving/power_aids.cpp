#include "views/proving/power_aids.h"

#include "model/records/settings.h"
#include "model/sums/mains_match.h"
#include "model/sums/supply/discharge.h"
#include "model/sums/supply/series_lamp.h"
#include "model/values/quantity.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/workplace.h"

#include <QBoxLayout>
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>

namespace ts {

namespace {

constexpr double drainedVolts = 5; // as the ladder asks for

QString tr(const char *text)
{
    return QCoreApplication::translate("ts", text);
}

/// "45 kΩ", "4,5 W" in the user's figures.
QString amount(double base, const QString &symbol)
{
    const auto [factor, prefix] = base >= 1e6 ? std::pair{1e6, QStringLiteral("M")} : base >= 1e3 ? std::pair{1e3, QStringLiteral("k")} : base >= 1 || base == 0 ? std::pair{1.0, QString()} : std::pair{1e-3, QStringLiteral("m")};
    return QLocale().toString(base / factor, 'g', 3) + QChar(0x00A0) + prefix + symbol;
}

std::optional<double> amountIn(const QString &text, const char *symbol)
{
    const auto measure = Measure::parse(QString::fromUtf8(symbol));
    const auto value = Quantity::parse(text.trimmed(), measure ? *measure : Measure());
    if (!value || !(value->base() > 0) || (!value->measure().symbol().isEmpty() && value->measure().symbol() != QString::fromUtf8(symbol)))
        return std::nullopt;
    return value->base();
}

} // namespace

QString drainingWords(const QString &typed)
{
    static const QRegularExpression both(QStringLiteral("^(.+?)\\s*(?:at|,|\\s)\\s*([0-9.,]+\\s*k?V)$"));
    const auto match = both.match(typed.trimmed());
    const auto farads = match.hasMatch() ? amountIn(match.captured(1), "F") : std::nullopt;
    const auto volts = match.hasMatch() ? amountIn(match.captured(2), "V") : std::nullopt;
    if (!farads || !volts)
        return tr("Write capacitance and voltage, such as 100 µF 450 V");
    const DischargeResistor resistor = dischargeResistorFor(*volts);
    const auto drained = discharge(*farads, resistor.ohms, *volts, drainedVolts);
    if (!drained)
        return tr("Below %1 already; measure all the same").arg(amount(drainedVolts, QStringLiteral("V")));
    return tr("%1 that stands %2 and takes %3 at first: wait %4 to fall to %5 (%6 in it), then measure, and again after minutes")
        .arg(amount(resistor.ohms, QStringLiteral("Ω")), amount(*volts, QStringLiteral("V")), amount(resistor.peakWatts, QStringLiteral("W")), amount(drained->time, QStringLiteral("s")),
             amount(drainedVolts, QStringLiteral("V")), amount(drained->energy, QStringLiteral("J")));
}

QString lampWords(const QString &typed, const QString &mains)
{
    const QList<MainsPlate::Range> volts = mainsPlate(mains).volts;
    if (volts.isEmpty())
        return tr("The bench’s own mains is not set");
    const auto idle = amountIn(typed, "W");
    const auto lamp = idle ? seriesLampFor(*idle, volts.first().low) : Expected<SeriesLamp>(Trouble());
    if (!lamp)
        return tr("Write what it draws when it idles, such as 30 W");
    QStringList usual;
    for (const double watts : lamp->usual)
        usual << QLocale().toString(watts);
    return tr("a filament lamp of %1 W; a dead short draws no more than %2 through it").arg(usual.join(tr(" or ")), amount(lamp->shortCurrent, QStringLiteral("A")));
}

PowerAids::PowerAids(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    auto *care = new Card(tr("Mains, and charge that stays"), this);
    auto *text = styledLabel("warning",
                             tr("Mains can kill, and large capacitors hold their charge with the plug out: drain through a resistor, measure, and measure again. One hand, nobody alone, a "
                                "residual-current device upstream. A series lamp limits the current and isolates nothing. No speakers, good tapes or discs until the last step is passed. Your "
                                "local codes and licensed practice come first."),
                             care);
    text->setWordWrap(true);
    care->body()->addWidget(text);
    care->body()->addStretch(1);

    auto *sums = new Card(tr("Draining, and the lamp in line"), this);
    const auto field = [&](const QString &name, const QString &hint, QLineEdit *&edit, QLabel *&answer) {
        auto *label = styledLabel("quiet", name, sums);
        edit = new QLineEdit(sums);
        edit->setPlaceholderText(hint);
        edit->setAccessibleName(name);
        edit->setMaximumWidth(m_work.style().space(36));
        label->setBuddy(edit);
        answer = styledLabel("quiet", {}, sums);
        answer->setWordWrap(true);
        auto *row = new QHBoxLayout;
        row->addWidget(label);
        row->addWidget(edit);
        row->addStretch(1);
        sums->body()->addLayout(row);
        sums->body()->addWidget(answer);
    };
    field(tr("Capacitor"), tr("100 µF 450 V"), m_capacitor, m_drain);
    field(tr("It idles at"), tr("30 W"), m_idle, m_lamp);
    sums->body()->addStretch(1);
    connect(m_capacitor, &QLineEdit::textChanged, this, &PowerAids::reckonDrain);
    connect(m_idle, &QLineEdit::textChanged, this, &PowerAids::reckonLamp);

    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::normal);
    row->addWidget(care, 3);
    row->addWidget(sums, 2);
}

void PowerAids::reckonDrain()
{
    m_drain->setText(m_capacitor->text().trimmed().isEmpty() ? QString() : drainingWords(m_capacitor->text()));
}

void PowerAids::reckonLamp()
{
    m_lamp->setText(m_idle->text().trimmed().isEmpty() ? QString() : lampWords(m_idle->text(), m_work.bench().setting(settings::mains)));
}

QString PowerAids::drainText() const
{
    return m_drain->text();
}

QString PowerAids::lampText() const
{
    return m_lamp->text();
}

} // namespace ts
