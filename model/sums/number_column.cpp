#include "model/sums/number_column.h"

#include "model/values/quantity.h"

#include <QFile>
#include <QRegularExpression>
#include <QStringList>

namespace ts {

namespace {

constexpr qint64 largest = 100'000'000;

/// The cells of a line; quotes may enclose one, a doubled quote is one.
QStringList cellsOf(const QString &line, QChar separator)
{
    QStringList cells;
    QString cell;
    bool quoted = false;
    for (const QChar c : line) {
        if (c == QLatin1Char('"'))
            quoted = !quoted;
        else if (c == separator && !quoted) {
            cells << cell.trimmed();
            cell.clear();
        } else
            cell += c;
    }
    return cells << cell.trimmed();
}

QChar separatorOf(const QString &line)
{
    for (const QChar each : {QLatin1Char('\t'), QLatin1Char(';'), QLatin1Char(',')})
        if (line.contains(each))
            return each;
    return QLatin1Char(',');
}

} // namespace

Expected<QList<double>> numbersOf(const QString &text)
{
    static const QRegularExpression separators(QStringLiteral("[\\s,;]+"));
    QList<double> numbers;
    for (const QString &part : text.split(separators, Qt::SkipEmptyParts)) {
        const auto number = parseNumber(part);
        if (!number)
            return number.trouble();
        numbers << *number;
    }
    return numbers;
}

Expected<QList<double>> numbersInFile(const QString &path, const QString &column)
{
    const QString did = QStringLiteral("Cannot read numbers from %1").arg(path);
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return Trouble{did, file.errorString(), QStringLiteral("choose another file")};
    if (file.size() > largest)
        return Trouble{did, QStringLiteral("it is over 100 MB"), QStringLiteral("give a smaller file")};
    const QByteArray bytes = file.read(largest + 1);
    if (bytes.contains('\0'))
        return Trouble{did, QStringLiteral("it is no text"), QStringLiteral("give a CSV file")};
    QString text = QString::fromUtf8(bytes);
    text.remove(QChar(0xFEFF));

    QList<double> numbers;
    qsizetype place = -1;
    QChar separator;
    int lineNumber = 0;
    for (const QString &line : text.split(QLatin1Char('\n'))) {
        ++lineNumber;
        if (line.trimmed().isEmpty())
            continue;
        const bool first = place < 0;
        if (first)
            separator = separatorOf(line);
        const QStringList cells = cellsOf(line, separator);
        if (first) {
            QStringList names;
            for (const QString &cell : cells)
                names << cell.toLower();
            place = column.isEmpty() ? std::max(names.indexOf(QStringLiteral("y")), names.indexOf(QStringLiteral("value")))
                                     : names.indexOf(column.trimmed().toLower());
            if (place < 0 && cells.size() == 1 && column.isEmpty())
                place = 0;
            if (place < 0)
                return Trouble{did,
                               column.isEmpty() ? QStringLiteral("it has %1 columns").arg(cells.size())
                                                : QStringLiteral("it has no column \"%1\"").arg(column),
                               QStringLiteral("name one of its columns: ") + cells.join(QStringLiteral(", "))};
            if (!parseNumber(cells.at(place)))
                continue; // a header
        }
        const auto number = parseNumber(cells.value(place));
        if (!number)
            return Trouble{
                did, QStringLiteral("line %1 has \"%2\", which is no number").arg(lineNumber).arg(cells.value(place).left(40)),
                QStringLiteral("correct the line")};
        numbers << *number;
    }
    if (numbers.isEmpty())
        return Trouble{did, QStringLiteral("there is no number in it"), QStringLiteral("choose another file")};
    return numbers;
}

} // namespace ts
