#include "views/unit/stage_asks.h"

#include "model/records/sale.h"
#include "model/sums/fees.h"
#include "model/sums/stage_rules.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/labelled.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/stage_names.h"
#include "views/widgets/typed_money.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>

namespace ts {

HeldAsk::HeldAsk(Workplace &workplace, QWidget *parent) : StageAsk(workplace, parent)
{
    m_because = new QLineEdit;
    m_because->setPlaceholderText(tr("belt 78 × 4 × 0.6"));
    m_until = new QLineEdit;
    m_until->setPlaceholderText(tr("28 Nov, Friday"));
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::normal);
    row->addWidget(labelled(tr("Waiting for"), m_because, this), 3);
    row->addWidget(labelled(tr("Until (if you know)"), m_until, this), 1);
}

void HeldAsk::fill()
{
    const Unit &unit = work().file().unit;
    m_because->setText(unit.heldBecause);
    // What is written can be read back: the locale's short form has the day, the month and the year.
    m_until->setText(unit.heldUntil.isValid() ? QLocale().toString(unit.heldUntil, QLocale::ShortFormat) : QString());
}

void HeldAsk::focusFirst()
{
    m_because->setFocus();
    m_because->selectAll();
}

QWidgetList HeldAsk::fields() const
{
    return {m_because, m_until};
}

namespace {

Expected<std::optional<Money>> typedMoney(const QLineEdit *field, const Currency &currency)
{
    return typed::moneyOrNone(field->accessibleName(), field->text(), currency);
}

Expected<QDate> typedDay(const QLineEdit *field, const QDate &today)
{
    return typed::inField(field->accessibleName(), typed::dayOrNone(field->text(), today));
}

QString shownMoney(const std::optional<Money> &money)
{
    return money ? shown::money(*money) : QString();
}

} // namespace

Expected<Change> HeldAsk::change(const QString &) const
{
    const auto until = typedDay(m_until, work().today());
    if (!until)
        return until.trouble();
    Maker maker = work().maker();
    return ruledStageChange(work().file(), {.stage = Stage::Held, .because = m_because->text(), .until = *until}, maker);
}

ChannelField::ChannelField(const QString &name, QWidget *parent) : m_box(new QComboBox(parent))
{
    m_box->setEditable(true);
    m_box->setInsertPolicy(QComboBox::NoInsert);
    m_box->setAccessibleName(name);
    m_box->lineEdit()->setAccessibleName(name);
    m_box->setMinimumContentsLength(14);
}

void ChannelField::fill(const BenchFile &bench, const Id<Channel> &channel)
{
    m_box->clear();
    for (const Channel &each : bench.all<Channel>())
        m_box->addItem(each.name, each.id.value);
    const int at = m_box->findData(channel.value);
    m_box->setCurrentIndex(channel.isNull() ? -1 : at);
    if (m_box->currentIndex() < 0)
        m_box->setEditText({});
}

Id<Channel> ChannelField::known(const BenchFile &bench) const
{
    const QString name = m_box->currentText().simplified();
    for (const Channel &each : bench.all<Channel>())
        if (!name.isEmpty() && each.name.compare(name, Qt::CaseInsensitive) == 0)
            return each.id;
    return {};
}

Id<Channel> ChannelField::channel(Workplace &work, Change &change) const
{
    const Id<Channel> there = known(work.bench());
    const QString name = m_box->currentText().simplified();
    if (!there.isNull() || name.isEmpty())
        return there;
    Channel fresh = work.maker().fresh<Channel>();
    fresh.name = name;
    change.add(fresh);
    return fresh.id;
}

OfferedAsk::OfferedAsk(Workplace &workplace, QWidget *parent) : StageAsk(workplace, parent), m_channel(tr("Where"), this)
{
    m_asked = new QLineEdit;
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(gap::normal);
    row->addWidget(labelled(tr("Where"), m_channel.box(), this), 2);
    row->addWidget(labelled(tr("Price asked"), m_asked, this), 1);
    row->addStretch(1);
}

void OfferedAsk::fill()
{
    const Unit &unit = work().file().unit;
    Id<Channel> channel = unit.channel;
    for (const Plan &plan : work().file().all<Plan>())
        if (channel.isNull())
            channel = plan.channel; // where it was meant to be sold
    m_channel.fill(work().bench(), channel);
    m_asked->setText(shownMoney(unit.asked));
    m_asked->setPlaceholderText(tr("for example %1").arg(shown::amount(Money(6800, work().currency()))));
}

void OfferedAsk::focusFirst()
{
    m_channel.box()->setFocus();
    m_channel.box()->lineEdit()->selectAll();
}

QWidgetList OfferedAsk::fields() const
{
    return {m_channel.box(), m_asked};
}

Expected<Change> OfferedAsk::change(const QString &overruling) const
{
    const auto asked = typedMoney(m_asked, work().currency());
    if (!asked)
        return asked.trouble();
    Change fresh;
    const Id<Channel> channel = m_channel.channel(work(), fresh);
    Maker maker = work().maker();
    auto moved = ruledStageChange(work().file(), {.stage = Stage::Offered, .because = overruling, .channel = channel, .asked = *asked}, maker);
    if (!moved)
        return moved;
    fresh.setSentence(moved->sentence());
    return fresh.join(*moved); // the channel stands before what refers to it
}

ClosedAsk::ClosedAsk(Workplace &workplace, QWidget *parent) : StageAsk(workplace, parent), m_channel(tr("Sold on"), this)
{
    m_outcome = new QComboBox;
    for (const auto &[outcome, word] : Words<Outcome>::list) {
        const QString name = shown::outcome(outcome);
        m_outcome->addItem(name.at(0).toUpper() + name.mid(1), static_cast<int>(outcome));
    }
    m_price = new QLineEdit;
    m_fees = new QLineEdit;
    m_carriage = new QLineEdit;
    m_soldOn = new QLineEdit;
    m_rules = styledLabel("faint", {}, this);
    m_rules->setWordWrap(true);
    m_sale = new QWidget(this);
    auto *sale = new QHBoxLayout(m_sale);
    sale->setContentsMargins(0, 0, 0, 0);
    sale->setSpacing(gap::normal);
    sale->addWidget(labelled(tr("Price got"), m_price, m_sale), 2);
    sale->addWidget(labelled(tr("Sold on"), m_channel.box(), m_sale), 3);
    sale->addWidget(labelled(tr("Selling fees"), m_fees, m_sale), 2);
    sale->addWidget(labelled(tr("Carriage you paid"), m_carriage, m_sale), 2);
    sale->addWidget(labelled(tr("Day"), m_soldOn, m_sale), 2);
    auto *row = new QHBoxLayout;
    row->setSpacing(gap::normal);
    row->addWidget(labelled(tr("How it ended"), m_outcome, this), 0);
    row->addWidget(m_sale, 1);
    row->addStretch(0);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::tight);
    column->addLayout(row);
    column->addWidget(m_rules);
    connect(m_outcome, &QComboBox::currentIndexChanged, this, &ClosedAsk::showSale);
    connect(m_outcome, &QComboBox::currentIndexChanged, this, &StageAsk::outcomeChosen);
    connect(m_price, &QLineEdit::textEdited, this, &ClosedAsk::suggestFees);
    connect(m_channel.box(), &QComboBox::currentTextChanged, this, &ClosedAsk::suggestFees);
    connect(m_fees, &QLineEdit::textEdited, this, [this] { m_feesTyped = true; });
}

void ClosedAsk::fill()
{
    const UnitFile &file = work().file();
    const Sale sale = saleOf(file);
    const Outcome usual = file.unit.kind == UnitKind::Owners ? Outcome::ReturnedToOwner : file.unit.kind == UnitKind::ToKeep ? Outcome::Kept : Outcome::Sold;
    m_outcome->setCurrentIndex(m_outcome->findData(static_cast<int>(file.unit.outcome.value_or(usual))));
    m_feesTyped = sale.fees.has_value();
    m_price->setText(shownMoney(sale.price ? sale.price : file.unit.asked));
    m_channel.fill(work().bench(), sale.channel.isNull() ? file.unit.channel : sale.channel);
    m_fees->setText(shownMoney(sale.fees));
    m_carriage->setText(shownMoney(sale.carriage));
    m_soldOn->setText(QLocale().toString(sale.soldOn.isValid() ? sale.soldOn : work().today(), QLocale::ShortFormat));
    suggestFees();
    showSale();
}

void ClosedAsk::showSale()
{
    const bool sold = m_outcome->currentData().toInt() == static_cast<int>(Outcome::Sold);
    m_sale->setVisible(sold);
    m_rules->setVisible(sold && !m_rules->text().isEmpty());
}

// The channel's own rules give the fees until somebody types what they really were.
void ClosedAsk::suggestFees()
{
    const Id<Channel> channel = m_channel.known(work().bench());
    const auto price = typedMoney(m_price, work().currency());
    const auto day = typedDay(m_soldOn, work().today());
    const auto rules = rulesOn(work().bench(), channel, day && day->isValid() ? *day : work().today());
    m_rules->setText(channel.isNull() || rules.isEmpty() ? QString() : tr("By its rules %1 takes %2.").arg(m_channel.box()->currentText(), feeText(rules)));
    if (!m_feesTyped) {
        const Money none(0, work().currency());
        const auto fees = price && *price && !rules.isEmpty() ? feesOf(rules, {**price, none, none}) : Expected<Fees>(Fees());
        m_fees->setText(fees && !fees->lines.isEmpty() ? shown::money(fees->total) : QString());
    }
    showSale();
}

void ClosedAsk::focusFirst()
{
    m_outcome->setFocus();
}

QWidgetList ClosedAsk::fields() const
{
    return {m_outcome, m_price, m_channel.box(), m_fees, m_carriage, m_soldOn};
}

std::optional<Outcome> ClosedAsk::outcome() const
{
    return static_cast<Outcome>(m_outcome->currentData().toInt());
}

Expected<Change> ClosedAsk::change(const QString &overruling) const
{
    Maker maker = work().maker();
    auto moved = ruledStageChange(work().file(), {.stage = Stage::Closed, .because = overruling, .outcome = outcome()}, maker);
    if (!moved || outcome() != Outcome::Sold)
        return moved;
    const auto price = typedMoney(m_price, work().currency());
    const auto fees = typedMoney(m_fees, work().currency());
    const auto carriage = typedMoney(m_carriage, work().currency());
    const auto day = typedDay(m_soldOn, work().today());
    for (const auto *sum : {&price, &fees, &carriage})
        if (!*sum)
            return sum->trouble();
    if (!day)
        return day.trouble();
    Change whole;
    const Id<Channel> channel = m_channel.channel(work(), whole);
    const auto sale = saleChange(work().file(), {*price, *fees, *carriage, channel, *day}, maker);
    if (!sale)
        return sale.trouble();
    whole.setSentence(*price && !moved->isEmpty() ? moved->sentence() + tr(" for %1").arg((*price)->display()) : moved->isEmpty() ? sale->sentence() : moved->sentence());
    if (moved->isEmpty() && sale->isEmpty())
        return *moved;
    return whole.join(*moved).join(*sale);
}

} // namespace ts
