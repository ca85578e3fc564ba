#pragma once

#include "model/sums/reckon.h"
#include "views/workplace.h"

#include <QWidget>

class QGridLayout;
class QLabel;
class QPushButton;

namespace ts {

class AskLine;
class CurveChart;

/// One sum: its fields, what comes out while they are being filled, its formula and source.
class SumForm : public QWidget {
    Q_OBJECT
public:
    explicit SumForm(Workplace &workplace, QWidget *parent = nullptr);
    void show(const Sum &sum);
    void focusFirst();
    /// What is in the fields, by key.
    [[nodiscard]] SumInput given() const;
    void work();
    void refreshUnit(); ///< another unit is in hand, or none

private:
    void addField(const SumKey &key, int row);
    void showOutput(const SumOutput &out);
    void note();
    void askPoint();
    bool takeReading(const QString &point);
    /// What can stand as a reading: the first figure that has a unit.
    [[nodiscard]] QString readingText() const;

    Workplace &m_work;
    Sum m_sum;
    SumOutput m_out;
    QMap<QString, QWidget *> m_fields;
    QLabel *m_title;
    QLabel *m_says;
    QWidget *m_asks = nullptr;
    QWidget *m_results = nullptr;
    QLabel *m_trouble;
    QLabel *m_source;
    CurveChart *m_curve;
    QPushButton *m_note;
    QPushButton *m_reading;
    AskLine *m_ask;
};

} // namespace ts
