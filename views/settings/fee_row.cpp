#include "views/settings/fee_row.h"

#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

namespace ts {

namespace {

QString baseText(FeeBase base)
{
    switch (base) {
    case FeeBase::Item:
        return FeeRow::tr("the item");
    case FeeBase::ItemAndCarriage:
        return FeeRow::tr("item and carriage");
    case FeeBase::ItemCarriageAndTax:
        return FeeRow::tr("item, carriage and tax");
    }
    return {};
}

QString shownOrNothing(const std::optional<Money> &money)
{
    return money ? shown::amount(*money) : QString();
}

} // namespace

void FeeRow::addHeadings(QGridLayout *grid, int row, QWidget *parent)
{
    int column = 0;
    for (const QString &heading : {tr("Fee"), tr("Percent"), tr("Of"), tr("Fixed"), tr("Above"), tr("Up to"), tr("At most"), tr("Holds from"), tr("until")})
        grid->addWidget(styledLabel("faint", heading, parent), row, column++);
}

FeeRow::FeeRow(Workplace &workplace, const FeeRule &rule, QGridLayout *grid, int row) : QObject(grid->parentWidget()), m_work(workplace), m_rule(rule)
{
    QWidget *parent = grid->parentWidget();
    const auto field = [&](const QString &text, const QString &name, int column) {
        auto *line = new QLineEdit(text, parent);
        line->setAccessibleName(name);
        connect(line, &QLineEdit::editingFinished, this, &FeeRow::commit);
        grid->addWidget(line, row, column);
        return line;
    };
    m_name = field(rule.name, tr("What the fee is for"), 0);
    m_percent = field(rule.rate == 0 ? QString() : Rate(rule.rate).percent().replace(QLatin1Char('.'), QLocale().decimalPoint()), tr("Percent"), 1);
    m_base = new QComboBox(parent);
    m_base->setAccessibleName(tr("Percent of what"));
    for (const auto &[base, word] : Words<FeeBase>::list)
        m_base->addItem(baseText(base), static_cast<int>(base));
    m_base->setCurrentIndex(static_cast<int>(rule.base));
    connect(m_base, &QComboBox::activated, this, &FeeRow::commit);
    grid->addWidget(m_base, row, 2);
    m_fixed = field(shownOrNothing(rule.fixed), tr("Fixed part"), 3);
    m_from = field(shownOrNothing(rule.tierFrom), tr("For the part above"), 4);
    m_to = field(shownOrNothing(rule.tierTo), tr("For the part up to"), 5);
    m_cap = field(shownOrNothing(rule.cap), tr("At most"), 6);
    m_since = field(rule.validFrom.isValid() ? rule.validFrom.toString(Qt::ISODate) : QString(), tr("Holds from this day"), 7);
    m_until = field(rule.validTo.isValid() ? rule.validTo.toString(Qt::ISODate) : QString(), tr("Holds until this day"), 8);
    for (QLineEdit *day : {m_since, m_until})
        day->setPlaceholderText(tr("always"));
    m_base->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_name->setCursorPosition(0);
    auto *away = wordButton(tr("Remove"), parent);
    away->setAccessibleName(tr("Remove the fee %1").arg(rule.name));
    connect(away, &QPushButton::clicked, this, [this] { m_work.record(Change(tr("Fee removed: %1").arg(m_rule.name)).remove(m_rule)); });
    grid->addWidget(away, row, 9);
    grid->setColumnStretch(0, 6);
    grid->setColumnStretch(2, 5);
    for (const int column : {1, 3, 4, 5, 6})
        grid->setColumnStretch(column, 2);
    for (const int column : {7, 8})
        grid->setColumnStretch(column, 3);
}

Expected<FeeRule> FeeRow::typed() const
{
    FeeRule rule = m_rule;
    rule.name = m_name->text().simplified();
    if (rule.name.isEmpty())
        return Trouble{tr("The fee was not changed"), tr("it needs a name"), tr("say what it is for")};
    rule.base = static_cast<FeeBase>(m_base->currentData().toInt());
    const QString percent = m_percent->text().trimmed();
    rule.rate = 0;
    if (!percent.isEmpty()) {
        const auto rate = Rate::parse(percent);
        if (!rate)
            return rate.trouble();
        rule.rate = rate->millionths();
    }
    for (const auto &[field, member] : {std::pair{m_fixed, &FeeRule::fixed}, std::pair{m_from, &FeeRule::tierFrom}, std::pair{m_to, &FeeRule::tierTo}, std::pair{m_cap, &FeeRule::cap}}) {
        rule.*member = std::nullopt;
        if (field->text().trimmed().isEmpty())
            continue;
        const auto money = shown::parseMoney(field->text(), m_work.currency());
        if (!money)
            return money.trouble();
        rule.*member = *money;
    }
    for (const auto &[field, member] : {std::pair{m_since, &FeeRule::validFrom}, std::pair{m_until, &FeeRule::validTo}}) {
        const QString text = field->text().trimmed();
        const QDate day = QDate::fromString(text, Qt::ISODate);
        if (!text.isEmpty() && !day.isValid())
            return Trouble{tr("The fee was not changed"), tr("“%1” is no day").arg(text), tr("write it as 2026-11-28")};
        rule.*member = day;
    }
    return rule;
}

void FeeRow::commit()
{
    const auto rule = typed();
    if (!rule)
        return m_work.refuse(rule.trouble());
    if (m_work.record(Change(tr("Fee: %1").arg(rule->name)).edit(m_rule, *rule)))
        if (const FeeRule *now = m_work.bench().find(m_rule.id))
            m_rule = *now; // Enter and leaving the field both come here
}

} // namespace ts
