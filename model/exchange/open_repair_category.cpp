#include "model/exchange/open_repair.h"

#include <QRegularExpression>

#include <array>

namespace ts::openrepair {

namespace {

QString lastPart(const QString &partnerCategory)
{
    return partnerCategory.mid(partnerCategory.lastIndexOf(QLatin1Char('~')) + 1).simplified();
}

struct Clue {
    Category category;
    const char *phrase;
};

// Phrases that name a kind of equipment, as people write them in English, French and Italian files. A phrase counts where it
// begins a word; plural endings follow by themselves.
constexpr std::array clues{
    Clue{Category::Turntable, "turntable"},
    Clue{Category::Turntable, "turn table"},
    Clue{Category::Turntable, "record player"},
    Clue{Category::Turntable, "record deck"},
    Clue{Category::Turntable, "lp player"},
    Clue{Category::Turntable, "gramophone"},
    Clue{Category::Turntable, "tourne disque"},
    Clue{Category::Turntable, "platine vinyle"},
    Clue{Category::Turntable, "giradischi"},
    Clue{Category::ReelRecorder, "reel to reel"},
    Clue{Category::ReelRecorder, "open reel"},
    Clue{Category::CassetteDeck, "cassette"},
    Clue{Category::CassetteDeck, "casette"},
    Clue{Category::CassetteDeck, "tape deck"},
    Clue{Category::CassetteDeck, "tape player"},
    Clue{Category::CassetteDeck, "/tape"},
    Clue{Category::DiscPlayer, "cd"},
    Clue{Category::DiscPlayer, "dvd"},
    Clue{Category::DiscPlayer, "blu ray"},
    Clue{Category::DiscPlayer, "minidisc"},
    Clue{Category::DiscPlayer, "mini dis"},
    Clue{Category::DiscPlayer, "disc player"},
    Clue{Category::AmplifierReceiver, "ampli"},
    Clue{Category::AmplifierReceiver, "receiver"},
    Clue{Category::Tuner, "tuner"},
    Clue{Category::Loudspeaker, "speaker"},
    Clue{Category::Loudspeaker, "loudspeaker"},
    Clue{Category::Loudspeaker, "loud speaker"},
    Clue{Category::Loudspeaker, "baffle"},
    Clue{Category::Loudspeaker, "enceinte"},
    Clue{Category::Loudspeaker, "subwoofer"},
    Clue{Category::Loudspeaker, "sub woofer"},
    Clue{Category::Loudspeaker, "soundbar"},
    Clue{Category::Loudspeaker, "sound bar"},
    Clue{Category::Loudspeaker, "barre de son"},
    Clue{Category::Radio, "radio"},
    Clue{Category::GameConsole, "games console"},
    Clue{Category::GameConsole, "game console"},
};

// What is named with one of these is a thing beside the equipment, or an instrument, or several things in one.
constexpr std::array besides{"controller", "remote", "cable",    "charger", "guitar", "bass amp",   "vhs",
                             "video",      "tv",     "freeview", "car ",    "dock",   "microphone", "headphone"};

bool stands(QLatin1String phrase, const QString &text)
{
    for (qsizetype at = text.indexOf(phrase); at >= 0; at = text.indexOf(phrase, at + 1))
        if (at == 0 || !QChar(phrase.front()).isLetter() || !text.at(at - 1).isLetter())
            return true;
    return false;
}

/// The one kind of equipment that the words name; none where they name none or several.
std::optional<Category> named(const QString &words)
{
    const QString text = words.toLower().replace(QLatin1Char('-'), QLatin1Char(' '));
    for (const char *word : besides)
        if (stands(QLatin1String(word), text))
            return std::nullopt;
    std::optional<Category> found;
    for (const Clue &clue : clues) {
        if ((found && *found == clue.category) || !stands(QLatin1String(clue.phrase), text))
            continue;
        if (found)
            return std::nullopt;
        found = clue.category;
    }
    return found;
}

/// The words before the first full stop, comma or dash, at most four of them: in records without a partner's category people
/// begin with what the thing is ("Turntable not turning"). Further on, a loudspeaker or a cassette is a part of it.
QString opening(const QString &problem)
{
    static const QRegularExpression end(QStringLiteral("[.,;:(]| - "));
    return problem.left(problem.indexOf(end)).simplified().section(QLatin1Char(' '), 0, 2);
}

} // namespace

Category category(const QString &productCategory, const QString &partnerCategory, const QString &problem)
{
    enum Numbers {
        DesktopComputer = 4,
        Handheld = 10,
        HiFiIntegrated = 12,
        HiFiSeparates = 13,
        PortableRadio = 23,
        TvAccessories = 33,
        GamesConsole = 38
    };
    const int number = categoryNumber(productCategory);
    switch (number) {
    case DesktopComputer:
        return Category::OldComputer;
    case PortableRadio:
        return Category::Radio;
    case GamesConsole:
        return Category::GameConsole;
    case Handheld:
    case HiFiIntegrated:
    case HiFiSeparates:
    case TvAccessories:
        break;
    default:
        return Category::Other;
    }
    const QString part = lastPart(partnerCategory);
    if (!part.isEmpty() && part.compare(productCategory.simplified(), Qt::CaseInsensitive) != 0)
        return named(part).value_or(Category::Other);
    return number == HiFiSeparates ? named(opening(problem)).value_or(Category::Other) : Category::Other;
}

QString itemName(const QString &productCategory, const QString &partnerCategory)
{
    QString name = lastPart(partnerCategory);
    if (name.isEmpty())
        name = productCategory.simplified();
    name = name.left(120);
    if (!name.isEmpty())
        name[0] = name.at(0).toUpper();
    return name;
}

ProductCategory productCategory(Category category)
{
    switch (category) {
    case Category::DiscPlayer:
    case Category::CassetteDeck:
    case Category::Turntable:
    case Category::AmplifierReceiver:
    case Category::Tuner:
    case Category::ReelRecorder:
    case Category::Loudspeaker:
        return {QStringLiteral("Hi-Fi separates"), 13};
    case Category::Radio:
        return {QStringLiteral("Portable radio"), 23};
    case Category::GameConsole:
        return {QStringLiteral("Games console"), 38};
    case Category::OldComputer:
        return {QStringLiteral("Desktop computer"), 4};
    case Category::TestGear: // the standard counts a multimeter there
        return {QStringLiteral("Small home electrical"), 28};
    case Category::Other:
        break;
    }
    return {QStringLiteral("Misc"), 18};
}

} // namespace ts::openrepair
