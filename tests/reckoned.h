#pragma once

#include "model/sums/reckon.h"
#include "tests/testing.h"

#include <QFile>

#include <cmath>

namespace ts::testing {

/// One line of a call: "discharge|capacitance=100u|resistance=10k|from=450|to=60".
inline Expected<SumOutput> reckonLine(const QString &line)
{
    SumInput given;
    const QStringList parts = line.split(QLatin1Char('|'));
    for (const QString &pair : parts.mid(1))
        given.insert(pair.section(QLatin1Char('='), 0, 0).trimmed(), pair.section(QLatin1Char('='), 1).trimmed());
    return reckon(parts.first().trimmed(), given);
}

/// What a call gives under a key; undefined where it was refused or has no such key.
inline QJsonValue reckoned(const QString &line, const QString &key)
{
    const auto out = reckonLine(line);
    if (!out) {
        qWarning("%s", qPrintable(out.trouble().sentence()));
        return QJsonValue(QJsonValue::Undefined);
    }
    for (const auto &[name, value] : *out)
        if (name == key)
            return value;
    return QJsonValue(QJsonValue::Undefined);
}

/// Columns of a table of calls with the figure that each must give; expected NaN stands for null.
inline void figureColumns()
{
    QTest::addColumn<QString>("call");
    QTest::addColumn<QString>("key");
    QTest::addColumn<double>("expected");
    QTest::addColumn<double>("within"); ///< absolute; 0 is exact
}

inline void figure(const char *row, const char *call, const char *key, double expected, double within = 0)
{
    QTest::addRow("%s %s", row, key) << QString::fromUtf8(call) << QString::fromUtf8(key) << expected << within;
}

/// Holds the fetched row to its figure.
inline void holdFigure()
{
    QFETCH(QString, call);
    QFETCH(QString, key);
    QFETCH(double, expected);
    QFETCH(double, within);
    const QJsonValue value = reckoned(call, key);
    if (std::isnan(expected)) {
        QVERIFY2(value.isNull(), qPrintable(call));
        return;
    }
    QVERIFY2(value.isDouble(), qPrintable(call));
    QVERIFY2(
        std::abs(value.toDouble() - expected) <= within,
        qPrintable(QStringLiteral("%1: %2, wanted %3").arg(call).arg(value.toDouble(), 0, 'g', 15).arg(expected, 0, 'g', 15)));
}

/// Lines of a file of published values as cells by column name; empty where the folder is not there. A cell in quotes may
/// hold commas.
inline QList<QHash<QString, QString>> published(const QString &file)
{
    QFile opened(sharedFolder() + QStringLiteral("/checks/") + file);
    if (sharedFolder().isEmpty() || !opened.open(QIODevice::ReadOnly))
        return {};
    const auto cells = [](const QString &line) {
        QStringList list{QString()};
        bool quoted = false;
        for (const QChar c : line) {
            if (c == QLatin1Char('"'))
                quoted = !quoted;
            else if (c == QLatin1Char(',') && !quoted)
                list << QString();
            else
                list.last() += c;
        }
        return list;
    };
    QList<QHash<QString, QString>> rows;
    const QStringList lines = QString::fromUtf8(opened.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    const QStringList names = cells(lines.value(0).trimmed());
    for (const QString &line : lines.mid(1)) {
        const QStringList row = cells(line.trimmed());
        QHash<QString, QString> byName;
        for (qsizetype i = 0; i < names.size(); ++i)
            byName.insert(names.at(i), row.value(i));
        rows << byName;
    }
    return rows;
}

} // namespace ts::testing
