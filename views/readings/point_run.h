#pragma once

#include "model/sums/point_rows.h"
#include "views/workplace.h"

#include <QFrame>

class QLabel;
class QLineEdit;
class QPushButton;

namespace ts {

/// The test points of a unit one after the other, large, for hands that hold probes: type a value and press Enter; Space, or whatever key
/// a foot switch sends, goes on without one. Left and right stand side by side.
class PointRun : public QFrame {
    Q_OBJECT
public:
    /// Reads a value at a place; answers whether it was taken.
    using Take = std::function<bool(const PointRow &point, const QString &typed)>;

    PointRun(Workplace &workplace, Take take, QWidget *parent = nullptr);
    /// Begins at the first point that was not read in the phase, or at `from` where one is named.
    void begin(const QList<PointRow> &points, Phase phase, const QUuid &from = {});
    /// What is known of the points now; the place stays.
    void refresh(const QList<PointRow> &points);
    [[nodiscard]] bool isRunning() const { return m_running; }
    [[nodiscard]] Phase phase() const { return m_phase; }
    [[nodiscard]] QString at() const; ///< the name of the point in turn
    [[nodiscard]] QLineEdit *field() const { return m_field; }
    void finish();

Q_SIGNALS:
    void finished();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void show();
    void step(int by);
    void take();
    void keepForMean();
    [[nodiscard]] bool readNow(const PointRow &point) const;
    /// The point of the other channel: named alike, L for R.
    [[nodiscard]] const PointRow *partner(const PointRow &point) const;
    [[nodiscard]] QString lastRead(const PointRow &point) const;

    Workplace &m_work;
    Take m_take;
    QList<PointRow> m_points;
    Phase m_phase = Phase::AsFound;
    int m_at = 0;
    bool m_running = false;
    QStringList m_repeats;
    QLabel *m_place;
    QLabel *m_name;
    QLabel *m_wanted;
    QLabel *m_last;
    QLabel *m_other;
    QLabel *m_mean;
    QLineEdit *m_field;
    QPushButton *m_switch;
};

} // namespace ts
