#include "model/records/notes_file.h"
#include "model/sums/category_facts.h"
#include "model/sums/standing.h"

namespace ts {

namespace {

// In our own words, after common bench practice. Each that can hurt badly ends by deferring to whoever has the say where
// the bench stands: nothing here replaces local codes or a licensed person.
QString textOf(Hazard hazard)
{
    switch (hazard) {
    case Hazard::Mains:
        return QStringLiteral("Mains: unplug before the cover comes off, and do not trust the switch. If a live part must be "
                              "measured, use a supply with a "
                              "residual-current device and an isolating transformer, keep one hand away, stay dry, take off "
                              "rings, and have somebody near. "
                              "Local codes come first; leave to a licensed person what they reserve for one.");
    case Hazard::StoredCharge:
        return QStringLiteral("Stored charge: large capacitors hold it with the plug out. Discharge them through a resistor made "
                              "for it, never a tool, then measure, "
                              "and measure again some minutes later. If you are not practised in this, leave it to somebody "
                              "qualified under local rules.");
    case Hazard::SwitchingPrimary:
        return QStringLiteral(
            "Switch-mode supply: its primary side stands at rectified mains, over 300 V DC on 230 V, and stays charged after "
            "unplugging. "
            "Discharge through a resistor and measure before touching it; local codes and licensed practice come first.");
    case Hazard::PictureTube:
        return QStringLiteral(
            "Picture tube, if it has one: the anode holds thousands of volts for a long time. Discharge it through a resistor to "
            "the tube's own earth, "
            "wear goggles, never lift it by the neck. Leave it to somebody trained in this work, as local rules ask.");
    case Hazard::Laser:
        return QStringLiteral("Laser: the working beam is invisible. Keep the mechanism closed or the lens turned away, never "
                              "look into it, and leave interlocks "
                              "working; local laser safety rules come first.");
    case Hazard::Lithium:
        return QStringLiteral("Lithium cells: never short, heat or pierce one; a swollen cell comes out and is not charged or "
                              "posted. Local waste and carriage rules apply.");
    case Hazard::ValveHighTension:
        return QStringLiteral("Valve high tension, if it has valves: 200 to 600 V DC on the chassis, present for a while after "
                              "switching off. Discharge through a resistor "
                              "and measure before touching. Local codes and licensed practice come first.");
    case Hazard::LiveChassis:
        return QStringLiteral(
            "Live chassis, possibly: in sets without a mains transformer, and in some with one, metal and screws can stand at "
            "mains. Measure before "
            "touching, work behind an isolating transformer, and never hand it over without back, knobs and screw covers. "
            "Local codes decide whether it may be sold to be used.");
    case Hazard::Lifting:
        return QStringLiteral("Weight: lift from the heavy side, close to the body, with a second person above 25 kg or what "
                              "local work rules allow.");
    case Hazard::OldMaterials:
        return QStringLiteral("Old materials, possibly: asbestos pads near hot parts, PCB in capacitors, luminous dials, "
                              "selenium rectifiers. Do not sand, blow, scrape or "
                              "open them; local rules say who may remove them and where they go.");
    case Hazard::TestGearPrecaution:
        return QStringLiteral("Test gear: an inlet's outer contact is usually earth, so do not hang it on a live chassis. Some "
                              "power parts hold beryllium oxide: "
                              "do not break or sand them; local rules say where they go.");
    }
    return {};
}

bool needsMains(Hazard hazard)
{
    switch (hazard) {
    case Hazard::Mains:
    case Hazard::StoredCharge:
    case Hazard::SwitchingPrimary:
    case Hazard::PictureTube:
    case Hazard::ValveHighTension:
    case Hazard::LiveChassis:
        return true;
    default:
        return false;
    }
}

// What the hazard is to somebody who leaves the cover on: the name of what is inside, or a sentence where that is not enough.
struct ForReceiver {
    QString inside;
    QString sentence;
};

ForReceiver forReceiver(Hazard hazard)
{
    switch (hazard) {
    case Hazard::Mains:
        return {QStringLiteral("mains voltage"), {}};
    case Hazard::StoredCharge:
    case Hazard::SwitchingPrimary:
        return {QStringLiteral("charge that stays after the plug is out"), {}};
    case Hazard::PictureTube:
        return {QStringLiteral("very high voltage if it has a picture tube"), {}};
    case Hazard::Laser:
        return {QStringLiteral("an invisible laser beam"), {}};
    case Hazard::ValveHighTension:
        return {QStringLiteral("high tension if it has valves"), {}};
    case Hazard::OldMaterials:
        return {QStringLiteral("possibly materials that must not be disturbed"), {}};
    case Hazard::Lithium:
        return {{}, QStringLiteral("If it has a lithium cell: do not short, heat or post it loose; waste and carriage rules apply.")};
    case Hazard::LiveChassis:
        return {{}, QStringLiteral("Sets of this kind can have a live chassis: use it only with its back, knobs and screw covers in place, as "
                                   "local codes allow.")};
    case Hazard::Lifting:
        return {{}, QStringLiteral("It may be heavy: lift it close to the body, and with two where it is over 25 kg.")};
    case Hazard::TestGearPrecaution:
        return {{}, QStringLiteral("The outer contact of an inlet is usually earth: do not connect it to a live chassis.")};
    }
    return {};
}

/// The hazards of the unit's category, less those that need mains where it has none.
QList<Hazard> hazardsOf(const Unit &unit)
{
    const bool mains = mainsPowered(unit);
    QList<Hazard> hazards = factsOf(unit.category).hazards;
    if (mains && !hazards.contains(Hazard::Mains))
        hazards.prepend(Hazard::Mains); // an active loudspeaker
    if (!mains)
        hazards.removeIf([](Hazard hazard) { return needsMains(hazard); });
    return hazards;
}

/// What the notes on this unit's model warn of.
QStringList modelCautions(const UnitFile &file, const BenchFile &bench)
{
    QStringList lines;
    for (const ModelNotes &notes : bench.all<ModelNotes>())
        if (areOf(notes, file.unit))
            for (const QString &line : notes.cautions.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
                lines << line.trimmed();
    return lines;
}

} // namespace

QStringList cautions(const UnitFile &file, const BenchFile &bench)
{
    QStringList all;
    const auto say = [&all](const QString &text) {
        if (!text.isEmpty() && !all.contains(text))
            all << text;
    };
    for (const LeftOff &left : file.all<LeftOff>())
        if (!left.removed && !left.doNotPower.trimmed().isEmpty())
            say(QStringLiteral("Do not power: ") + left.doNotPower.trimmed());
    for (const TeardownItem &item : file.all<TeardownItem>())
        if (!item.removed && item.state == TeardownState::Off && !item.caution.trimmed().isEmpty())
            say(item.what + QStringLiteral(": ") + item.caution.trimmed());
    for (const QString &line : modelCautions(file, bench))
        say(line);
    for (const Hazard hazard : hazardsOf(file.unit))
        say(textOf(hazard));
    return all;
}

QStringList handoverCautions(const UnitFile &file, const BenchFile &bench)
{
    QStringList all = modelCautions(file, bench);
    QStringList inside;
    QStringList sentences;
    for (const Hazard hazard : hazardsOf(file.unit)) {
        const ForReceiver text = forReceiver(hazard);
        if (!text.inside.isEmpty() && !inside.contains(text.inside))
            inside << text.inside;
        if (!text.sentence.isEmpty())
            sentences << text.sentence;
    }
    if (!inside.isEmpty()) {
        const QString last = inside.size() > 1 ? QStringLiteral(" and ") + inside.takeLast() : QString();
        all << QStringLiteral("Inside there is %1%2. Opening it is for somebody qualified; local codes and licensed practice come first.")
                   .arg(inside.join(QStringLiteral(", ")), last);
    }
    return all + sentences;
}

} // namespace ts
