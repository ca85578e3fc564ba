#include "model/store/book_file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace ts {

namespace {

QString logOf(const QString &file)
{
    return file + QStringLiteral("-wal");
}

// The header states how long the file is (SQLite's "Database File Format", 1.3: page size at 16, size in pages at 28, which
// holds where the change counter at 24 equals the number at 92). While there is a log the file may lag behind.
bool isCutOff(const QByteArray &header, qint64 size, const QString &file)
{
    if (header.size() < 100)
        return true;
    const auto number = [&header](qsizetype at) { return qFromBigEndian<quint32>(header.constData() + at); };
    const quint16 stated = qFromBigEndian<quint16>(header.constData() + 16);
    const qint64 page = stated == 1 ? 65536 : stated;
    if (size < page)
        return true;
    return number(24) == number(92) && size < page * static_cast<qint64>(number(28)) && QFileInfo(logOf(file)).size() == 0;
}

} // namespace

Expected<void> checkBookFile(const BookAddress &address)
{
    const QFileInfo info(address.file);
    const QString did = QStringLiteral("Cannot open %1").arg(address.display());
    if (!info.exists())
        return Trouble{did, QStringLiteral("there is no such file"), QStringLiteral("make one with: turnscrew new")};
    if (info.isDir())
        return Trouble{did, QStringLiteral("it is a folder"), QStringLiteral("name the workbook file in it")};
    if (!info.isFile())
        return Trouble{did, QStringLiteral("it is no ordinary file"), {}};
    QFile file(address.file);
    if (!file.open(QIODevice::ReadOnly))
        return Trouble{did, QStringLiteral("it may not be read (%1)").arg(file.errorString()), {}};
    if (file.size() == 0)
        return Trouble{did, QStringLiteral("the file is empty"), QStringLiteral("take it from a backup, or make a new one")};
    const QByteArray header = file.read(100);
    const QByteArray magic("SQLite format 3\0", 16);
    if (!header.startsWith(magic.first(qMin(header.size(), magic.size()))))
        return Trouble{did, QStringLiteral("it is not a Turnscrew workbook"), {}};
    if (isCutOff(header, file.size(), address.file))
        return Trouble{did, QStringLiteral("the end of the file is missing"), QStringLiteral("take it from a backup")};
    return {};
}

Expected<void> claimBookFile(const BookAddress &address)
{
    const QString did = QStringLiteral("Cannot make %1").arg(address.display());
    const QFileInfo info(address.file);
    const Trouble taken{did, QStringLiteral("there is a file of that name already"), QStringLiteral("choose another name")};
    if (info.exists() || info.isSymLink())
        return taken;
    if (!info.dir().exists())
        return Trouble{did, QStringLiteral("the folder %1 does not exist").arg(info.dir().path()), {}};
    QFile file(address.file);
    if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly)) // of two who come at once only one gets it
        return QFileInfo::exists(address.file) ? taken : Trouble{did, QStringLiteral("the file cannot be made there (%1)").arg(file.errorString()), {}};
    return {};
}

void removeBookFile(const QString &file)
{
    for (const auto *end : {"", "-wal", "-shm", "-journal"})
        QFile::remove(file + QLatin1String(end));
}

BookAccess bookAccess(const QString &file)
{
    const QFileInfo info(file);
    const bool folder = QFileInfo(info.path()).isWritable();
    if (info.isWritable() && folder)
        return BookAccess::Writable;
    return folder || QFileInfo(logOf(file)).size() > 0 ? BookAccess::ReadOnly : BookAccess::Still;
}

} // namespace ts
