#include "model/sums/category_facts.h"

namespace ts {

namespace {

/// One line of the table: "record and erase: record erase".
AcceptanceArea area(const char *line)
{
    const QString text = QString::fromUtf8(line);
    return {text.section(QLatin1Char(':'), 0, 0), text.section(QLatin1Char(':'), 1).split(QLatin1Char(','), Qt::SkipEmptyParts)};
}

WornParts worn(const char *line, bool byPosition = false)
{
    const AcceptanceArea parts = area(line);
    return {parts.name, parts.words, byPosition};
}

QList<AcceptanceArea> areas(std::initializer_list<const char *> lines)
{
    QList<AcceptanceArea> all;
    for (const char *line : lines)
        all << area(line);
    return all;
}

const auto electrolytics = "Electrolytic capacitors:capacitor,electrolytic,cap,recap";

} // namespace

CategoryFacts factsOf(Category category)
{
    using enum Hazard;
    switch (category) {
    case Category::DiscPlayer:
        return {true,
                true,
                {Mains, Laser},
                areas({"loading and ejecting:load,eject,tray,drawer",
                       "reading pressed and recordable discs:pressed,recordable,read,disc,toc",
                       "first, middle and last track, search and pause:track,search,pause,skip",
                       "line and digital outlets:outlet,output,line,digital", "headphone outlet:headphone",
                       "keys, display and remote:key,button,display,remote"}),
                {worn("Laser pickup (hours unknown):pickup,laser,optical"), worn("Tray belt:belt"), worn(electrolytics, true)}};
    case Category::CassetteDeck:
        return {
            true,
            true,
            {Mains},
            areas({"play at the start, middle and end of a tape:play,both direction", "fast wind both ways:wind,rewind,fast",
                   "auto-stop:auto-stop,auto stop,autostop", "speed and flutter:speed,flutter,wow", "azimuth:azimuth",
                   "record and erase:record,erase", "noise reduction:noise reduction,nr", "meters and counter:meter,counter,vu",
                   "line inlets and outlets:outlet,output,line,input,inlet", "headphone outlet:headphone"}),
            {worn("Belts:belt"), worn("Pinch roller:pinch"), worn("Heads (worn as they came):head"), worn(electrolytics, true)}};
    case Category::Turntable:
        return {true,
                true,
                {Mains},
                areas({"each speed, cold and warm:speed,rpm,strobe",
                       "automatic start, lift and return:automatic,auto,lift,lower,return,cue", "anti-skate:skat", "hum:hum",
                       "both channels alike:channel,balance,outlet,output", "condition of the stylus:stylus,cartridge"}),
                {worn("Stylus (hours unknown):stylus,cartridge"), worn("Drive belt or idler:belt,idler")}};
    case Category::AmplifierReceiver:
        return {true,
                true,
                {Mains, StoredCharge, ValveHighTension, Lifting},
                areas({"every inlet to every outlet:input,inlet,source,outlet,output", "phono with a record:phono",
                       "tape loop:tape", "every control silent:control,pot,switch,volume,balance,tone",
                       "output offset and idle current after hours of load:offset,idle,bias",
                       "protection relay and its delay:protect,relay", "headphone outlet:headphone",
                       "both sets of speaker terminals:speaker,terminal,load"}),
                {worn(electrolytics, true), worn("Lamps:lamp,bulb"), worn("Speaker relay:relay")}};
    case Category::Tuner:
        return {true,
                true,
                {Mains},
                areas({"stations across the band, weak ones too:station,band,sensitivity,reception",
                       "stereo and separation:stereo,separation", "muting and meters:muting,mute,meter",
                       "drift after half an hour:drift", "presets after an hour unplugged:preset,memory",
                       "AM with its loop:am,loop", "outlets alike:outlet,output,channel"}),
                {worn("Dial lamps:lamp,bulb"), worn("Memory cell or backup capacitor:cell,battery,backup"),
                 worn(electrolytics, true)}};
    case Category::ReelRecorder:
        return {true,
                true,
                {Mains, StoredCharge, ValveHighTension, Lifting},
                areas({"every speed and reel size:speed,reel", "play and record:play,record",
                       "fast wind and stopping from it at full and empty reel:wind,stop,brake",
                       "auto-stop:auto-stop,auto stop,autostop", "flutter:flutter,wow", "meters and counter:meter,counter,vu",
                       "heads looked at:head"}),
                {worn("Pinch roller:pinch"), worn("Belts and idlers:belt,idler"), worn("Brake felts:brake,felt"),
                 worn("Heads (worn as they came):head"), worn(electrolytics, true)}};
    case Category::Loudspeaker:
        return {
            false,
            false,
            {Lifting},
            areas({"a slow sweep at normal listening level:sweep", "each driver by itself:driver,woofer,tweeter,midrange,cone",
                   "controls and terminals:control,terminal,switch", "the pair compared:pair,match,both"}),
            {worn("Cone surrounds:surround"), worn("Crossover capacitors:capacitor,electrolytic,cap,recap", true)}};
    case Category::Radio:
        return {
            true,
            true,
            {Mains, StoredCharge, ValveHighTension, LiveChassis, OldMaterials},
            areas({"every band:band,station,reception", "hum:hum", "tone and volume controls:tone,volume,control",
                   "pick-up socket:pick-up,pickup,gram", "two hours with the cabinet closed:cabinet,closed,temperature",
                   "back, knobs and their screws insulated:back,knob,grub", "mains lead and its polarity:lead,polarity,plug"}),
            {worn("Paper and coupling capacitors:coupling,paper,capacitor,cap,recap", true),
             worn("Smoothing capacitors:smoothing,electrolytic,recap"), worn("Valves:valve"), worn("Dial lamps:lamp,bulb")}};
    case Category::GameConsole:
        return {true,
                true,
                {Mains, SwitchingPrimary, Laser, Lithium},
                areas({"three titles for an hour each:title,game,cartridge,disc",
                       "saving, and reading back a day later:save,reload,memory", "picture on its standard:video,picture,av,rgb",
                       "both controller ports:controller,pad,port", "card slots:card,slot",
                       "the last owner's data erased:erase,data,wipe"}),
                {worn("Save cell:cell,battery"), worn(electrolytics, true)}};
    case Category::OldComputer:
        return {true,
                true,
                {Mains, SwitchingPrimary, StoredCharge, PictureTube, Lithium},
                areas({"every key:key", "every port:port,serial,parallel,connector",
                       "drives read and write:drive,disk,floppy,read,write", "memory test:memory,ram",
                       "picture:picture,video,monitor,display", "the last owner's data dealt with:data,erase,image,wipe"}),
                {worn("Backup battery:battery,cell"), worn("Mains filter capacitors:filter,safety capacitor,x2"),
                 worn(electrolytics, true)}};
    case Category::TestGear:
        return {true,
                true,
                {Mains, StoredCharge, PictureTube, Lifting, TestGearPrecaution},
                areas({"every range against something better known:range,against,reference,accuracy",
                       "self-test:self-test,self test,selftest", "probes and leads:probe,lead",
                       "every control and socket:control,socket,switch,knob"}),
                {worn("Tantalum and electrolytic capacitors:tantalum,capacitor,electrolytic,cap,recap", true),
                 worn("Memory cell:cell,battery")}};
    case Category::Other:
        break;
    }
    return {true,
            true,
            {Mains, StoredCharge},
            areas({"every function once:function,works,operat", "every control:control,switch,knob,key,button"}),
            {}};
}

bool mainsPowered(const Unit &unit)
{
    if (unit.protectionClass == ProtectionClass::III)
        return false;
    const QString plate = unit.mains.toLower();
    if (plate.contains(QLatin1String("hz")) || plate.contains(QLatin1String("ac")))
        return true;
    if (plate.contains(QLatin1String("dc")) || plate.contains(QLatin1String("batter")) || plate.contains(QLatin1String("none")))
        return false;
    return !plate.trimmed().isEmpty() || unit.protectionClass.has_value() || factsOf(unit.category).mainsPowered;
}

} // namespace ts
