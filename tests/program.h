#pragma once

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QtTest>

#include "tests/testing.h"

namespace ts::testing {

/// What one run of the program came to.
struct Answer {
    int status = -1;
    QString out;
    QString err;

    [[nodiscard]] QJsonObject json() const { return QJsonDocument::fromJson(out.toUtf8()).object(); }
    /// For the test's report.
    [[nodiscard]] QByteArray told() const
    {
        return QStringLiteral("exit %1\nout: %2\nerr: %3").arg(status).arg(out.left(2000), err.left(2000)).toUtf8();
    }
};

inline Answer finished(QProcess &process, const QString &program, const QStringList &arguments)
{
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    for (const auto *name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM", "TURNSCREW_TRACE"}) // a bare console
        environment.remove(QLatin1String(name));
    environment.insert(QStringLiteral("USER"), QStringLiteral("tester"));
    environment.insert(QStringLiteral("TZ"), QStringLiteral("UTC"));
    process.setProcessEnvironment(environment);
    process.setStandardInputFile(QProcess::nullDevice());
    process.start(program, arguments);
    if (!process.waitForFinished(120'000) || process.exitStatus() != QProcess::NormalExit)
        return {};
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()),
            QString::fromUtf8(process.readAllStandardError())};
}

/// The program with these arguments, without a terminal or a display.
inline Answer program(const QStringList &arguments)
{
    QProcess process;
    return finished(process, programFile(), arguments);
}

/// The program by way of a shell, for what cannot be said otherwise; "$0" is the program.
inline Answer shell(const QString &line, const QStringList &arguments = {})
{
    QProcess process;
    return finished(process, QStringLiteral("/bin/sh"),
                    QStringList{QStringLiteral("-c"), line, programFile()} + arguments);
}

inline QByteArray contents(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

inline void write(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(bytes) != bytes.size())
        qFatal("%s cannot be written", qPrintable(path));
}

inline QString sha256(const QByteArray &bytes)
{
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex());
}

} // namespace ts::testing

/// Runs the program and goes on only where it is done without a word on standard error.
#define TS_RUN(...)                                                                                                              \
    do {                                                                                                                         \
        const ts::testing::Answer answer = ts::testing::program({__VA_ARGS__});                                                  \
        QVERIFY2(answer.status == 0 && answer.err.isEmpty(), answer.told().constData());                                         \
    } while (false)
