#include "views/widgets/locale_text.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace ts::shown {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("ts::shown", text);
}

// Digits of whole minor units with the locale's groups and decimal sign; never by way of a double.
QString digits(qint64 minor, int decimals)
{
    const QLocale locale;
    qint64 unit = 1;
    for (int i = 0; i < decimals; ++i)
        unit *= 10;
    const qint64 size = qAbs(minor);
    QString text = locale.toString(size / unit);
    if (decimals > 0)
        text += locale.decimalPoint() + QStringLiteral("%1").arg(size % unit, decimals, 10, QLatin1Char('0'));
    return minor < 0 ? QStringLiteral("−") + text : text;
}

QString withSign(const QString &text, const Currency &currency)
{
    const QString sign = currency.sign();
    return text.startsWith(QStringLiteral("−")) ? QStringLiteral("−") + sign + text.mid(1) : sign + text;
}

// The locale's day and month, without the year and without the day of the week.
QString dayMonthFormat()
{
    QString format = QLocale().dateFormat(QLocale::LongFormat);
    static const QRegularExpression others(QStringLiteral("[,\\s]*\\bd{3,4}\\b[,\\s]*|[,\\s]*(?:'[^']*')?\\s*\\by{2,4}\\b[,\\s]*"));
    format.remove(others);
    return format.replace(QLatin1String("MMMM"), QLatin1String("MMM")).trimmed();
}

} // namespace

QString money(const Money &money)
{
    return withSign(amount(money), money.currency());
}

QString moneyRound(const Money &money)
{
    qint64 unit = 1;
    for (int i = 0; i < money.currency().decimals(); ++i)
        unit *= 10;
    return withSign(digits(money.scaled(1, unit, Rounding::HalfUp).minor(), 0), money.currency());
}

QString amount(const Money &money)
{
    return digits(money.minor(), money.currency().decimals());
}

QString day(const QDate &day)
{
    return QLocale().toString(day, dayMonthFormat());
}

QString day(const QDate &day, const QDate &today)
{
    return day.year() == today.year() ? shown::day(day) : QLocale().toString(day, dayMonthFormat() + QStringLiteral(" yyyy"));
}

QString dayLong(const QDate &day)
{
    return QLocale().toString(day, QLocale::LongFormat);
}

QString dayLong(const QDate &day, const QDate &today)
{
    QString format = QLocale().dateFormat(QLocale::LongFormat);
    static const QRegularExpression year(QStringLiteral("[,\\s]*(?:'[^']*')?\\s*\\by{2,4}\\b[,\\s]*"));
    return day.year() == today.year() ? QLocale().toString(day, format.remove(year)) : dayLong(day);
}

QString time(const QDateTime &instant)
{
    // Where no locale is set, its short form would count seconds.
    const QLocale locale;
    const QTime local = instant.toLocalTime().time();
    return locale.language() == QLocale::C ? local.toString(QStringLiteral("HH:mm")) : locale.toString(local, QLocale::ShortFormat);
}

QString dayAndTime(const QDateTime &instant)
{
    return day(instant.toLocalTime().date()) + QLatin1Char(' ') + time(instant);
}

QString duration(qint64 minutes)
{
    const qint64 size = qAbs(minutes);
    const QString text = tr("%1 h %2 m").arg(QLocale().toString(size / 60), QStringLiteral("%1").arg(size % 60, 2, 10, QLatin1Char('0')));
    return minutes < 0 ? QStringLiteral("−") + text : text;
}

QString percent(double share)
{
    return tr("%1 %").arg(QLocale().toString(qRound(share * 100)));
}

QString number(double value)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(value, 'g', QLocale::FloatingPointShortest);
}

QString count(qint64 count)
{
    return QLocale().toString(count);
}

Expected<Money> parseMoney(const QString &typed, const Currency &currency)
{
    QString text = typed.trimmed();
    const QLocale locale;
    // "1.234,50" and "1 234,50" are read as the locale writes them; a lone sign stays what Money::parse makes of it.
    if (text.contains(locale.groupSeparator()) && text.contains(locale.decimalPoint()))
        text.remove(locale.groupSeparator());
    return Money::parse(text, currency);
}

} // namespace ts::shown
