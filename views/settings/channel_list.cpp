#include "views/settings/channel_list.h"

#include "model/sums/fees.h"
#include "views/settings/fee_row.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QTimer>
#include <QVBoxLayout>

namespace ts {

ChannelList::ChannelList(Workplace &workplace, QWidget *parent) : Card(tr("Channels, the places where you sell"), parent), m_work(workplace)
{
    m_boxes = new QVBoxLayout;
    m_boxes->setSpacing(gap::normal);
    body()->addLayout(m_boxes);
    auto *add = button(tr("Add a channel"), this);
    connect(add, &QPushButton::clicked, this, &ChannelList::addChannel);
    body()->addWidget(add, 0, Qt::AlignLeft);
}

void ChannelList::refresh()
{
    if (m_channels == m_work.bench().all<Channel>() && m_rules == m_work.bench().all<FeeRule>())
        return;
    // The field that is being left is still at work when its change comes back.
    QTimer::singleShot(0, this, &ChannelList::rebuild);
}

void ChannelList::rebuild()
{
    m_channels = m_work.bench().all<Channel>();
    m_rules = m_work.bench().all<FeeRule>();
    while (QLayoutItem *item = m_boxes->takeAt(0)) {
        if (item->widget()) {
            item->widget()->hide();
            item->widget()->deleteLater();
        }
        delete item;
    }
    for (const Channel &channel : m_channels)
        m_boxes->addWidget(channelBox(channel));
}

QWidget *ChannelList::channelBox(const Channel &channel)
{
    auto *box = new QWidget(this);
    auto *name = new QLineEdit(channel.name, box);
    name->setAccessibleName(tr("Name of the channel"));
    connect(name, &QLineEdit::editingFinished, this, [this, name, id = channel.id] {
        const Channel *before = m_work.bench().find(id);
        if (!before)
            return;
        Channel after = *before;
        after.name = name->text().simplified();
        if (after.name.isEmpty())
            return m_work.refuse(tr("A channel needs a name; the old one stays."));
        m_work.record(Change(tr("Channel: %1").arg(after.name)).edit(*before, after));
    });
    auto *addFee = wordButton(tr("Add a fee"), box);
    connect(addFee, &QPushButton::clicked, this, [this, channel] { addRule(channel); });
    auto *away = wordButton(tr("Remove"), box);
    away->setAccessibleName(tr("Remove the channel %1").arg(channel.name));
    QList<FeeRule> rules;
    for (const FeeRule &rule : m_rules)
        if (rule.channel == channel.id)
            rules << rule;
    connect(away, &QPushButton::clicked, this, [this, channel, rules] {
        Change change(tr("Channel removed: %1").arg(channel.name));
        for (const FeeRule &rule : rules)
            change.remove(rule);
        m_work.record(change.remove(channel));
    });
    auto *top = new QHBoxLayout;
    top->addWidget(name, 1);
    top->addWidget(addFee);
    top->addWidget(away);
    auto *grid = new QGridLayout;
    grid->setHorizontalSpacing(gap::tight);
    grid->setVerticalSpacing(gap::tight);
    auto *column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::tight);
    column->addLayout(top);
    column->addLayout(grid);
    if (!rules.isEmpty())
        FeeRow::addHeadings(grid, 0, box);
    int row = 1;
    for (const FeeRule &rule : rules)
        new FeeRow(m_work, rule, grid, row++);
    const QString words = feeText(rulesOn(m_work.bench(), channel.id, m_work.today()));
    if (!words.isEmpty())
        column->addWidget(styledLabel("faint", tr("Today: %1").arg(words), box));
    return box;
}

void ChannelList::addChannel()
{
    Channel channel = m_work.maker().fresh<Channel>();
    channel.name = tr("A new channel");
    m_work.record(Change(tr("Channel: %1").arg(channel.name)).add(channel));
}

void ChannelList::addRule(const Channel &channel)
{
    FeeRule rule = m_work.maker().fresh<FeeRule>();
    rule.channel = channel.id;
    rule.name = tr("Selling fee");
    m_work.record(Change(tr("Fee of %1").arg(channel.name)).add(rule));
}

void ChannelList::commitEdits()
{
    for (FeeRow *row : findChildren<FeeRow *>())
        row->commit();
}

} // namespace ts
