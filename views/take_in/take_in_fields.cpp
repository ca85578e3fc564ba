#include "views/take_in/take_in_fields.h"

#include "model/sums/category_guess.h"
#include "model/sums/coming_in.h"
#include "model/values/plain_text.h"
#include "views/money/plan_edit.h"
#include "views/style/style.h"
#include "views/take_in/like_units.h"
#include "views/widgets/card.h"
#include "views/widgets/names.h"
#include "views/widgets/typed_money.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QRadioButton>

namespace ts {

namespace {

constexpr int columns = 6;

} // namespace

TakeInFields::TakeInFields(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_name = line(tr("Name"), tr("as you call it: Pellworth KD-7 cassette deck"));
    m_like = new LikeUnits(workplace, this);
    m_category = new QComboBox(this);
    m_category->addItem(tr("Choose…"));
    for (const auto &[category, word] : Words<Category>::list)
        m_category->addItem(categoryName(category), static_cast<int>(category));
    m_maker = line(tr("Maker"));
    m_model = line(tr("Model"));
    m_serial = line(tr("Serial number"));
    m_mains = line(tr("Mains, as on the plate"), tr("230 V 50 Hz"));
    m_class = new QComboBox(this);
    m_class->addItem(tr("Not known"));
    for (const auto &[protection, word] : Words<ProtectionClass>::list)
        m_class->addItem(QString::fromLatin1(word), static_cast<int>(protection));
    m_owner = line(tr("Owner’s name"));
    m_claim = line(tr("What the seller or owner says is wrong"));
    m_paid = line(tr("Price paid"), m_work.currency().sign());
    m_carriage = line(tr("Carriage"), m_work.currency().sign());
    m_resale = line(tr("Planned resale"), m_work.currency().sign());
    m_hours = line(tr("Planned hours"), tr("4 h 30 m"));

    auto *kinds = new QWidget(this);
    auto *kindRow = new QHBoxLayout(kinds);
    kindRow->setContentsMargins(0, 0, 0, 0);
    m_kind = new QButtonGroup(this);
    for (const auto &[kind, word] : Words<UnitKind>::list) {
        auto *choice = new QRadioButton(kindName(kind), kinds);
        choice->setAccessibleName(kindName(kind));
        m_kind->addButton(choice, static_cast<int>(kind));
        kindRow->addWidget(choice);
    }
    kindRow->addStretch(1);
    m_kind->button(static_cast<int>(UnitKind::ToSell))->setChecked(true);

    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(gap::normal);
    grid->setVerticalSpacing(2);
    for (int i = 0; i < columns; ++i)
        grid->setColumnStretch(i, 1);
    int row = 0;
    place(grid, row, 0, 4, tr("Name"), m_name);
    place(grid, row, 4, 2, tr("Category"), m_category);
    grid->addWidget(m_like, row += 2, 0, 1, columns);
    grid->setRowMinimumHeight(++row, gap::normal);
    auto *rest = styledLabel("group", tr("The rest can wait; Tab goes through it"), this);
    grid->addWidget(rest, ++row, 0, 1, columns);
    place(grid, ++row, 0, 2, tr("Maker"), m_maker);
    place(grid, row, 2, 2, tr("Model"), m_model);
    place(grid, row, 4, 2, tr("Serial number"), m_serial);
    place(grid, row += 2, 0, 3, tr("Mains, as on the plate"), m_mains);
    place(grid, row, 3, 3, tr("Protection class"), m_class);
    place(grid, row += 2, 0, columns, tr("What the seller or owner says is wrong"), m_claim);
    place(grid, row += 2, 0, 4, tr("Kind"), kinds);
    QLabel *owner = place(grid, row, 4, 2, tr("Owner’s name"), m_owner);
    place(grid, row += 2, 0, 1, tr("Price paid"), m_paid);
    place(grid, row, 1, 1, tr("Carriage"), m_carriage);
    place(grid, row, 2, 2, tr("Planned resale"), m_resale);
    place(grid, row, 4, 2, tr("Planned hours"), m_hours);
    const auto owned = [this, owner](bool on) { // nobody is asked for the owner of what is to be sold
        m_owner->setEnabled(on);
        owner->setEnabled(on);
    };
    owned(false);
    QWidgetList order{m_name, m_category, m_maker, m_model, m_serial, m_mains, m_class, m_claim};
    for (QAbstractButton *choice : m_kind->buttons())
        order << choice;
    order << m_owner << m_paid << m_carriage << m_resale << m_hours;
    for (int i = 1; i < order.size(); ++i)
        setTabOrder(order.at(i - 1), order.at(i));

    connect(m_name, &QLineEdit::textEdited, this, &TakeInFields::nameTyped);
    connect(m_category, &QComboBox::activated, this, [this](int index) { m_categoryChosen = index > 0; });
    connect(m_category, &QComboBox::currentIndexChanged, this, &TakeInFields::edited);
    connect(m_class, &QComboBox::currentIndexChanged, this, &TakeInFields::edited);
    connect(m_kind, &QButtonGroup::idToggled, this, [owned](int kind, bool on) {
        if (kind == static_cast<int>(UnitKind::Owners))
            owned(on);
    });
    connect(m_like, &LikeUnits::chosen, this, &TakeInFields::copyFrom);
    for (QLineEdit *each : {m_maker, m_model, m_mains})
        connect(each, &QLineEdit::textChanged, this, &TakeInFields::edited);
}

QLineEdit *TakeInFields::line(const QString &label, const QString &hint)
{
    auto *field = new QLineEdit(this);
    field->setAccessibleName(label);
    field->setPlaceholderText(hint);
    return field;
}

QLabel *TakeInFields::place(QGridLayout *grid, int row, int column, int span, const QString &label, QWidget *field)
{
    auto *word = styledLabel("quiet", label, this);
    word->setBuddy(field);
    field->setAccessibleName(label);
    grid->setRowMinimumHeight(row, QFontMetrics(m_work.style().text()).lineSpacing() + gap::small);
    grid->addWidget(word, row, column, 1, span, Qt::AlignBottom);
    grid->addWidget(field, row + 1, column, 1, span);
    return word;
}

void TakeInFields::clear()
{
    for (QLineEdit *each : findChildren<QLineEdit *>())
        each->clear();
    m_like->clear();
    m_category->setCurrentIndex(0);
    m_categoryChosen = false;
    m_class->setCurrentIndex(0);
    m_kind->button(static_cast<int>(UnitKind::ToSell))->setChecked(true);
    m_points.clear();
    Q_EMIT edited();
}

void TakeInFields::focusName()
{
    m_name->setFocus();
}

void TakeInFields::focusCategory()
{
    m_category->setFocus();
}

bool TakeInFields::hasCategory() const
{
    return category().has_value();
}

void TakeInFields::nameTyped(const QString &name)
{
    m_like->lookFor(name);
    // What the name says of the category holds until somebody says otherwise.
    if (m_categoryChosen)
        return;
    if (const auto named = categoryNamed(name))
        setCategory(*named);
    else
        m_category->setCurrentIndex(0);
}

void TakeInFields::setCategory(Category category)
{
    m_category->setCurrentIndex(m_category->findData(static_cast<int>(category)));
}

std::optional<Category> TakeInFields::category() const
{
    const QVariant chosen = m_category->currentData();
    return chosen.isValid() ? std::optional(static_cast<Category>(chosen.toInt())) : std::nullopt;
}

void TakeInFields::copyFrom(const Id<Unit> &like)
{
    const auto file = m_work.desk().unitFile(like);
    if (!file)
        return m_work.refuse(file.trouble());
    Arrival copied;
    takeAfter(copied, *file);
    m_name->setText(copied.unit.name);
    m_maker->setText(copied.unit.maker);
    m_model->setText(copied.unit.makerModel);
    m_mains->setText(copied.unit.mains);
    m_class->setCurrentIndex(copied.unit.protectionClass ? m_class->findData(static_cast<int>(*copied.unit.protectionClass)) : 0);
    setCategory(copied.unit.category);
    m_categoryChosen = true;
    m_points = copied.points;
    m_like->clear();
    m_serial->setFocus(); // the first that is this one's own
    Q_EMIT edited();
}

bool TakeInFields::copyFirstOffered()
{
    return m_like->chooseFirst();
}

Arrival TakeInFields::soFar() const
{
    Arrival arrival;
    Unit &unit = arrival.unit;
    unit.name = m_name->text().simplified();
    unit.category = category().value_or(Category::Other);
    unit.maker = m_maker->text().simplified();
    unit.makerModel = m_model->text().simplified();
    unit.mains = m_mains->text().simplified();
    if (const QVariant protection = m_class->currentData(); protection.isValid())
        unit.protectionClass = static_cast<ProtectionClass>(protection.toInt());
    unit.kind = static_cast<UnitKind>(m_kind->checkedId());
    arrival.points = m_points;
    Maker maker = m_work.maker();
    if (category())
        arrival.proofs = comingIn(unit, m_work.bench(), maker).proofs;
    return arrival;
}

Expected<QString> TakeInFields::text(QLineEdit *field, qsizetype most) const
{
    const auto text = plainText(field->text(), field->accessibleName(), most);
    if (!text)
        field->setFocus();
    return text;
}

Expected<std::optional<Money>> TakeInFields::money(QLineEdit *field) const
{
    const auto money = typed::moneyOrNone(field->accessibleName(), field->text(), m_work.currency());
    if (!money)
        field->setFocus();
    return money;
}

Expected<Arrival> TakeInFields::arrival(Maker &maker)
{
    Arrival arrival = soFar();
    const Unit fresh = maker.fresh<Unit>();
    arrival.unit.id = fresh.id;
    arrival.unit.at = fresh.at;
    const std::tuple<QLineEdit *, QString *, qsizetype> texts[]{{m_name, &arrival.unit.name, shortText},         {m_maker, &arrival.unit.maker, shortText},
                                                                {m_model, &arrival.unit.makerModel, shortText},  {m_serial, &arrival.unit.serial, shortText},
                                                                {m_mains, &arrival.unit.mains, shortText},       {m_claim, &arrival.unit.claim, longText},
                                                                {m_owner, &arrival.owner, shortText}};
    for (const auto &[field, into, most] : texts) {
        const auto read = text(field, most);
        if (!read)
            return read.trouble();
        *into = *read;
    }
    if (arrival.unit.kind != UnitKind::Owners)
        arrival.owner.clear();
    const std::pair<QLineEdit *, std::optional<Money> *> amounts[]{{m_paid, &arrival.paid}, {m_carriage, &arrival.carriage}, {m_resale, &arrival.resalePlanned}};
    for (const auto &[field, into] : amounts) {
        const auto read = money(field);
        if (!read)
            return read.trouble();
        *into = *read;
    }
    if (QString hours = m_hours->text().trimmed(); !hours.isEmpty()) {
        bool plain = false;
        QString(hours).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&plain);
        const auto minutes = minutesTyped(plain ? hours + QStringLiteral(" h") : hours); // a number alone is hours here
        if (!minutes) {
            m_hours->setFocus();
            return minutes.trouble();
        }
        arrival.minutesPlanned = *minutes;
    }
    return arrival;
}

} // namespace ts
