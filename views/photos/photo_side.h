#pragma once

#include "views/workplace.h"

class QButtonGroup;
class QCheckBox;
class QLabel;
class QLineEdit;

namespace ts {

class UnitField;

/// What is said of one photo, and what can be done with it.
class PhotoSide : public QWidget {
    Q_OBJECT
public:
    explicit PhotoSide(Workplace &workplace, QWidget *parent = nullptr);

    /// Shows a photo of the unit in hand, the `place`th of `total`; what was typed for another is committed first.
    void showPhoto(const Id<Photo> &photo, int place, int total);
    void showZoom(const QString &zoom);
    void focusCaption();
    void focusMove();
    void commitCaption();

    void setPhase(Phase phase);
    void toggleOnSheet();
    void moveTo(const Id<Unit> &unit);
    void removePhoto();

Q_SIGNALS:
    void finished(); ///< typing is done; the keyboard can go back to the photo

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] const Photo *photo() const;
    void record(const Photo &after, const QString &sentence);

    Workplace &m_work;
    Id<Photo> m_photo;
    QLineEdit *m_caption;
    QButtonGroup *m_phases;
    QCheckBox *m_onSheet;
    UnitField *m_move;
    QLabel *m_facts;
    QLabel *m_zoom;
};

} // namespace ts
