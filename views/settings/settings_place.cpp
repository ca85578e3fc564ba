#include "views/settings/settings_place.h"

#include "model/records/settings.h"
#include "views/settings/channel_list.h"
#include "views/settings/computer_card.h"
#include "views/settings/meter_list.h"
#include "views/settings/setting_field.h"
#include "views/style/style.h"
#include "views/widgets/card.h"
#include "views/widgets/two_columns.h"

#include <QScrollArea>
#include <QVBoxLayout>

namespace ts {

SettingsPlace::SettingsPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent)
{
    auto *inside = new QWidget;
    auto *papers = new Card(tr("On papers"), inside);
    auto *bench = new Card(tr("The bench"), inside);
    auto *money = new Card(tr("Money"), inside);
    makePapers(papers);
    makeBench(bench);
    makeMoney(money);
    m_meters = new MeterList(workplace, inside);
    m_channels = new ChannelList(workplace, inside);

    auto *columns = new TwoColumns(760, 1, 1, inside);
    columns->left()->addWidget(papers);
    columns->left()->addWidget(bench);
    columns->left()->addStretch(1);
    columns->right()->addWidget(money);
    if (work().memory())
        columns->right()->addWidget(new ComputerCard(work().style(), *work().memory(), inside));
    columns->right()->addStretch(1);
    auto *rows = new QVBoxLayout(inside);
    rows->setContentsMargins(0, 0, gap::small, gap::normal);
    rows->setSpacing(gap::normal);
    rows->addWidget(columns);
    rows->addWidget(m_meters);
    rows->addWidget(m_channels);
    rows->addStretch(1);

    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(inside);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::tight, 0);
    column->setSpacing(gap::normal);
    column->addWidget(styledLabel("heading", tr("Settings"), this));
    column->addWidget(scroll, 1);
}

SettingField *SettingsPlace::field(Card *card, const QString &name, const QString &label, int form)
{
    auto *made = new SettingField(work(), name, label, static_cast<SettingField::Form>(form), card);
    card->body()->addWidget(made);
    m_fields << made;
    return made;
}

void SettingsPlace::makePapers(Card *card)
{
    const int line = static_cast<int>(SettingField::Form::Line);
    const int lines = static_cast<int>(SettingField::Form::Lines);
    field(card, settings::benchName, tr("Name of the bench"), line)->setHint(tr("Harbour Lane Audio Bench"));
    field(card, settings::benchAddress, tr("Address"), lines);
    field(card, settings::worker, tr("Who does the work"), line)->setHint(tr("R. M."));
    field(card, settings::terms, tr("Terms, printed at the foot of the restoration sheet"), lines);
    field(card, settings::paperSize, tr("Paper"), static_cast<int>(SettingField::Form::Choice))
        ->setChoices({{{}, tr("A4, unless chosen otherwise")}, {QStringLiteral("A4"), tr("A4")}, {QStringLiteral("Letter"), tr("Letter")}});
    field(card, settings::labelSize, tr("Tag labels, width by height in millimetres"), line)->setHint(QStringLiteral("89x36"));
    field(card, settings::bagLabelSize, tr("Labels for small bags"), line)->setHint(QStringLiteral("57x32"));
}

void SettingsPlace::makeBench(Card *card)
{
    const int line = static_cast<int>(SettingField::Form::Line);
    field(card, settings::mains, tr("The bench’s own mains"), line)->setHint(tr("230 V 50 Hz"));
    field(card, settings::country, tr("Country, three letters; goes into open repair data"), line)->setHint(QStringLiteral("GBR"));
    field(card, settings::benchHours, tr("Hours a week at the bench"), line)->setHint(QStringLiteral("8"));
}

void SettingsPlace::makeMoney(Card *card)
{
    const int line = static_cast<int>(SettingField::Form::Line);
    field(card, settings::currency, tr("Currency, three letters; stays once money is recorded"), line)->setHint(QStringLiteral("GBP"));
    field(card, settings::hourlyRate, tr("What an hour of yours is worth"), line)->setHint(QStringLiteral("12.00"));
    field(card, settings::overheadRate, tr("What the bench costs an hour"), line)->setHint(QStringLiteral("0.50"));
    m_channel = field(card, settings::channel, tr("Channel that break-even is worked out for"), static_cast<int>(SettingField::Form::Choice));
    field(card, settings::wantedGain, tr("What a unit should leave beside your hours"), line)->setHint(QStringLiteral("0"));
    field(card, settings::marginTax, tr("Tax on the margin, percent; leave empty if you sell outside such a scheme"), line);
    field(card, settings::returnsRate, tr("Sales that come back, percent"), line)->setHint(QStringLiteral("5"));
    field(card, settings::daysToSell, tr("Days from offered to sold"), line)->setHint(QStringLiteral("30"));
    auto *advice = styledLabel("faint", tr("Rates and rules are yours to set; this is no tax advice."), card);
    advice->setWordWrap(true);
    card->body()->addWidget(advice);
}

void SettingsPlace::focusFirst()
{
    if (!m_fields.isEmpty())
        m_fields.first()->findChild<QWidget *>(QString(), Qt::FindDirectChildrenOnly)->setFocus();
}

QString SettingsPlace::help() const
{
    return tr("Settings of the workbook go with it wherever it goes, and Undo takes them back. What stands under “This computer” stays here.");
}

void SettingsPlace::commitEdits()
{
    for (SettingField *each : m_fields)
        each->commit();
    m_meters->commitEdits();
    m_channels->commitEdits();
}

void SettingsPlace::refresh()
{
    QList<std::pair<QString, QString>> channels{{QString(), tr("None")}};
    for (const Channel &channel : work().bench().all<Channel>())
        channels.append({channel.name, channel.name});
    m_channel->setChoices(channels);
    for (SettingField *each : m_fields)
        each->refresh();
    m_meters->refresh();
    m_channels->refresh();
}

} // namespace ts
