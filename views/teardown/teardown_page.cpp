#include "views/teardown/teardown_page.h"

#include "model/sums/loose.h"
#include "views/style/style.h"
#include "views/teardown/pinned_photo.h"
#include "views/teardown/teardown_rows.h"
#include "views/unit/bring_notes.h"
#include "views/widgets/ask_line.h"
#include "views/widgets/background.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/grid_view.h"
#include "views/widgets/locale_text.h"
#include "views/widgets/page_scroll.h"

#include <QAction>
#include <QBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

namespace ts {

TeardownPage::TeardownPage(Workplace &workplace, QWidget *parent) : Page(workplace, parent), m_background(new Background(this))
{
    m_ask = new AskLine(this);
    auto *halves = new QHBoxLayout;
    halves->setSpacing(gap::normal);
    halves->addWidget(makeLeft(), 5);
    halves->addLayout(makeRight(), 6);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addWidget(m_ask);
    column->addLayout(halves, 1);
    makeActions();
    setWay(TeardownWay::Apart);
}

TeardownPage::~TeardownPage() = default;

QWidget *TeardownPage::makeLeft()
{
    auto *whole = new QWidget;
    whole->setObjectName(QStringLiteral("board"));
    m_apart = button(tr("Taking apart"), this);
    m_back = button(tr("Putting back (reverse)"), this);
    for (QPushButton *each : {m_apart, m_back})
        each->setCheckable(true);
    connect(m_apart, &QPushButton::clicked, this, [this] { setWay(TeardownWay::Apart); });
    connect(m_back, &QPushButton::clicked, this, [this] { setWay(TeardownWay::Back); });
    auto *printButton = button(tr("Print"), this);
    printButton->setToolTip(tr("The putting-back sheet, as a file"));
    connect(printButton, &QPushButton::clicked, this, &TeardownPage::print);
    auto *notes = notesButton(tr("From the model notes"), work(), {.testPoints = false, .teardown = true, .proofs = false, .parts = false}, this);
    auto *other = button(tr("From another unit"), this);
    connect(other, &QPushButton::clicked, this, &TeardownPage::askCopy);

    m_table = new GridView(work().style(), tr("What came off"), teardownColumns(TeardownWay::Apart), this);
    m_table->setCommit([this](const GridRow &row, int column, const QString &typed) { return commit(row, column, typed); });
    m_table->setAddsInARow(true);
    m_table->setHomeColumn(static_cast<int>(TeardownColumn::What));
    m_details = new GridView(work().style(), tr("More of the item at hand"), detailColumns(), this);
    m_details->setCommit([this](const GridRow &row, int, const QString &typed) { return commitDetail(row, typed); });
    m_details->setHomeColumn(1);
    connect(m_table, &GridView::currentRowChanged, this, &TeardownPage::showItem);

    m_loose = new Card(tr("Loose on the bench"), this);
    m_looseText = styledLabel("plain", {}, m_loose);
    m_looseText->setWordWrap(true);
    m_backText = styledLabel("quiet", {}, m_loose);
    m_loose->body()->addWidget(m_looseText);
    m_loose->body()->addWidget(m_backText);
    m_caution = new Card({}, this);
    restyle(m_caution, "tone", QStringLiteral("outside"));
    m_cautionText = styledLabel("warning", {}, m_caution);
    m_cautionText->setWordWrap(true);
    m_caution->body()->addWidget(m_cautionText);

    auto *top = new QHBoxLayout;
    top->setSpacing(gap::small);
    top->addWidget(m_apart);
    top->addWidget(m_back);
    top->addStretch(1);
    top->addWidget(printButton);
    auto *sources = new QHBoxLayout;
    sources->setSpacing(gap::small);
    sources->addWidget(notes);
    sources->addWidget(other);
    sources->addStretch(1);
    auto *left = new QVBoxLayout(whole);
    left->setContentsMargins(0, 0, gap::tight, 0);
    left->setSpacing(gap::small);
    left->addLayout(top);
    left->addWidget(m_table);
    left->addWidget(m_caution);
    left->addWidget(m_loose);
    left->addWidget(m_details);
    left->addLayout(sources);
    left->addStretch(1);
    return new PageScroll(whole, {m_table, m_details}, this);
}

QLayout *TeardownPage::makeRight()
{
    m_photo = new PinnedPhoto(work().style(), this);
    m_photo->setAccessibleName(tr("Photo with numbered pins"));
    connect(m_photo, &PinnedPhoto::pinWanted, this, &TeardownPage::putPin);
    connect(m_photo, &PinnedPhoto::pinMoved, this, &TeardownPage::movePin);
    connect(m_photo, &PinnedPhoto::pinUnwanted, this, &TeardownPage::removePin);
    connect(m_photo, &PinnedPhoto::pinChosen, this, [this](const QUuid &id) {
        if (const PhotoPin *pin = file().find(Id<PhotoPin>{id}); pin && !pin->item.isNull())
            m_table->setCurrent(pin->item.value);
    });
    m_noPhoto = styledLabel("quiet", tr("No photo of this unit yet. Photos come in by dragging, pasting or as files, and then the place of each screw can be pinned on them."), this);
    m_noPhoto->setWordWrap(true);
    m_noPhoto->setAlignment(Qt::AlignCenter);
    m_photos = new QListWidget(this);
    m_photos->setAccessibleName(tr("Photos of this unit"));
    m_photos->setObjectName(QStringLiteral("photoStrip"));
    m_photos->setViewMode(QListView::IconMode);
    m_photos->setFlow(QListView::LeftToRight);
    m_photos->setWrapping(false);
    m_photos->setMovement(QListView::Static);
    m_photos->setIconSize(QSize(64, 46));
    m_photos->setFixedHeight(66);
    m_photos->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(m_photos, &QListWidget::currentItemChanged, this, [this] {
        m_photo->commitMove();
        showPhoto();
        refreshPins();
    });
    auto *right = new QVBoxLayout;
    right->setSpacing(gap::small);
    right->addWidget(m_photo, 1);
    right->addWidget(m_noPhoto, 1);
    right->addWidget(m_photos);
    return right;
}

void TeardownPage::makeActions()
{
    m_table->addRowAction(tr("Left out, with the reason"), QKeySequence(Qt::CTRL | Qt::Key_L), [this](const QUuid &key) { askLeftOut(key); });
    m_table->addRowAction(tr("Earlier"), QKeySequence(Qt::CTRL | Qt::Key_Up), [this](const QUuid &key) { move(key, m_way == TeardownWay::Apart ? -1 : 1); });
    m_table->addRowAction(tr("Later"), QKeySequence(Qt::CTRL | Qt::Key_Down), [this](const QUuid &key) { move(key, m_way == TeardownWay::Apart ? 1 : -1); });
    m_table->addRowAction(tr("Take off the list"), QKeySequence::Delete, [this](const QUuid &key) { remove(key); });
}

void TeardownPage::focusFirst()
{
    m_table->setFocus();
}

void TeardownPage::reveal(const QString &kind, const QUuid &record)
{
    if (kind == QLatin1String(TeardownItem::table)) {
        if (m_table->rows().rowOf(record) < 0)
            setWay(TeardownWay::Apart);
        m_table->setCurrent(record);
    }
}

QString TeardownPage::help() const
{
    return tr("What came off, in the order in which it came off. Type it in the last row in the words of the log: lid 5 screws M3x8 tray A1. Space ticks; Ctrl+Up and Ctrl+Down move a row; "
              "Ctrl+L says that something stays out, and why. “Putting back” reads the list backwards and counts what is still loose. On the photo a click, or Enter, pins the item at "
              "hand; drag the pin, or move it by the arrow keys (with Shift a little at a time). Before the cover comes off: unplug, and let the capacitors discharge. Local codes and "
              "licensed practice come first.");
}

void TeardownPage::commitEdits()
{
    m_table->commitEdit();
    m_details->commitEdit();
    m_photo->commitMove();
    m_ask->putAway();
}

QString TeardownPage::looseText() const
{
    return m_looseText->text();
}

QString TeardownPage::cautionText() const
{
    return m_caution->isHidden() ? QString() : m_cautionText->text();
}

void TeardownPage::setWay(TeardownWay way)
{
    if (m_table->isEditing())
        m_table->commitEdit();
    m_way = way;
    m_apart->setChecked(way == TeardownWay::Apart);
    m_back->setChecked(way == TeardownWay::Back);
    m_table->setColumns(teardownColumns(way));
    if (work().hasUnit())
        refresh();
}

void TeardownPage::refresh()
{
    if (m_of != file().unit.id) {
        m_of = file().unit.id;
        m_ask->putAway();
    }
    m_table->setRows(teardownRows(file(), m_way));
    const Loose loose = looseOf(file());
    m_looseText->setText(loose.nothing() ? tr("Nothing is off.") : loose.text().isEmpty() ? tr("%n items", nullptr, loose.items) : loose.text());
    const int counted = loose.count + loose.backCount;
    m_backText->setText(counted > 0 ? tr("Put back so far: %1 of %2").arg(shown::count(loose.backCount), shown::count(counted))
                                    : tr("Put back so far: %1 of %2 items").arg(shown::count(loose.itemsBack), shown::count(loose.items + loose.itemsBack)));
    m_backText->setVisible(loose.items + loose.itemsBack > 0);
    refreshPhotos();
    showItem();
}

const TeardownItem *TeardownPage::current() const
{
    return file().find(Id<TeardownItem>{m_table->currentKey()});
}

void TeardownPage::showItem()
{
    const TeardownItem *item = current();
    m_details->setHidden(!item);
    QStringList care;
    if (item) {
        m_details->setRows(detailRows(*item));
        if (!item->caution.isEmpty())
            care << item->caution;
        if (!item->marks.isEmpty())
            care << (m_way == TeardownWay::Apart ? tr("Mark it before it moves: %1").arg(item->marks) : tr("Back to its marks: %1").arg(item->marks));
        m_caution->setHeading(tr("Before step %1").arg(shown::count(item->position)));
        if (const QUuid photo = photoOf(*item); !photo.isNull())
            for (int i = 0; i < m_photos->count(); ++i)
                if (m_photos->item(i)->data(Qt::UserRole).toUuid() == photo)
                    m_photos->setCurrentRow(i);
    }
    m_caution->setHidden(care.isEmpty());
    m_cautionText->setText(care.join(QLatin1Char('\n')));
    refreshPins();
}

} // namespace ts
