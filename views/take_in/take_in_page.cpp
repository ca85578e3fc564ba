#include "views/take_in/take_in_page.h"

#include "views/photos/small_pictures.h"
#include "views/style/style.h"
#include "views/take_in/tag_given.h"
#include "views/take_in/take_in_brings.h"
#include "views/take_in/take_in_fields.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"

#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QShortcut>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ts {

TakeInPage::TakeInPage(Workplace &workplace, QWidget *parent) : QWidget(parent), m_work(workplace)
{
    m_brings = new TakeInBrings(workplace);
    QSizePolicy keeps = m_brings->sizePolicy();
    keeps.setRetainSizeWhenHidden(true); // the fields stay where they are when a category is chosen
    m_brings->setSizePolicy(keeps);
    m_given = new TagGiven(workplace);
    m_form = makeForm();
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_form);
    m_stack->addWidget(m_given);
    auto *inside = new QWidget;
    auto *columns = new QHBoxLayout(inside);
    columns->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    columns->setSpacing(gap::wide);
    columns->addWidget(m_stack, 5);
    columns->addWidget(m_brings, 3);
    auto *scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inside);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(scroll);

    connect(m_fields, &TakeInFields::edited, this, &TakeInPage::showBrings);
    connect(m_given, &TagGiven::openWanted, this, &TakeInPage::open);
    connect(m_given, &TagGiven::anotherWanted, this, &TakeInPage::begin);
    auto *like = new QShortcut(QKeySequence(Qt::ALT | Qt::Key_L), this);
    like->setContext(Qt::WidgetWithChildrenShortcut);
    connect(like, &QShortcut::activated, this, [this] { m_fields->copyFirstOffered(); });
    showPhotos();
}

QWidget *TakeInPage::makeForm()
{
    auto *form = new QWidget;
    auto *says = styledLabel("quiet", tr("A name and a category are enough. Enter takes it in; Esc leaves, and what is typed waits here."), form);
    says->setWordWrap(true);
    m_fields = new TakeInFields(m_work, form);
    m_pictures = new SmallPictures(m_work.style(), form);
    m_photoCount = styledLabel("quiet", {}, form);
    auto *choose = button(tr("Choose photos…"), form);
    connect(choose, &QPushButton::clicked, this, &TakeInPage::photoFilesWanted);
    auto *photos = new QHBoxLayout;
    photos->setSpacing(gap::small);
    photos->addWidget(choose);
    photos->addWidget(m_pictures);
    photos->addWidget(m_photoCount, 1);
    auto *take = primaryButton(tr("Take in"), form);
    connect(take, &QPushButton::clicked, this, &TakeInPage::takeIn);
    auto *empty = wordButton(tr("Empty the page"), form);
    connect(empty, &QPushButton::clicked, this, [this] {
        m_fields->clear();
        m_photos.clear();
        showPhotos();
        m_fields->focusName();
    });
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(take);
    buttons->addWidget(empty);
    buttons->addStretch(1);
    auto *column = new QVBoxLayout(form);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap::small);
    column->addWidget(styledLabel("title", tr("Take in a unit"), form));
    column->addWidget(says);
    column->addSpacing(gap::tight);
    column->addWidget(m_fields);
    column->addSpacing(gap::small);
    column->addLayout(photos);
    column->addSpacing(gap::small);
    column->addLayout(buttons);
    column->addStretch(1);
    return form;
}

void TakeInPage::begin()
{
    if (isTaken()) {
        m_taken = {};
        m_fields->clear();
        m_photos.clear();
        showPhotos();
    }
    m_stack->setCurrentWidget(m_form);
    showBrings();
    m_fields->focusName();
}

void TakeInPage::addPhotos(const QList<PhotoSource> &photos)
{
    if (isTaken()) {
        Q_EMIT photosGiven(photos, m_taken);
        return;
    }
    for (const PhotoSource &photo : photos) {
        m_photos << photo;
        m_pictures->add(photo);
    }
    showPhotos();
}

void TakeInPage::showPhotos()
{
    if (m_photos.isEmpty())
        m_pictures->clear();
    m_photoCount->setText(m_photos.isEmpty() ? tr("or drop or paste them anywhere on the window") : tr("%n photo(s) go with it", nullptr, static_cast<int>(m_photos.size())));
}

void TakeInPage::showBrings()
{
    m_brings->setVisible(m_fields->hasCategory());
    if (m_fields->hasCategory())
        m_brings->showFor(m_fields->soFar());
}

void TakeInPage::takeIn()
{
    Maker maker = m_work.maker();
    const auto arrival = m_fields->arrival(maker);
    if (!arrival)
        return m_work.refuse(arrival.trouble());
    if (arrival->unit.name.isEmpty()) {
        m_fields->focusName();
        return m_work.refuse(tr("The unit has no name; call it what it is: maker, model, what kind of thing."));
    }
    if (!m_fields->hasCategory()) {
        m_fields->focusCategory();
        return m_work.refuse(tr("Choose what kind of thing it is; it brings the cautions and the proofs."));
    }
    if (!m_work.record(takingIn(*arrival, m_work.bench(), maker)))
        return;
    const auto taken = m_work.desk().get(arrival->unit.id);
    if (!taken)
        return m_work.refuse(taken.trouble());
    m_taken = taken->id;
    m_given->showFor(*taken);
    m_stack->setCurrentWidget(m_given);
    setFocus();
    if (!m_photos.isEmpty())
        Q_EMIT photosGiven(std::exchange(m_photos, {}), m_taken);
}

void TakeInPage::open()
{
    const Id<Unit> unit = m_taken;
    Q_EMIT done();
    m_work.goTo(unit, PageKey::Log);
}

void TakeInPage::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (event->key() != Qt::Key_Escape && !enter)
        return QWidget::keyPressEvent(event);
    if (auto *pressed = qobject_cast<QPushButton *>(focusWidget()); enter && pressed && pressed->hasFocus())
        return pressed->click();
    if (isTaken())
        open();
    else if (enter)
        takeIn();
    else
        Q_EMIT done();
}

} // namespace ts
