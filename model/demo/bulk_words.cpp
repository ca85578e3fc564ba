#include "model/demo/bulk_words.h"

#include <array>

namespace ts {

namespace {

QStringList split(const char *words)
{
    return QString::fromLatin1(words).split(QLatin1Char('|'));
}

struct Trade {
    const char *noun;
    const char *letters;
    int share; ///< of a hundred units, about as a hi-fi bench meets them; our own guess
    const char *pieces;
    const char *symptoms;
};

// In the order of Category.
constexpr std::array trades{
    Trade{"disc player", "D", 16, "lens|drawer belt|sled rail|spindle motor|pickup ribbon|output socket|standby regulator|laser|drawer gear",
          "drawer stops half way|no disc on most discs|skips near the end|right output silent|display dim|opens by itself|slow to find the first track"},
    Trade{"cassette deck", "KD", 18, "take-up clutch|idler tyre|capstan belt|pinch roller|record switch|playback head|head lead|mode gear|counter belt",
          "take-up reel stops after a few seconds|left channel weak|pitch wavers|treble dull on both channels|does not record|chews tape|door does not open"},
    Trade{"turntable", "TT", 14, "belt|centre bearing|ground wire|headshell contacts|cam grease|speed trimmer|muting switch|stylus|signal lead",
          "platter slow and drifting|hum on both channels|arm does not lift|right channel drops out|skates across the record|rumble at 33"},
    Trade{"amplifier", "A", 17, "volume control|speaker relay|idle current trimmer|protection capacitor|source switch|dial lamp|output transistor|bridge rectifier",
          "left channel comes and goes|crackles when the volume is turned|protection does not let go|hum with the volume down|one side runs hot|dial dark"},
    Trade{"tuner", "T", 6, "dial lamp|decoder oscillator|band switch|dial cord|tuning capacitor|memory cell|discriminator coil",
          "stereo lamp flickers|dial dark|stations at the wrong mark|scratches while tuning|presets forgotten|weak on all stations"},
    Trade{"reel recorder", "R", 4, "pinch roller|motor run capacitor|brake band|drive belt|record relay|level control|capstan bearing",
          "wow and growl in play|slow to reach speed|spills tape on stop|one channel low|does not record|squeals"},
    Trade{"loudspeakers, pair", "L", 5, "foam surround|tweeter coil|crossover capacitor|level control|input terminal|dust cap",
          "buzzes at low notes|one tweeter silent|left and right sound different|crackles at the terminal"},
    Trade{"radio", "P", 7, "supply electrolytic|battery contact|volume control|wave switch|coupling capacitor|dial cord|output transistor",
          "dead on batteries|motorboats above half volume|crackles when tuned|hum on mains|weak on medium wave"},
    Trade{"game console", "G", 5, "cartridge slot|supply jack|save cell|surface electrolytic|lens|controller membrane",
          "black screen, lamp on|saves are lost|resets when the plug is moved|one button dead|picture rolls"},
    Trade{"home computer", "H", 4, "memory chip|outside supply|keyboard membrane|mains filter capacitor|clock cell|drive belt",
          "black screen|keys dead in one row|drive does not read|smell from the supply|restarts when warm"},
    Trade{"test instrument", "S", 3, "tantalum capacitor|range switch|input fuse|fan|memory cell|trace supply",
          "no output on any range|one range reads low|fan noisy|settings forgotten|no trace"},
    Trade{"unit", "X", 1, "mains switch|lead|regulator|socket", "dead|works now and then|hums"}};

const Trade &tradeOf(Category category)
{
    return trades[static_cast<size_t>(category)];
}

} // namespace

Category BulkWords::category()
{
    int draw = m_dice.whole(0, 99);
    for (size_t i = 0; i < trades.size(); ++i)
        if ((draw -= trades[i].share) < 0)
            return static_cast<Category>(i);
    return Category::Other;
}

QString BulkWords::maker()
{
    static const QStringList first = split("Pell|Ard|Bren|Tarr|Quen|Wex|Sol|Dun|Cad|Ilver|Hesper|Hal|Fenn|Umber|Yar|Vesk");
    static const QStringList last = split("worth|moor|low|ick|by|mere|vane|fold|gate|wick|combe|ridge");
    const QString beginning = one(first); // one after the other: the order of two operands is not fixed
    return beginning + one(last);
}

QString BulkWords::makerModel(Category category)
{
    return QString::fromLatin1(tradeOf(category).letters) + QLatin1Char('-') + QString::number(m_dice.whole(1, 90));
}

QString BulkWords::noun(Category category) const
{
    return QString::fromLatin1(tradeOf(category).noun);
}

QString BulkWords::piece(Category category)
{
    return one(split(tradeOf(category).pieces));
}

QString BulkWords::symptom(Category category)
{
    return one(split(tradeOf(category).symptoms));
}

QString BulkWords::cause(Category category)
{
    static const QStringList faults = split("worn|dirty|dry|hard|open|broken under its sleeve|out of set|cracked|leaking|loose|shorted");
    const QString what = piece(category);
    return what + QLatin1Char(' ') + one(faults);
}

QString BulkWords::step(Category category)
{
    static const QStringList verbs = split("cleaned the|renewed the|greased the|soldered the|set the|looked at the|measured the|washed and oiled the");
    const QString verb = one(verbs);
    return verb + QLatin1Char(' ') + piece(category);
}

QString BulkWords::note()
{
    static const QStringList notes =
        split("One lid screw is not original.|Seller says it worked two years ago.|Smoker's house: film on everything.|Compare with the next one of this model.|"
              "Fuse is right, type and value.|Somebody has been in: flux round the regulator.|Asked for the manual, none to be had.|Runs warm but steady.|"
              "Connector marked blue on both halves.|Buyer writes that all is well.|Photographed the parcel before opening.|Second opinion wanted on the hum.");
    return one(notes);
}

QString BulkWords::place()
{
    const QChar row(u'A' + m_dice.whole(0, 7));
    return QStringLiteral("shelf %1%2").arg(row).arg(m_dice.whole(1, 9));
}

QString BulkWords::person()
{
    static const QStringList first = split("Ada|Bram|Celia|Dov|Edith|Fergus|Greta|Hugh|Ines|Jonas|Kitty|Leopold|Mira|Noel|Olive|Piers");
    static const QStringList last = split("Farrow|Wrenn|Haddow|Ravell|Sedge|Marl|Tolland|Quill|Brack|Ember|Lisle|Tarn|Yarrow|Pell");
    const QString given = one(first);
    return given + QLatin1Char(' ') + one(last);
}

} // namespace ts
