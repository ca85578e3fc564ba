#pragma once

#include "model/paper/document_pages.h"
#include "model/paper/template_filler.h"
#include "model/records/unit_file.h"
#include "model/values/expected.h"

namespace ts {

/// Everything that a putting-back sheet says, as plain text: the teardown read backwards, with what each step needs.
struct PuttingBackFacts {
    struct Step {
        int number = 0; ///< in which it came off
        QString what;
        QString fasteners; ///< as written; their count where nothing was
        QStringList more;  ///< springs, connectors, marks
        QString keptIn;
        QString caution;
    };
    int number = 0; ///< of the paper; 0: a draft
    int edition = 0;
    QDateTime madeAt;
    QString tag;
    QString stage; ///< of the unit at that time
    QString name;
    QStringList identity;
    QString benchName;
    QString worker;
    QString date;
    QString doNotPower; ///< why; empty: nothing is recorded against it
    QString whereAt;
    QString next;
    QList<Step> steps;   ///< what is off, last off first: the order to put back
    QStringList back;    ///< put back already
    QStringList leftOut; ///< with the reason
    QString loose;       ///< "18 screws, 1 clip"
    QString otherLoose;
    QStringList cautions;
};

/// The facts as they stand. Refused where nothing of the unit is off.
[[nodiscard]] Expected<PuttingBackFacts> gatherPuttingBack(const UnitFile &file, const BenchFile &bench, const QDateTime &now);

/// "Putting-back sheet 3, edition 1"; without a number it says that it is a draft.
[[nodiscard]] QString sheetName(const PuttingBackFacts &facts);

/// The sheet as one web page that needs no other file. UTF-8.
[[nodiscard]] QByteArray puttingBackHtml(const PuttingBackFacts &facts);

/// The sheet as a PDF with its fonts inside; the same facts give the same bytes. Refuses where there is no QGuiApplication.
[[nodiscard]] Expected<QByteArray> puttingBackPdf(const PuttingBackFacts &facts, PageSize size);

} // namespace ts
