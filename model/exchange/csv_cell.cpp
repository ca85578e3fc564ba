#include "model/exchange/csv_cell.h"

namespace ts {

namespace {

bool isDigit(QChar c)
{
    return c >= u'0' && c <= u'9';
}

/// Sign, digits, at most one decimal point or comma, an exponent: what a spreadsheet reads as a number, not as a sum.
bool isPlainNumber(QStringView text)
{
    qsizetype i = text.startsWith(u'-') || text.startsWith(u'+') ? 1 : 0;
    qsizetype digits = 0;
    for (; i < text.size() && isDigit(text.at(i)); ++i)
        ++digits;
    if (i < text.size() && (text.at(i) == u'.' || text.at(i) == u','))
        for (++i; i < text.size() && isDigit(text.at(i)); ++i)
            ++digits;
    if (digits == 0)
        return false;
    if (i < text.size() && (text.at(i) == u'e' || text.at(i) == u'E')) {
        ++i;
        if (i < text.size() && (text.at(i) == u'-' || text.at(i) == u'+'))
            ++i;
        const qsizetype start = i;
        while (i < text.size() && isDigit(text.at(i)))
            ++i;
        if (i == start)
            return false;
    }
    return i == text.size();
}

/// Words and ordinary punctuation only: no bracket, bar, exclamation mark, sign of a sum or quotation mark, so nothing can be
/// called.
bool isProse(QStringView text)
{
    if (text.isEmpty() || !text.front().isLetter())
        return false;
    for (const QChar c : text)
        if (!c.isLetterOrNumber() && !c.isMark() && !QStringView(u" .,;?'-/").contains(c))
            return false;
    return true;
}

QStringView withoutApostrophes(QStringView cell)
{
    while (cell.startsWith(u'\''))
        cell = cell.mid(1);
    return cell;
}

} // namespace

bool wouldRun(QStringView cell, CsvFor reader)
{
    if (cell.isEmpty())
        return false;
    switch (cell.front().unicode()) {
    case u'=':
    case u'@':
    case u'\t':
    case u'\r':
    case u'\n':
    case 0xFF0B: // full-width + - = @
    case 0xFF0D:
    case 0xFF1D:
    case 0xFF20:
        return true;
    case u'+':
    case u'-':
        return !isPlainNumber(cell) && !(reader == CsvFor::Standard && isProse(cell.mid(1)));
    default:
        return false;
    }
}

QString defused(const QString &cell, CsvFor reader)
{
    return wouldRun(withoutApostrophes(cell), reader) ? QLatin1Char('\'') + cell : cell;
}

QString restored(const QString &cell, CsvFor reader)
{
    return cell.startsWith(u'\'') && wouldRun(withoutApostrophes(cell), reader) ? cell.mid(1) : cell;
}

} // namespace ts
