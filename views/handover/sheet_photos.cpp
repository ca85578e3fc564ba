#include "views/handover/sheet_photos.h"

#include "model/records/tag_text.h"
#include "views/photos/thumbnails.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListView>

namespace ts {

namespace {

constexpr double tileSize = 0.84; // three side by side in the narrowest card
constexpr int tilesInRow = 3;
constexpr int mostRows = 4;

} // namespace

SheetPhotos::SheetPhotos(Workplace &workplace, QWidget *parent) : Card(tr("Photos"), parent), m_work(workplace)
{
    m_list = new QListView(this);
    m_list->setAccessibleName(tr("Photos for the sheet"));
    m_list->setModel(&m_model);
    m_list->setItemDelegate(new PhotoTile(m_work.style(), m_work.thumbnails(), m_list, tileSize));
    m_list->setViewMode(QListView::IconMode);
    m_list->setMovement(QListView::Static);
    m_list->setResizeMode(QListView::Adjust);
    m_list->setUniformItemSizes(true);
    m_list->installEventFilter(this);
    connect(&m_work.thumbnails(), &Thumbnails::arrived, m_list->viewport(), qOverload<>(&QWidget::update));
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this, &SheetPhotos::showState);
    connect(m_list, &QListView::doubleClicked, this, [this] { toggleCurrent(); });
    m_says = styledLabel("faint", {}, this);
    m_says->setWordWrap(true);
    m_toggle = button({}, this);
    connect(m_toggle, &QPushButton::clicked, this, &SheetPhotos::toggleCurrent);
    m_earlier = button(tr("Earlier"), this);
    connect(m_earlier, &QPushButton::clicked, this, [this] { moveCurrent(-1); });
    m_later = button(tr("Later"), this);
    connect(m_later, &QPushButton::clicked, this, [this] { moveCurrent(1); });
    auto *see = wordButton(tr("See large"), this);
    connect(see, &QPushButton::clicked, this, [this] {
        if (const Photo *photo = current())
            m_work.showPhoto(m_work.file().unit.id, photo->id);
        else
            m_work.goTo(PlaceKey::Photos);
    });
    headRow()->addWidget(see);
    auto *row = new QHBoxLayout;
    row->addWidget(m_toggle);
    row->addWidget(m_earlier);
    row->addWidget(m_later);
    row->addStretch(1);
    body()->addWidget(m_list);
    body()->addLayout(row);
    body()->addWidget(m_says);
}

const Photo *SheetPhotos::current() const
{
    const int row = m_list->currentIndex().row();
    return row >= 0 && row < m_model.rowCount() ? &m_model.photos().at(row) : nullptr;
}

void SheetPhotos::refresh()
{
    const Id<Photo> before = current() ? current()->id : Id<Photo>();
    m_model.setPhotos(m_work.file().all<Photo>());
    const int row = qMax(0, m_model.rowOf(before));
    if (row < m_model.rowCount())
        m_list->setCurrentIndex(m_model.index(row));
    const int lines = qBound(1, (m_model.rowCount() + tilesInRow - 1) / tilesInRow, mostRows);
    m_list->setFixedHeight(lines * m_work.style().space(18 * tileSize) + gap::tight);
    m_list->setHidden(m_model.rowCount() == 0);
    showState();
}

void SheetPhotos::setByThemselves(const QList<Id<Photo>> &photos)
{
    m_byThemselves = photos;
    m_model.setByThemselves(photos);
    showState();
}

void SheetPhotos::showState()
{
    const Photo *photo = current();
    const bool goesOn = photo && (photo->onSheet || m_byThemselves.contains(photo->id));
    m_toggle->setText(goesOn ? tr("Take off the sheet") : tr("Put on the sheet"));
    m_toggle->setAccessibleName(m_toggle->text());
    for (QPushButton *each : {m_toggle, m_earlier, m_later})
        each->setVisible(photo);
    m_earlier->setEnabled(photo && m_list->currentIndex().row() > 0 && m_model.photos().at(m_list->currentIndex().row() - 1).phase == photo->phase);
    m_later->setEnabled(photo && m_list->currentIndex().row() + 1 < m_model.rowCount() && m_model.photos().at(m_list->currentIndex().row() + 1).phase == photo->phase);
    m_says->setText(!photo                      ? tr("No photos of this unit yet; drop or paste them anywhere on the window.")
                    : !m_byThemselves.isEmpty() ? tr("None is chosen, so the first as found and the last as it leaves go on.")
                                                : tr("At most eight go on, from arrival to leaving."));
}

void SheetPhotos::toggleCurrent()
{
    const Photo *photo = current();
    if (!photo)
        return;
    // Those that went on by themselves are chosen from now on, so that taking one off leaves the others.
    const bool goesOn = photo->onSheet || m_byThemselves.contains(photo->id);
    Change change(tagText(m_work.file().unit.tag) + QLatin1Char(' ') +
                  (goesOn ? tr("Photo off the sheet: %1") : tr("Photo onto the sheet: %1")).arg(photo->caption.isEmpty() ? photo->originalName : photo->caption));
    for (const Photo &each : m_model.photos()) {
        Photo after = each;
        after.onSheet = each.id == photo->id ? !goesOn : each.onSheet || m_byThemselves.contains(each.id);
        change.edit(each, after);
    }
    m_work.record(change);
}

void SheetPhotos::moveCurrent(int by)
{
    const int row = m_list->currentIndex().row();
    const int other = row + by;
    if (!current() || other < 0 || other >= m_model.rowCount() || m_model.photos().at(other).phase != current()->phase)
        return;
    QList<Photo> order = m_model.photos();
    const Photo moved = order.at(row);
    order.swapItemsAt(row, other);
    Change change(tagText(m_work.file().unit.tag) + QLatin1Char(' ') + tr("Photo moved on the sheet: %1").arg(moved.caption.isEmpty() ? moved.originalName : moved.caption));
    int position = 0;
    for (const Photo &each : order) {
        if (each.phase != moved.phase)
            continue;
        Photo after = each;
        after.position = ++position;
        change.edit(each, after);
    }
    m_work.record(change);
}

bool SheetPhotos::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const auto *pressed = static_cast<QKeyEvent *>(event);
        if (pressed->key() == Qt::Key_Space || pressed->key() == Qt::Key_Return) {
            toggleCurrent();
            return true;
        }
        if ((pressed->modifiers() & Qt::AltModifier) && (pressed->key() == Qt::Key_Left || pressed->key() == Qt::Key_Right)) {
            moveCurrent(pressed->key() == Qt::Key_Left ? -1 : 1);
            return true;
        }
    }
    return Card::eventFilter(watched, event);
}

} // namespace ts
