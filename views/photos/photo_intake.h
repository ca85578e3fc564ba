#pragma once

#include "model/media/prepared_photo.h"
#include "views/photos/photo_source.h"
#include "views/widgets/background.h"
#include "views/workplace.h"

#include <QQueue>

namespace ts {

/// Puts photos on units. Each is made ready in a thread of its own; what is good of one lot is recorded as one change, and of each bad
/// one it is said why.
class PhotoIntake : public QObject {
    Q_OBJECT
public:
    explicit PhotoIntake(Workplace &workplace, QObject *parent = nullptr);

    /// Puts the photos on a unit, with the phase that its stage tells.
    void take(const QList<PhotoSource> &sources, const Id<Unit> &unit);
    [[nodiscard]] bool isBusy() const { return !m_lots.isEmpty(); }
    /// Leaves those that were not begun; those that are ready are recorded.
    void stop();

Q_SIGNALS:
    void began(const QString &what);
    void advanced(int done, int total);
    void ended();

private:
    struct Lot {
        Unit unit;
        QList<PhotoSource> waiting;
        int total = 0;
        Change change;
        QSet<QString> there; ///< what the unit has already, by SHA-256
        QStringList refused;
    };
    void beginLot();
    void next();
    void arrived(const Expected<PreparedPhoto> &photo);
    void keep(Lot &lot, const PreparedPhoto &photo);
    void endLot();

    Workplace &m_work;
    QQueue<Lot> m_lots;
    int m_number = 0; ///< of the lot in work, so that a late answer of an earlier one is dropped
    Background m_background;
};

} // namespace ts
