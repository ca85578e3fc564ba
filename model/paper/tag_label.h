#pragma once

#include "model/records/unit_file.h"
#include "model/values/expected.h"

#include <QSizeF>
#include <QStringList>

class QPainter;

namespace ts {

/// What one label says, as plain text.
struct LabelFacts {
    QString tag;         ///< the number, also what the codes say
    QString beside;      ///< "box 1 of 2", "step 3"
    QString name;
    QString doNotPower;  ///< why; empty: nothing is recorded against it
    QStringList lines;   ///< what else, most needed first; what has no room is left out
};
/// The labels of one print, all of one size.
struct Labels {
    QString title;
    QDateTime madeAt;
    QSizeF millimetres;
    QList<LabelFacts> labels;
};

/// Sizes of labels that are sold everywhere, in millimetres, width by height: "54x25", "89x36" …
[[nodiscard]] QStringList commonLabelSizes();
/// "62x29", "62 x 29 mm". Refused: what is no size, below 25 × 12 mm or above 210 × 297 mm.
[[nodiscard]] Expected<QSizeF> labelSize(const QString &text);

/// The tag labels of a unit, one for each of its boxes: number, name, do-not-power flag with its reason, place, stage, what it waits for, whose it is,
/// since when it is here.
[[nodiscard]] Labels tagLabels(const UnitFile &file, const BenchFile &bench, const QSizeF &millimetres, const QDateTime &now, int boxes = 1);
/// Labels for the small bags of what is off, one a teardown step: unit, step, from where, count. Refused where nothing is off.
[[nodiscard]] Expected<Labels> bagLabels(const UnitFile &file, const QSizeF &millimetres, const QDateTime &now);

/// One label onto a painter scaled to 96 units per inch, its top left corner at the origin. Black alone: label printers know no other.
void paintLabel(QPainter &painter, const LabelFacts &label, const QSizeF &millimetres);
/// A page a label, of the label's own size. Refuses where there is no QGuiApplication.
[[nodiscard]] Expected<QByteArray> labelsPdf(const Labels &labels);
/// The same as one web page that needs no other file. UTF-8.
[[nodiscard]] QByteArray labelsHtml(const Labels &labels);

} // namespace ts
