#include "model/paper/pdf_date.h"

namespace ts {

namespace {

/// Moves every place behind `from` by `shift` in the cross-reference table (ISO 32000-1, 7.5.4: lines of ten digits, a
/// blank, five digits, a blank, n or f) and in the number after startxref.
void shiftPlaces(QByteArray &pdf, qsizetype from, qsizetype shift)
{
    const QByteArray key("startxref\n");
    const qsizetype last = pdf.lastIndexOf(key);
    const qsizetype end = pdf.indexOf('\n', last + key.size());
    if (last < 0 || end < 0)
        return;
    const qsizetype table = pdf.mid(last + key.size(), end - last - key.size()).toLongLong() + shift;
    pdf.replace(last + key.size(), end - last - key.size(), QByteArray::number(table));
    // "xref", the line with the count, then the entries.
    for (qsizetype line = pdf.indexOf('\n', pdf.indexOf('\n', table) + 1) + 1; line > 0 && line + 18 <= pdf.size();
         line = pdf.indexOf('\n', line) + 1) {
        bool isNumber = false;
        const qsizetype place = pdf.mid(line, 10).toLongLong(&isNumber);
        if (!isNumber || (pdf.at(line + 17) != 'n' && pdf.at(line + 17) != 'f'))
            break;
        if (place > from)
            pdf.replace(line, 10, QByteArray::number(place + shift).rightJustified(10, '0'));
    }
}

} // namespace

void setCreationDate(QByteArray &pdf, const QDateTime &at)
{
    const QByteArray key("/CreationDate (D:");
    const qsizetype from = pdf.indexOf(key) + key.size();
    const qsizetype to = pdf.indexOf(')', from);
    if (from < key.size() || to < 0)
        return;
    const QByteArray date = at.toUTC().toString(QStringLiteral("yyyyMMddhhmmss")).toLatin1() + "Z";
    const qsizetype shift = date.size() - (to - from);
    pdf.replace(from, to - from, date);
    shiftPlaces(pdf, from, shift); // also by nothing: it writes the last number without the blanks that Qt leaves behind it
}

} // namespace ts
