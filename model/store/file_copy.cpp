#include "model/store/file_copy.h"

#include <QFile>
#include <QFileInfo>

namespace ts {

Expected<void> copyChecked(Connection &connection, const QString &file)
{
    const QString did = QStringLiteral("Cannot copy %1 to %2").arg(connection.address().display(), QFileInfo(file).fileName());
    if (QFileInfo::exists(file))
        return Trouble{did, QStringLiteral("there is a file of that name already"), QStringLiteral("choose another name")};
    const QString half = file + QStringLiteral(".part");
    QFile::remove(half);
    const auto refuse = [&](const QString &why) {
        QFile::remove(half);
        return Trouble{did, why, {}};
    };
    if (auto done = connection.run(QStringLiteral("VACUUM INTO ?"), {half}); !done)
        return refuse(done.trouble().wrong);
    {
        BookAddress address;
        address.file = half;
        auto copy = Connection::open(address, Connection::Mode::Existing);
        if (!copy)
            return refuse(copy.trouble().sentence());
        const auto sound = (*copy)->value(QStringLiteral("PRAGMA quick_check"));
        if (!sound || sound->toString() != QLatin1String("ok"))
            return refuse(QStringLiteral("the copy is not sound"));
    }
    if (!QFile::rename(half, file))
        return refuse(QStringLiteral("the copy could not be given its name"));
    return {};
}

} // namespace ts
