#pragma once

#include "views/photos/photo_source.h"
#include "views/workplace.h"

#include <QWidget>

class QLabel;
class QStackedWidget;

namespace ts {

class Card;
class SmallPictures;
class TagGiven;
class TakeInBrings;
class TakeInFields;

/// Takes a unit in: one short page, name and category enough. The tag is given at once.
class TakeInPage : public QWidget {
    Q_OBJECT
public:
    explicit TakeInPage(Workplace &workplace, QWidget *parent = nullptr);
    /// Takes the keyboard. What was typed and not taken in yet is still there; after a unit was taken in the page is empty.
    void begin();
    /// Photos that came while the page is shown: they go with the unit, or to the one just taken in.
    void addPhotos(const QList<PhotoSource> &photos);

Q_SIGNALS:
    void done(); ///< taken in and to be opened, or left without
    void photosGiven(const QList<ts::PhotoSource> &photos, const ts::Id<ts::Unit> &unit);
    void photoFilesWanted();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    [[nodiscard]] QWidget *makeForm();
    void takeIn();
    void open();
    void showBrings();
    void showPhotos();
    [[nodiscard]] bool isTaken() const { return !m_taken.isNull(); }

    Workplace &m_work;
    Id<Unit> m_taken; ///< the one whose tag is shown
    QList<PhotoSource> m_photos;
    QStackedWidget *m_stack;
    TakeInFields *m_fields;
    TakeInBrings *m_brings;
    TagGiven *m_given;
    SmallPictures *m_pictures;
    QLabel *m_photoCount;
    QWidget *m_form;
};

} // namespace ts
