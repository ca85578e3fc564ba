#pragma once

#include "model/records/photo.h"

#include <QAbstractListModel>
#include <QStyledItemDelegate>

namespace ts {

class Style;
class Thumbnails;

/// The photos of a unit in the order of its sheet: by phase, then position, then when they were taken.
class PhotoListModel : public QAbstractListModel {
    Q_OBJECT
public:
    enum Roles { PhotoId = Qt::UserRole + 1, Sha256, OnSheet };

    explicit PhotoListModel(QObject *parent = nullptr) : QAbstractListModel(parent) {}

    /// Shows these. Rows that stay, stay the same rows, so that what is selected remains so.
    void setPhotos(QList<Photo> photos);
    [[nodiscard]] const QList<Photo> &photos() const { return m_photos; }
    [[nodiscard]] int rowOf(const Id<Photo> &photo) const; ///< -1 where it is not there
    /// Those that go on the sheet without being marked for it.
    void setByThemselves(const QList<Id<Photo>> &photos);

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role = Qt::DisplayRole) const override;

private:
    QList<Photo> m_photos;
    QList<Id<Photo>> m_byThemselves;
};

/// Paints a photo as a small rounded picture, with a mark where it goes on the sheet.
class PhotoTile : public QStyledItemDelegate {
public:
    /// `size` is relative to the tiles of the photos' own place.
    PhotoTile(const Style &style, Thumbnails &thumbnails, QObject *parent = nullptr, double size = 1);
    void paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    const Style &m_style;
    Thumbnails &m_thumbnails;
    double m_size;
};

} // namespace ts
