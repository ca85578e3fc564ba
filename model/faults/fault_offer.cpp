#include "model/faults/fault_offer.h"

#include "model/faults/alike.h"
#include "model/faults/fault_board.h"
#include "model/faults/starting_weights.h"

#include <cmath>

namespace ts {

namespace {

QString percent(double share)
{
    return QStringLiteral("%1 %").arg(std::lround(share * 100));
}

template <class Item>
qsizetype placeOf(const QList<Item> &items, const QString &text)
{
    for (qsizetype i = 0; i < items.size(); ++i)
        if (items[i].text.compare(text, Qt::CaseInsensitive) == 0)
            return i;
    return -1;
}

} // namespace

QList<FaultOffer> offersOf(const StartingTable &table)
{
    const QString value = table.own ? QStringLiteral("your own table") : QStringLiteral("starting value");
    QList<FaultOffer> offers;
    for (const TableSymptom &symptom : table.symptoms) {
        FaultOffer offer;
        offer.from =
            table.own ? QStringLiteral("your own table of the category") : QStringLiteral("starting values of the category");
        offer.symptom = symptom.symptom;
        offer.somethingElse = symptom.somethingElse;
        offer.elseFrom = value;
        QStringList keys;
        for (const TableCause &cause : symptom.causes) {
            QStringList named;
            for (const QString &key : cause.sources) {
                named << QString(key).replace(QLatin1Char('_'), QLatin1Char(' '));
                if (!keys.contains(key))
                    keys << key;
            }
            offer.causes << OfferedCause{cause.cause,
                                         cause.weight,
                                         0,
                                         named.isEmpty() ? value
                                                         : QStringLiteral("%1 (%2)").arg(value, named.join(QStringLiteral(", "))),
                                         cause.fixMinutes,
                                         {},
                                         {}};
        }
        for (const TableCause &cause : symptom.causes) {
            OfferedCheck check{cause.check, cause.minutes, cause.normal, {}};
            check.marks << OfferedMark{placeOf(offer.causes, cause.cause)};
            for (const QString &other : cause.also)
                check.marks << OfferedMark{placeOf(offer.causes, other)};
            offer.checks << check;
        }
        offer.basis << table.status;
        for (const QString &key : keys)
            offer.basis << table.sources.value(key);
        offers << offer;
    }
    return offers;
}

QList<FaultOffer> offersOf(const NotesFile &notes)
{
    QList<FaultOffer> offers;
    const auto offerOf = [&](const QString &symptom) -> FaultOffer & {
        for (FaultOffer &offer : offers)
            if (offer.symptom.compare(symptom, Qt::CaseInsensitive) == 0)
                return offer;
        offers << FaultOffer{};
        offers.last().from = QStringLiteral("notes on this model");
        offers.last().symptom = symptom;
        return offers.last();
    };
    QHash<Id<KnownCause>, qsizetype> places;
    QHash<QString, QList<Cause>> weighed; // to share the weights out as on a board
    for (const KnownCause &known : notes.all<KnownCause>()) {
        FaultOffer &offer = offerOf(known.symptom);
        places.insert(known.id, offer.causes.size());
        offer.causes << OfferedCause{known.text,   0, 0, QStringLiteral("notes on this model"), known.fixMinutes, known.fixCost,
                                     known.fixOdds};
        Cause cause;
        cause.text = known.text;
        cause.weight = known.weight;
        weighed[offer.symptom] << cause;
    }
    for (FaultOffer &offer : offers) {
        const QList<double> weights = startingWeights(weighed.value(offer.symptom));
        for (qsizetype i = 0; i < offer.causes.size(); ++i)
            offer.causes[i].weight = weights[i];
        offer.somethingElse = weights.size() > offer.causes.size() ? weights.last() : 0;
        offer.elseFrom = offer.from;
        offer.basis << QStringLiteral("From the notes on this model.");
    }
    for (const KnownCheck &known : notes.all<KnownCheck>()) {
        OfferedCheck check{known.text, known.minutes, known.wanted, {}};
        for (const KnownMark &mark : notes.all<KnownMark>())
            if (mark.check == known.id && places.contains(mark.cause))
                check.marks << OfferedMark{places.value(mark.cause), mark.abnormalIf, mark.abnormalIfNot};
        for (FaultOffer &offer : offers)
            if (offer.symptom.compare(known.symptom, Qt::CaseInsensitive) == 0)
                offer.checks << check;
    }
    return offers;
}

qsizetype offerFor(const QList<FaultOffer> &offers, const QString &symptom)
{
    qsizetype best = -1;
    double most = 0;
    for (qsizetype i = 0; i < offers.size(); ++i) {
        const double same = sharedWords(offers[i].symptom, symptom) + (alike(offers[i].symptom, symptom) ? 1 : 0);
        if (same > most && same >= 0.2) {
            best = i;
            most = same;
        }
    }
    return best;
}

FaultOffer blended(FaultOffer offer, const Unit &unit, const QList<SolvedCause> &solved)
{
    const auto sameModel = [&](const SolvedCause &each) {
        return !unit.makerModel.trimmed().isEmpty() &&
               each.makerModel.simplified().compare(unit.makerModel.simplified(), Qt::CaseInsensitive) == 0 &&
               each.maker.simplified().compare(unit.maker.simplified(), Qt::CaseInsensitive) == 0;
    };
    const auto sameSymptom = [&](const SolvedCause &each) {
        return alike(each.symptom, offer.symptom) || placeOf(offer.causes, each.cause) >= 0;
    };
    QList<SolvedCause> ofModel, ofCategory;
    for (const SolvedCause &each : solved)
        if (each.category == unit.category && sameSymptom(each))
            (sameModel(each) ? ofModel : ofCategory) << each;
    const bool model = !ofModel.isEmpty();
    const QList<SolvedCause> &own = model ? ofModel : ofCategory;
    if (own.isEmpty())
        return offer;
    const double all = static_cast<double>(own.size());
    int elsewhere = 0;
    for (const SolvedCause &each : own) {
        qsizetype place = placeOf(offer.causes, each.cause);
        for (qsizetype i = 0; place < 0 && i < offer.causes.size(); ++i)
            if (alike(offer.causes[i].text, each.cause))
                place = i;
        if (place < 0 && isSomethingElse(each.cause)) {
            ++elsewhere;
            continue;
        }
        if (place < 0) {
            place = offer.causes.size();
            offer.causes << OfferedCause{each.cause, 0, 0, {}, each.fixMinutes, {}, {}};
        }
        ++offer.causes[place].count;
    }
    const QString of = QStringLiteral("%1 closed units of this %2")
                           .arg(own.size())
                           .arg(model ? QStringLiteral("model") : QStringLiteral("category"));
    const auto blend = [&](double weight, int count) { return (pseudoUnits * weight + count) / (pseudoUnits + all); };
    for (OfferedCause &cause : offer.causes) {
        const QString before =
            cause.from.isEmpty() ? QString() : QStringLiteral("; %1 %2").arg(cause.from, percent(cause.weight));
        cause.from = QStringLiteral("%1 of your %2%3").arg(cause.count).arg(of, before);
        cause.weight = blend(cause.weight, cause.count);
    }
    offer.somethingElse = blend(offer.somethingElse, elsewhere);
    offer.basis.prepend(QStringLiteral("Your %1 count beside it; the rest counts as %2 units.").arg(of).arg(pseudoUnits));
    return offer;
}

Expected<Change> bringIn(const UnitFile &file, const Id<Symptom> &symptom, const FaultOffer &offer, Maker &maker)
{
    Change change;
    const auto fresh = [&]<class R>(R record, const QString &text) {
        record.unit = file.unit.id;
        record.symptom = symptom;
        record.text = text;
        return record;
    };
    const auto there = [&]<class R>(const QList<R> &records, const QString &text) -> const R * {
        for (const R &each : records)
            if (!each.removed && each.symptom == symptom && each.text.simplified().compare(text, Qt::CaseInsensitive) == 0)
                return &each;
        return nullptr;
    };
    QList<Id<Cause>> causes;
    int newCauses = 0, newChecks = 0;
    for (const OfferedCause &offered : offer.causes) {
        if (const Cause *known = there(file.all<Cause>(), offered.text)) {
            causes << known->id;
            continue;
        }
        Cause cause = fresh(maker.fresh<Cause>(), offered.text);
        cause.weight = offered.weight;
        cause.weightFrom = offered.from;
        cause.fixMinutes = offered.fixMinutes;
        cause.fixCost = offered.fixCost;
        cause.fixOdds = offered.fixOdds;
        causes << cause.id;
        change.add(cause);
        ++newCauses;
    }
    if (newCauses > 0 && offer.somethingElse > 0 && !there(file.all<Cause>(), somethingElse())) {
        Cause rest = fresh(maker.fresh<Cause>(), somethingElse());
        rest.weight = offer.somethingElse;
        rest.weightFrom = offer.elseFrom;
        change.add(rest);
    }
    for (const OfferedCheck &offered : offer.checks) {
        if (there(file.all<Check>(), offered.text))
            continue;
        Check check = fresh(maker.fresh<Check>(), offered.text);
        check.minutes = offered.minutes;
        check.wanted = offered.wanted;
        change.add(check);
        ++newChecks;
        for (const OfferedMark &mark : offered.marks) {
            Bearing bearing = maker.fresh<Bearing>();
            bearing.unit = file.unit.id;
            bearing.check = check.id;
            bearing.cause = causes[mark.cause];
            bearing.abnormalIf = mark.abnormalIf;
            bearing.abnormalIfNot = mark.abnormalIfNot;
            change.add(bearing);
        }
    }
    if (change.isEmpty())
        return Trouble{QStringLiteral("Nothing was brought in"), QStringLiteral("all of it is on the board already"), {}};
    change.setSentence(QStringLiteral("Brought in from %1: %2 causes, %3 checks").arg(offer.from).arg(newCauses).arg(newChecks));
    return change;
}

} // namespace ts
