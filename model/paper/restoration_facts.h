#pragma once

#include <QByteArray>
#include <QDate>
#include <QDateTime>
#include <QList>
#include <QString>
#include <QStringList>

namespace ts {

/// Everything that a restoration sheet says, as plain text and in the order it is printed: gathered once from the records,
/// then laid out as paper or as a web page. Nothing in it is escaped yet. An empty text or list means "not recorded".
struct RestorationFacts {
    struct Picture {
        QByteArray jpeg;
        int width = 0;
        int height = 0;
        QString caption;
    };
    /// One symptom with what was found and done about it; `seen` is empty in the row of work that belongs to none.
    struct Work {
        QString seen;
        QString conditions;
        QString state; ///< "still open"; empty where it was cleared
        QStringList causes;
        QStringList done;
    };
    /// One value of a reading: "47 gf·cm" and its 95 % uncertainty "± 2 gf·cm".
    struct Value {
        QString text;
        QString spread;
    };
    struct Measured {
        QString what;
        QString conditions;
        QString wanted;
        QString source; ///< who says what is wanted
        Value found;
        Value during; ///< only where the point was not measured as it leaves
        Value leaves;
        QString meter;
        QString verdict; ///< word of the enum: "within", "outside", "too_close_to_call", "no_limit"; of `leaves`
        QString verdictText;
        bool repeated = false; ///< more readings of this point are on record than shown
        QString chance;        ///< "72 % likely within", where too close to call
        bool byFigureAlone = false; ///< judged, but its uncertainty is not on record
    };
    struct Proved {
        QString text;
        QString result;
        QString cameOut; ///< word of the outcome; of a reading, of its verdict
        QString cameOutText;
        QString instrument;
        QString by;                 ///< date and initials
        bool made = false;          ///< it says how something came out
        bool byFigureAlone = false; ///< as in Measured
    };
    struct Soaked {
        QString name;
        QString length; ///< "4 h 10 min", "still running"
        QString interruptions;
        QString conditions;
        QString readings; ///< "25 readings from 47.1 to 48.2 °C, wanted up to 60 °C"
        QString verdict;  ///< as in Measured, of the worst reading; empty where nothing was wanted
        QString verdictText;
        bool byFigureAlone = false; ///< as in Measured, of any of its readings
    };
    struct Fitted {
        QString what;
        QString position;
        QString oldValue;
        int quantity = 1;
    };
    struct Safety {
        QString protectionClass;
        QString ruleSets;
        QList<Proved> checks;
        bool recorded = false; ///< at least one check was passed or failed
        bool measured = false; ///< at least one row is a reading held against its own limit
        bool untested = false; ///< something of it is named under "not done"
    };
    /// A plain line with its heading: "Looks", "clean, lid scratched".
    struct Labelled {
        QString label;
        QString text;
    };

    QString tag;
    int number = 0;  ///< of this sheet among the bench's; 0 while it is a draft that was not handed over
    int edition = 0; ///< of this unit's sheets, from 1
    QString stage;   ///< of the unit at that time: "proving", "closed, sold"
    QString name;
    QStringList identity; ///< "Serial 1180427", "made about 1988" …
    QString benchName;
    QStringList benchAddress;
    QString worker;
    QDateTime madeAt;
    QString date;
    QStringList notices; ///< before everything else: it must not be powered, it was scrapped
    QString saidBy; ///< "The seller said", "The owner said"
    QString claim;
    QList<Picture> pictures;
    QList<Work> work;
    QList<Measured> measured;
    QString oneMeter; ///< the meter of all readings, where it is one
    QList<Proved> proved; ///< without those that were not tested: they stand in notDone
    QList<Soaked> soaked;
    QList<Fitted> fitted;
    QStringList notDone;
    QList<Labelled> buyer;
    QStringList flaws;
    Safety safety;
    QStringList use;
    QStringList cautions;
    QString terms;
};

} // namespace ts
