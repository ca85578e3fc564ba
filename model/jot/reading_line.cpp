#include "model/jot/reading_line.h"

#include "model/jot/phrase.h"

namespace ts {

namespace {

qsizetype equalsSign(const QString &line)
{
    for (qsizetype i = line.indexOf(QLatin1Char('=')); i >= 0; i = line.indexOf(QLatin1Char('='), i + 1)) {
        const QChar before = i > 0 ? line.at(i - 1) : QChar();
        if (before != QLatin1Char('<') && before != QLatin1Char('>') && before != QLatin1Char('!'))
            return i;
    }
    return -1;
}

std::optional<Phase> phaseOf(const QString &word)
{
    if (word == QLatin1String("found"))
        return Phase::AsFound;
    if (word == QLatin1String("during"))
        return Phase::DuringWork;
    if (word == QLatin1String("after") || word == QLatin1String("leaves"))
        return Phase::AsItLeaves;
    return std::nullopt;
}

bool isSpread(const QString &piece, qsizetype at, qsizetype *length)
{
    for (const QString &sign : {QStringLiteral("±"), QStringLiteral("+-"), QStringLiteral("+/-")})
        if (QStringView(piece).mid(at).startsWith(sign)) {
            *length = sign.size();
            return true;
        }
    return false;
}

/// Behind a limit "±" is the limit's own; elsewhere it begins the uncertainty of the reading.
bool beginsSpread(const QString &piece)
{
    qsizetype length = 0;
    return isSpread(piece, 0, &length);
}

bool beginsClause(const QString &word)
{
    return word == QLatin1String("want") || word == QLatin1String("wanted") || word == QLatin1String("with") ||
           word == QLatin1String("at") || word.startsWith(QLatin1Char('@'));
}

/// Words that say how a value was taken or how it behaved; they stand behind its unit and are kept as conditions.
bool saysHow(const QString &word)
{
    static const QStringList words{
        QStringLiteral("dc"),       QStringLiteral("ac"),       QStringLiteral("rms"),      QStringLiteral("pp"),
        QStringLiteral("p-p"),      QStringLiteral("pk-pk"),    QStringLiteral("peak"),     QStringLiteral("pk"),
        QStringLiteral("steady"),   QStringLiteral("unsteady"), QStringLiteral("unstable"), QStringLiteral("stable"),
        QStringLiteral("drifting"), QStringLiteral("noisy"),    QStringLiteral("rising"),   QStringLiteral("falling")};
    return words.contains(word);
}

class Splitter {
public:
    ReadingLine line;

    void run(const QStringList &all)
    {
        for (qsizetype i = 0; i < all.size(); ++i)
            take(all, i);
        const auto joined = [](const QStringList &list) { return list.join(QLatin1Char(' ')); };
        while (m_value.size() > 1 && saysHow(m_value.last().toLower()))
            m_conditions.prepend(m_value.takeLast());
        line.value = joined(m_value);
        line.spread = joined(m_spread);
        line.want = joined(m_want);
        line.meter = joined(m_meter);
        line.conditions = joined(m_conditions);
    }

private:
    void take(const QStringList &all, qsizetype &i)
    {
        const QString &piece = all.at(i);
        const QString word = piece.toLower();
        if ((word == QLatin1String("want") || word == QLatin1String("wanted")) && !line.wants) {
            line.wants = true;
            m_current = &m_want;
        } else if (word == QLatin1String("with") && m_meter.isEmpty() && i + 1 < all.size()) {
            m_current = &m_meter;
        } else if (word == QLatin1String("at") && i + 1 < all.size()) {
            startConditions({});
        } else if (word.startsWith(QLatin1Char('@'))) {
            startConditions(piece.mid(1));
        } else if (m_current != &m_value && m_current != &m_want && m_spread.isEmpty() && beginsSpread(piece)) {
            takeSpread(piece);
        } else if (takePhase(all, i)) {
        } else if (m_current == &m_value) {
            takeValue(piece);
        } else {
            *m_current << piece;
        }
    }

    void takeSpread(const QString &piece)
    {
        qsizetype length = 0;
        (void)isSpread(piece, 0, &length);
        m_current = &m_spread;
        if (piece.size() > length)
            m_spread << piece.mid(length);
    }

    void startConditions(const QString &first)
    {
        if (!m_conditions.isEmpty() && !m_conditions.last().endsWith(QLatin1Char(',')))
            m_conditions.last() += QLatin1Char(',');
        m_current = &m_conditions;
        if (!first.isEmpty())
            m_conditions << first;
    }

    /// "found", "during", "after", also "as found" and "as it leaves", at the end or before another clause. With more words
    /// behind it
    /// ("after ten minutes") it is a condition.
    bool takePhase(const QStringList &all, qsizetype &i)
    {
        qsizetype at = i;
        if (all.at(at).compare(QLatin1String("as"), Qt::CaseInsensitive) == 0) {
            ++at;
            if (at < all.size() && all.at(at).compare(QLatin1String("it"), Qt::CaseInsensitive) == 0)
                ++at;
        }
        if (at >= all.size())
            return false;
        const auto phase = phaseOf(all.at(at).toLower());
        if (!phase)
            return false;
        const QString next = at + 1 < all.size() ? all.at(at + 1).toLower() : QString();
        if (!next.isEmpty() && !beginsClause(next) && !beginsSpread(next) && !phaseOf(next) && next != QLatin1String("as")) {
            if (m_current == &m_value || m_current == &m_spread)
                startConditions({});
            return false;
        }
        line.phase = phase;
        i = at;
        m_current = &m_conditions;
        return true;
    }

    void takeValue(const QString &piece)
    {
        for (qsizetype at = 0, length = 0; at < piece.size(); ++at)
            if (isSpread(piece, at, &length)) {
                if (at > 0)
                    m_value << piece.left(at);
                takeSpread(piece.mid(at));
                return;
            }
        m_value << piece;
    }

    QStringList m_value, m_spread, m_want, m_meter, m_conditions;
    QStringList *m_current = &m_value;
};

} // namespace

std::optional<ReadingLine> splitReading(const QString &line)
{
    const qsizetype at = equalsSign(line);
    if (at <= 0 || line.left(at).trimmed().isEmpty())
        return std::nullopt;
    Splitter splitter;
    splitter.line.name = line.left(at).simplified();
    splitter.run(pieces(line.mid(at + 1)));
    return splitter.line;
}

NamedUnder splitName(const QString &name)
{
    const qsizetype at = name.indexOf(QLatin1Char('@'));
    if (at <= 0 || name.left(at).trimmed().isEmpty() || name.mid(at + 1).trimmed().isEmpty())
        return {name, {}};
    return {name.left(at).trimmed(), name.mid(at + 1).trimmed()};
}

} // namespace ts
