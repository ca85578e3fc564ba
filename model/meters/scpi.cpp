#include "model/meters/scpi.h"

#include <QList>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;

namespace ts {

QString MeterIdentity::text() const
{
    QStringList words;
    for (const QString &word : {maker, model})
        if (!word.isEmpty())
            words << word;
    const QString name = words.isEmpty() ? u"a meter without a name"_s : words.join(u' ');
    return serial.isEmpty() ? name : name + u", "_s + serial;
}

namespace scpi {

namespace {

constexpr double infinity = 9.9e37;     // SCPI-99 volume 1, 7.2.1.4
constexpr double notANumber = 9.91e37;  // 7.2.1.5

/// As much of a reply as a sentence can show; what is no printable ASCII as dots.
QString seen(QByteArray line)
{
    line.truncate(40);
    for (char &c : line)
        if (c < 32 || c > 126)
            c = '.';
    return QString::fromLatin1(line).simplified();
}

QRegularExpressionMatch numberIn(const QByteArray &line)
{
    static const QRegularExpression form(uR"(^\s*([+-]?)(\d*)(?:\.(\d*))?(?:[eE]([+-]?\d{1,3}))?\s*$)"_s);
    const auto match = form.match(QString::fromLatin1(line));
    return match.captured(2).isEmpty() && match.captured(3).isEmpty() ? QRegularExpressionMatch() : match;
}

/// Without the quotation marks of a string (IEEE 488.2, 8.7.8) and in capitals.
QByteArray bare(const QByteArray &line)
{
    QByteArray text = line.trimmed().toUpper();
    text.replace('"', "").replace('\'', "");
    return text;
}

bool isKeyword(const QByteArray &word, const char *shortForm, const char *longForm)
{
    return word == shortForm || word == longForm;
}

} // namespace

Expected<MeterIdentity> identityFrom(const QByteArray &line)
{
    const auto fields = line.split(',');
    const bool printable = std::all_of(line.begin(), line.end(), [](char c) { return c >= 32 && c < 127; });
    if (fields.size() < 3 || fields.size() > 4 || !printable)
        return Trouble{u"The meter did not say who it is"_s, u"it answered \"%1\""_s.arg(seen(line)), u"check speed, parity and the cable"_s};
    const auto field = [&fields](qsizetype i) {
        const QString text = QString::fromLatin1(fields.value(i)).simplified();
        return text == u"0"_s ? QString() : text;
    };
    return MeterIdentity{field(0), field(1), field(2), field(3)};
}

Expected<Quantity> valueFrom(const QByteArray &line, const Measure &measure)
{
    const auto match = numberIn(line);
    bool ok = false;
    const double value = match.hasMatch() ? line.trimmed().toDouble(&ok) : 0;
    if (!ok || !std::isfinite(value))
        return Trouble{u"The meter's reply \"%1\" is no number"_s.arg(seen(line)), {}, {}};
    const double size = std::abs(value);
    if (std::abs(size - notANumber) < 1e33)
        return Trouble{u"The meter says that it has no number to give (9.91E+37)"_s, {}, u"check its range and its function"_s};
    if (std::abs(size - infinity) < 1e33)
        return Quantity(0, measure, Sense::OverRange);
    return Quantity(value, measure);
}

double stepOf(const QByteArray &line)
{
    const auto match = numberIn(line);
    if (!match.hasMatch())
        return 0;
    return std::pow(10.0, match.captured(4).toInt() - static_cast<int>(match.captured(3).size()));
}

std::optional<Measure> measureOf(const QByteArray &line)
{
    const QByteArray function = bare(line).split(' ').first();
    const QList<QByteArray> parts = function.split(':');
    const QByteArray &first = parts.first() == "SENS" || parts.first() == "SENSE" ? parts.value(1) : parts.first();
    static const struct {
        const char *shortForm;
        const char *longForm;
        const char *unit;
    } known[] = {{"VOLT", "VOLTAGE", "V"},   {"CURR", "CURRENT", "A"},     {"RES", "RESISTANCE", "ohm"}, {"FRES", "FRESISTANCE", "ohm"}, {"FREQ", "FREQUENCY", "Hz"},
                 {"PER", "PERIOD", "s"},     {"CAP", "CAPACITANCE", "F"},  {"DIOD", "DIODE", "V"},       {"CONT", "CONTINUITY", "ohm"},  {"TEMP", "TEMPERATURE", "°C"}};
    for (const auto &each : known)
        if (isKeyword(first, each.shortForm, each.longForm) && !function.contains("RAT"))
            return Measure::parse(QString::fromUtf8(each.unit)).value();
    return std::nullopt;
}

bool isFunction(const QByteArray &line)
{
    static const QRegularExpression form(u"^[\"']?[A-Za-z][A-Za-z:]+[\"' ,0-9.A-Za-z+-]*$"_s);
    return line.size() < 60 && line.count(',') < 3 && form.match(QString::fromLatin1(line.trimmed())).hasMatch();
}

bool takesValue(const QByteArray &query)
{
    static const QRegularExpression form(u"^:?(READ|FETC|FETCH|MEAS|MEASURE)(:[A-Z]+\\d?){0,4}\\?$"_s, QRegularExpression::CaseInsensitiveOption);
    return form.match(QString::fromLatin1(query)).hasMatch() && !query.endsWith('\n');
}

bool onlyReads(const QByteArray &command)
{
    return takesValue(command) || command == "*IDN?" || command == "FUNC?" || command == "SYST:REM" || command == "SYST:LOC";
}

} // namespace scpi
} // namespace ts
