#pragma once

#include "views/photos/photo_list.h"
#include "views/places/place.h"
#include "views/widgets/background.h"

#include <QCache>

class QLabel;
class QListView;
class QStackedWidget;

namespace ts {

class PhotoCanvas;
class PhotoSide;

/// The photos of the unit in hand: one large, the others beneath it, and what is said of it at its side.
class PhotosPlace : public Place {
    Q_OBJECT
public:
    explicit PhotosPlace(Workplace &workplace, QWidget *parent = nullptr);

    void focusFirst() override;
    [[nodiscard]] QString help() const override;
    void commitEdits() override;

    void showPhoto(const Id<Photo> &photo);
    void step(int by); ///< the next, or the one before
    [[nodiscard]] Id<Photo> current() const { return m_current; }

protected:
    void refresh() override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] const Photo *photo() const;
    [[nodiscard]] bool handleKey(int key);
    void rowChosen(int row);
    void showCurrent();
    void showPicture(const Photo &photo);
    void showZoom();

    PhotoListModel m_model{this};
    Id<Photo> m_current;
    QCache<QString, QImage> m_pictures;
    Background m_background;

    QLabel *m_title;
    QStackedWidget *m_whole;
    PhotoCanvas *m_canvas;
    QListView *m_strip;
    PhotoSide *m_side;
};

} // namespace ts
