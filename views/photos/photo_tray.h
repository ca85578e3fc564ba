#pragma once

#include "views/photos/photo_source.h"
#include "views/workplace.h"

#include <QFrame>

class QLabel;
class QPushButton;

namespace ts {

class SmallPictures;
class UnitField;

/// Photos that came into the watched folder and wait to be given to a unit: to the one in hand by one key, or to another.
class PhotoTray : public QFrame {
    Q_OBJECT
public:
    explicit PhotoTray(Workplace &workplace, QWidget *parent = nullptr);

    void add(const QStringList &files);
    [[nodiscard]] const QStringList &files() const { return m_files; }
    void acceptForUnitInHand();

Q_SIGNALS:
    void given(const QList<ts::PhotoSource> &photos, const ts::Id<ts::Unit> &unit);

private:
    void refresh();
    void give(const Id<Unit> &unit);
    void empty();

    Workplace &m_work;
    QStringList m_files;
    QLabel *m_says;
    SmallPictures *m_pictures;
    QPushButton *m_take;
    UnitField *m_other;
};

} // namespace ts
