#include "views/details/details_page.h"

#include "model/records/settings.h"
#include "model/sums/mains_match.h"
#include "views/details/detail_field.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/names.h"
#include "views/widgets/stage_names.h"
#include "views/widgets/two_columns.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLocale>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ts {

namespace {

template <class E>
QList<std::pair<QString, QString>> choices(QString (*name)(E))
{
    QList<std::pair<QString, QString>> all;
    for (const auto &[value, word] : Words<E>::list)
        all.append({QString::fromLatin1(word), name(value)});
    return all;
}

QLabel *wrapped(const char *role, Card *card)
{
    QLabel *label = styledLabel(role, {}, card);
    label->setWordWrap(true);
    card->body()->addWidget(label);
    return label;
}

} // namespace

DetailsPage::DetailsPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent)
{
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(makeInside());
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(scroll);
    QWidget *before = nullptr;
    for (const Shown &each : std::as_const(m_fields)) {
        if (before)
            setTabOrder(before, each.field->editor());
        before = each.field->editor();
        // Tab goes below what is in sight, too.
        connect(each.field, &DetailField::entered, scroll, [scroll, field = each.field] { scroll->ensureWidgetVisible(field, 0, gap::wide); });
    }
    // By a key, too, the next tag comes in hand: what is being typed is this one's.
    connect(&work(), &Workplace::unitLeaving, this, &DetailsPage::commitEdits);
}

QWidget *DetailsPage::makeInside()
{
    auto *inside = new QWidget;
    auto *back = wordButton(tr("Back to the page"), inside);
    connect(back, &QPushButton::clicked, this, &DetailsPage::left);
    auto *says = styledLabel("quiet", tr("Enter, or leaving a field, keeps what is in it; Undo takes it back."), inside);
    says->setWordWrap(true);
    auto *head = new QHBoxLayout;
    head->addWidget(styledLabel("heading", tr("Details"), inside));
    head->addWidget(says, 1);
    head->addWidget(back);
    auto *columns = new TwoColumns(640, 1, 1, inside);
    const auto card = [&](QVBoxLayout *column, const QString &heading, void (DetailsPage::*make)(Card *)) {
        auto *made = new Card(heading, inside);
        (this->*make)(made);
        column->addWidget(made);
    };
    card(columns->left(), tr("What it is"), &DetailsPage::makeUnit);
    card(columns->left(), tr("Mains"), &DetailsPage::makeMains);
    card(columns->left(), tr("Whose it is, and where it stands"), &DetailsPage::makeWhose);
    card(columns->right(), tr("How it came in"), &DetailsPage::makeArrival);
    card(columns->right(), tr("How it was bought"), &DetailsPage::makePurchase);
    m_dates = styledLabel("faint", {}, inside);
    m_dates->setWordWrap(true);
    columns->right()->addWidget(m_dates);
    columns->left()->addStretch(1);
    columns->right()->addStretch(1);
    auto *rows = new QVBoxLayout(inside);
    rows->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    rows->setSpacing(gap::normal);
    rows->addLayout(head);
    rows->addWidget(columns);
    rows->addStretch(1);
    return inside;
}

DetailField *DetailsPage::add(DetailField *field, Shows shows)
{
    m_fields.append({field, std::move(shows)});
    return field;
}

void DetailsPage::row(Card *card, const QList<std::pair<DetailField *, int>> &fieldAndShare)
{
    auto *beside = new QHBoxLayout;
    beside->setSpacing(gap::normal);
    for (const auto &[field, share] : fieldAndShare)
        beside->addWidget(field, share, Qt::AlignTop);
    card->body()->addLayout(beside);
}

void DetailsPage::makeUnit(Card *card)
{
    row(card, {{text(&Unit::name, tr("Name"), tr("Name")), 1}});
    DetailField *maker = text(&Unit::maker, tr("Maker"), tr("Maker"));
    DetailField *model = text(&Unit::makerModel, tr("Model"), tr("Model"));
    row(card, {{maker, 1}, {model, 1}});
    auto *category = new DetailField(tr("Category"), DetailField::Form::Choice, [this](const QString &word) { return takeCategory(word); });
    category->setChoices(choices<Category>(categoryName));
    add(category, [this] { return toWord(unit().category); });
    DetailField *serial = text(&Unit::serial, tr("Serial number"), tr("Serial"));
    row(card, {{category, 1}, {serial, 1}});
    auto *year = new DetailField(tr("Year made, or about"), DetailField::Form::Line, [this](const QString &typed) { return takeYear(typed); });
    year->setHint(tr("1979"));
    add(year, [this] { return unit().year ? QString::number(*unit().year) : QString(); });
    DetailField *basis = text(&Unit::yearBasis, tr("How the year is known"), tr("How the year is known"));
    basis->setHint(tr("date code on the board"));
    row(card, {{year, 1}, {basis, 1}});
}

void DetailsPage::makeMains(Card *card)
{
    DetailField *mains = text(&Unit::mains, tr("Mains voltage and frequency, as on the plate"), tr("Mains"));
    mains->setHint(tr("230 V 50 Hz"));
    auto *protection = new DetailField(tr("Protection class"), DetailField::Form::Choice, [this](const QString &word) { return takeClass(word); });
    QList<std::pair<QString, QString>> classes{{QString(), tr("Not known")}};
    for (const auto &[value, word] : Words<ProtectionClass>::list)
        classes.append({QString::fromLatin1(word), QString::fromLatin1(word)});
    protection->setChoices(classes);
    add(protection, [this] { return unit().protectionClass ? toWord(*unit().protectionClass) : QString(); });
    row(card, {{mains, 3}, {protection, 2}});
    m_caution = wrapped("warning", card);
}

void DetailsPage::makeWhose(Card *card)
{
    auto *kind = new DetailField(tr("Kind"), DetailField::Form::Choice, [this](const QString &word) { return takeKind(word); });
    kind->setChoices(choices<UnitKind>(kindName));
    add(kind, [this] { return toWord(unit().kind); });
    m_owner = new DetailField(tr("Owner’s name"), DetailField::Form::Line, [this](const QString &typed) { return takeOwner(typed); });
    add(m_owner, [this] {
        const Contact *owner = bench().find(unit().owner);
        return owner ? owner->name : QString();
    });
    row(card, {{kind, 1}, {m_owner, 1}});
    DetailField *place = text(&Unit::place, tr("Where it stands"), tr("Place"));
    place->setHint(tr("shelf B2"));
    row(card, {{place, 1}});
}

void DetailsPage::makeArrival(Card *card)
{
    row(card, {{text(&Unit::claim, tr("What the seller or owner says is wrong"), tr("Claim"), true), 1}});
    row(card, {{text(&Unit::accessories, tr("What came with it, and what is missing"), tr("Accessories"), true), 1}});
    DetailField *looks = text(&Unit::looks, tr("Looks on arrival"), tr("Looks"), true);
    row(card, {{looks, 1}});
    row(card, {{text(&Unit::function, tr("Function on arrival"), tr("Function"), true), 1}});
    row(card, {{text(&Unit::earlierWork, tr("Signs of earlier work"), tr("Earlier work"), true), 1}});
}

void DetailsPage::makePurchase(Card *card)
{
    const auto now = [this] { return purchaseOf(file(), bench()); };
    const auto sum = [](const std::optional<Money> &money) { return money ? shown::money(*money) : QString(); };
    DetailField *price = purchase(tr("Price paid"), tr("Price paid"), [now, sum] { return sum(now().price); },
                                  [this](Purchase &wish, const QString &typed) { return takeSum(wish, &Purchase::price, tr("Price paid"), typed); });
    DetailField *carriage = purchase(tr("Carriage to you"), tr("Carriage in"), [now, sum] { return sum(now().carriage); },
                                     [this](Purchase &wish, const QString &typed) { return takeSum(wish, &Purchase::carriage, tr("Carriage to you"), typed); });
    m_seller = purchase(tr("Bought from"), tr("Seller"), [now] { return now().seller; }, [this](Purchase &wish, const QString &typed) { return takeSeller(wish, typed); });
    DetailField *day = purchase(tr("Bought on"), tr("Day of purchase"),
                                [now] { return now().boughtOn.isValid() ? QLocale().toString(now().boughtOn, QLocale::ShortFormat) : QString(); },
                                [this](Purchase &wish, const QString &typed) { return takeDay(wish, typed); });
    price->setHint(work().currency().sign());
    carriage->setHint(work().currency().sign());
    m_seller->setHint(tr("a person, a sale room"));
    row(card, {{price, 1}, {carriage, 1}});
    row(card, {{m_seller, 1}, {day, 1}});
    m_lot = wrapped("quiet", card);
}

void DetailsPage::focusFirst()
{
    m_fields.first().field->editor()->setFocus();
}

QString DetailsPage::help() const
{
    return tr("What is known of the unit itself: what it is, its mains, whose it is and where it stands, how it came in and what was paid. Each field is kept when Enter is pressed or it is "
              "left; Esc puts back what was there, and Esc again goes back to the page. What is refused stays in its field, marked red, until it is mended.");
}

void DetailsPage::commitEdits()
{
    for (const Shown &each : std::as_const(m_fields))
        each.field->commit();
}

void DetailsPage::refresh()
{
    const bool other = m_of != unit().id;
    m_of = unit().id;
    for (const Shown &each : std::as_const(m_fields)) {
        each.field->setRecorded(each.shows());
        if (other)
            each.field->forget();
    }
    m_owner->setEnabled(unit().kind == UnitKind::Owners);
    QStringList names;
    for (const Contact &contact : bench().all<Contact>())
        names << contact.name;
    m_owner->setCompletions(names);
    m_seller->setCompletions(names);
    showRemarks();
}

void DetailsPage::showRemarks()
{
    QStringList cautions = mainsCautions(unit(), bench().setting(settings::mains));
    if (cautions.isEmpty() && !unit().mains.trimmed().isEmpty() && mainsPlate(unit().mains).volts.isEmpty())
        cautions << tr("No voltage can be read from this, so nothing can be said of the bench’s own mains. Write it like 230 V 50 Hz.");
    m_caution->setText(cautions.join(QLatin1Char('\n')));
    m_caution->setHidden(cautions.isEmpty());
    const Lot *lot = bench().find(unit().lot);
    m_lot->setText(lot ? tr("Bought in the lot “%1”; its share was fixed at purchase.").arg(lot->name) : QString());
    m_lot->setHidden(!lot);
    QStringList dates{tr("Taken in %1").arg(shown::dayLong(unit().at.toLocalTime().date(), work().today()))};
    if (unit().stageSince.isValid())
        dates << tr("%1 since %2").arg(shown::onStage(unit().stage), shown::dayLong(unit().stageSince.toLocalTime().date(), work().today()));
    if (!unit().sourceId.isEmpty())
        dates << tr("Imported as %1").arg(unit().sourceId);
    m_dates->setText(dates.join(QStringLiteral(" · ")));
}

void DetailsPage::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        Page::keyPressEvent(event);
}

} // namespace ts
