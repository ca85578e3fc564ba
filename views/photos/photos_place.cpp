#include "views/photos/photos_place.h"

#include "model/records/tag_text.h"
#include "views/photos/photo_canvas.h"
#include "views/photos/photo_side.h"
#include "views/photos/thumbnails.h"
#include "views/style/style.h"
#include "views/widgets/buttons.h"
#include "views/widgets/card.h"
#include "views/widgets/empty_place.h"
#include "views/widgets/locale_text.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListView>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ts {

namespace {

constexpr double zoomStep = 1.25;
constexpr int picturesKept = 3;

} // namespace

PhotosPlace::PhotosPlace(Workplace &workplace, QWidget *parent) : Place(workplace, parent), m_pictures(picturesKept)
{
    m_title = styledLabel("heading", {}, this);
    auto *add = primaryButton(tr("Add photos…"), this);
    connect(add, &QPushButton::clicked, &work(), &Workplace::photoFilesWanted);
    auto *back = button(tr("Back to the unit"), this);
    connect(back, &QPushButton::clicked, this, [this] { work().goTo(PlaceKey::Units); });
    auto *head = new QHBoxLayout;
    head->addWidget(m_title, 1);
    head->addWidget(add);
    head->addWidget(back);

    m_canvas = new PhotoCanvas(work().style(), this);
    m_canvas->installEventFilter(this);
    connect(m_canvas, &PhotoCanvas::zoomed, this, &PhotosPlace::showZoom);
    m_strip = new QListView(this);
    m_strip->setAccessibleName(tr("Photos of this unit"));
    m_strip->setModel(&m_model);
    m_strip->setItemDelegate(new PhotoTile(work().style(), work().thumbnails(), m_strip));
    m_strip->setFlow(QListView::LeftToRight);
    m_strip->setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_strip->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_strip->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    m_strip->installEventFilter(this);
    connect(m_strip->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex &index) { rowChosen(index.row()); });
    connect(&work().thumbnails(), &Thumbnails::arrived, m_strip->viewport(), qOverload<>(&QWidget::update));
    auto *pictures = new QVBoxLayout;
    pictures->setSpacing(gap::small);
    pictures->addWidget(m_canvas, 1);
    pictures->addWidget(m_strip);
    auto *shown = new QWidget(this);
    auto *columns = new QHBoxLayout(shown);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(gap::normal);
    columns->addLayout(pictures, 1);
    m_side = new PhotoSide(work(), shown);
    connect(m_side, &PhotoSide::finished, m_canvas, qOverload<>(&QWidget::setFocus));
    columns->addWidget(m_side);

    auto *none = new EmptyPlace(tr("No photos of this unit yet. Drop them anywhere on the window, paste a copied one, choose files, or have a folder watched that your telephone puts them into."),
                                tr("Add photos…"));
    connect(none, &EmptyPlace::actionWanted, &work(), &Workplace::photoFilesWanted);
    m_whole = new QStackedWidget(this);
    m_whole->addWidget(shown);
    m_whole->addWidget(none);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap::wide, gap::normal, gap::wide, gap::normal);
    column->setSpacing(gap::normal);
    column->addLayout(head);
    column->addWidget(m_whole, 1);
    connect(&work(), &Workplace::photoWanted, this, [this](const QUuid &photo) { showPhoto(Id<Photo>{photo}); });
    connect(&work(), &Workplace::unitChanged, this, [this] {
        if (isVisible())
            refresh();
    });
}

void PhotosPlace::focusFirst()
{
    m_canvas->setFocus();
}

QString PhotosPlace::help() const
{
    return tr("Left and right go through the photos. The wheel, + and − zoom; 0 shows the whole photo, 1 its own pixels; drag to move it. F, D and L say whether it shows the unit as found, "
              "during work or as it leaves; S puts it on the sheet; C goes to its caption, M to the field that moves it to another unit; Del removes it. Undo takes each of these back.");
}

void PhotosPlace::commitEdits()
{
    m_side->commitCaption();
}

const Photo *PhotosPlace::photo() const
{
    return work().file().find(m_current);
}

void PhotosPlace::refresh()
{
    const Unit &unit = work().file().unit;
    m_title->setText(work().hasUnit() ? tr("Photos of %1 %2").arg(tagText(unit.tag), unit.name) : tr("Photos"));
    const int row = qMax(0, m_model.rowOf(m_current)); // where the current one goes away, its neighbour is shown
    m_model.setPhotos(work().file().all<Photo>());
    m_whole->setCurrentIndex(m_model.photos().isEmpty() ? 1 : 0);
    if (m_model.rowOf(m_current) < 0)
        m_current = m_model.photos().isEmpty() ? Id<Photo>() : m_model.photos().at(qMin(row, m_model.rowCount() - 1)).id;
    m_strip->setFixedHeight(work().style().space(18) + 2 * m_strip->frameWidth() + m_strip->horizontalScrollBar()->sizeHint().height());
    showCurrent();
}

void PhotosPlace::showPhoto(const Id<Photo> &photo)
{
    m_current = photo;
    refresh();
    m_canvas->setFocus();
}

void PhotosPlace::rowChosen(int row)
{
    if (row < 0 || row >= m_model.rowCount() || m_model.photos().at(row).id == m_current)
        return;
    m_current = m_model.photos().at(row).id;
    showCurrent();
}

void PhotosPlace::step(int by)
{
    const int row = m_model.rowOf(m_current) + by;
    if (row >= 0 && row < m_model.rowCount())
        rowChosen(row);
}

void PhotosPlace::showCurrent()
{
    const Photo *shown = photo();
    if (!shown)
        return;
    const int row = m_model.rowOf(m_current);
    m_strip->setCurrentIndex(m_model.index(row)); // the current one already, where the strip asked for it
    m_side->showPhoto(m_current, row + 1, m_model.rowCount());
    m_canvas->setAccessibleDescription(m_model.index(row).data(Qt::AccessibleTextRole).toString());
    showPicture(*shown);
}

void PhotosPlace::showPicture(const Photo &shown)
{
    const QString sha256 = shown.sha256;
    const QSize size(shown.width, shown.height);
    const QImage *whole = m_pictures.object(sha256);
    m_canvas->setPicture(sha256, whole ? *whole : QImage(), work().thumbnails().pictureNow(sha256), size);
    if (whole)
        return;
    const auto bytes = work().desk().kept(sha256);
    if (!bytes)
        return work().refuse(bytes.trouble());
    // Unpacked beside the window; who leafs on quickly waits for none but the last.
    m_background.forget();
    m_background.run([jpeg = *bytes] { return QImage::fromData(jpeg); },
                     [this, sha256, size](const QImage &picture) {
                         m_pictures.insert(sha256, new QImage(picture));
                         if (const Photo *now = photo(); now && now->sha256 == sha256)
                             m_canvas->setPicture(sha256, picture, {}, size);
                     });
}

void PhotosPlace::showZoom()
{
    m_side->showZoom(m_canvas->isFitted() ? tr("Whole photo") : shown::percent(m_canvas->zoom()));
}

bool PhotosPlace::handleKey(int key)
{
    switch (key) {
    case Qt::Key_Left:
    case Qt::Key_PageUp:
        step(-1);
        return true;
    case Qt::Key_Right:
    case Qt::Key_PageDown:
    case Qt::Key_Space:
        step(1);
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        m_canvas->zoomBy(zoomStep);
        return true;
    case Qt::Key_Minus:
        m_canvas->zoomBy(1 / zoomStep);
        return true;
    case Qt::Key_0:
        m_canvas->fit();
        return true;
    case Qt::Key_1:
        m_canvas->ownPixels();
        return true;
    case Qt::Key_F:
        m_side->setPhase(Phase::AsFound);
        return true;
    case Qt::Key_D:
        m_side->setPhase(Phase::DuringWork);
        return true;
    case Qt::Key_L:
        m_side->setPhase(Phase::AsItLeaves);
        return true;
    case Qt::Key_S:
        m_side->toggleOnSheet();
        return true;
    case Qt::Key_C:
    case Qt::Key_F2:
    case Qt::Key_Return:
        m_side->focusCaption();
        return true;
    case Qt::Key_M:
        m_side->focusMove();
        return true;
    case Qt::Key_Delete:
        m_side->removePhoto();
        return true;
    default:
        return false;
    }
}

bool PhotosPlace::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress) {
        const auto *pressed = static_cast<QKeyEvent *>(event);
        if (!(pressed->modifiers() & (Qt::ControlModifier | Qt::AltModifier)) && handleKey(pressed->key()))
            return true;
    }
    return Place::eventFilter(watched, event);
}

} // namespace ts
