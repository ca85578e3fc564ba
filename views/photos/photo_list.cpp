#include "views/photos/photo_list.h"

#include "views/photos/thumbnails.h"
#include "views/style/style.h"
#include "views/widgets/names.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>

namespace ts {

void PhotoListModel::setPhotos(QList<Photo> photos)
{
    std::stable_sort(photos.begin(), photos.end(), [](const Photo &a, const Photo &b) {
        const auto instant = [](const Photo &photo) { return photo.takenAt.isValid() ? photo.takenAt : photo.at; };
        return std::make_tuple(a.phase, a.position, instant(a)) < std::make_tuple(b.phase, b.position, instant(b));
    });
    const auto same = [](const Photo &a, const Photo &b) { return a.id == b.id; };
    if (std::equal(photos.begin(), photos.end(), m_photos.begin(), m_photos.end(), same)) {
        m_photos = std::move(photos);
        if (!m_photos.isEmpty())
            Q_EMIT dataChanged(index(0), index(rowCount() - 1));
        return;
    }
    beginResetModel();
    m_photos = std::move(photos);
    endResetModel();
}

int PhotoListModel::rowOf(const Id<Photo> &photo) const
{
    const auto at = std::find_if(m_photos.begin(), m_photos.end(), [&](const Photo &each) { return each.id == photo; });
    return at == m_photos.end() ? -1 : static_cast<int>(at - m_photos.begin());
}

void PhotoListModel::setByThemselves(const QList<Id<Photo>> &photos)
{
    if (photos == m_byThemselves)
        return;
    m_byThemselves = photos;
    if (!m_photos.isEmpty())
        Q_EMIT dataChanged(index(0), index(rowCount() - 1));
}

int PhotoListModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_photos.size());
}

QVariant PhotoListModel::data(const QModelIndex &index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Photo &photo = m_photos.at(index.row());
    const bool goesOn = photo.onSheet || m_byThemselves.contains(photo.id);
    switch (role) {
    case Qt::DisplayRole:
        return photo.caption.isEmpty() ? phaseName(photo.phase) : photo.caption;
    case Qt::ToolTipRole:
        return photo.originalName.toHtmlEscaped();
    case Qt::AccessibleTextRole:
        return QStringList{phaseName(photo.phase), photo.caption.isEmpty() ? photo.originalName : photo.caption, goesOn ? tr("on the sheet") : QString()}
            .filter(QRegularExpression(QStringLiteral(".")))
            .join(QStringLiteral(", "));
    case PhotoId:
        return photo.id.value;
    case Sha256:
        return photo.sha256;
    case OnSheet:
        return goesOn;
    default:
        return {};
    }
}

PhotoTile::PhotoTile(const Style &style, Thumbnails &thumbnails, QObject *parent, double size)
    : QStyledItemDelegate(parent), m_style(style), m_thumbnails(thumbnails), m_size(size)
{
}

QSize PhotoTile::sizeHint(const QStyleOptionViewItem &, const QModelIndex &) const
{
    return {m_style.space(25 * m_size), m_style.space(18 * m_size)};
}

void PhotoTile::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const Ink &ink = m_style.ink();
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const bool current = option.state & QStyle::State_Selected;
    const QRect tile = option.rect.adjusted(gap::tight, gap::tight, -gap::tight, -gap::tight);
    const QPixmap cover = m_thumbnails.cover(index.data(PhotoListModel::Sha256).toString(), tile.size(), m_style.radius(), painter->device()->devicePixelRatioF());
    if (cover.isNull()) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(ink.neutralPaper);
        painter->drawRoundedRect(tile, m_style.radius(), m_style.radius());
    } else {
        painter->drawPixmap(tile.topLeft(), cover);
    }
    if (index.data(PhotoListModel::OnSheet).toBool()) {
        // A small sheet with its corner folded would be a picture to be guessed; a word is not.
        const QString word = QCoreApplication::translate("PhotoTile", "sheet");
        painter->setFont(m_style.text(0.8, QFont::DemiBold));
        const QFontMetrics metrics(painter->font());
        const QRect mark(tile.right() - metrics.horizontalAdvance(word) - 12, tile.bottom() - metrics.height() - 4, metrics.horizontalAdvance(word) + 8, metrics.height());
        painter->setPen(Qt::NoPen);
        painter->setBrush(ink.copper);
        painter->drawRoundedRect(mark, 4, 4);
        painter->setPen(ink.onCopper);
        painter->drawText(mark, Qt::AlignCenter, word);
    }
    if (current) {
        painter->setPen(QPen(ink.copper, option.state & QStyle::State_HasFocus ? 3 : 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(QRectF(tile).adjusted(-1.5, -1.5, 1.5, 1.5), m_style.radius() + 1, m_style.radius() + 1);
    }
    painter->restore();
}

} // namespace ts
