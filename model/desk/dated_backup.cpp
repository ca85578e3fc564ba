#include "model/desk/dated_backup.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>

namespace ts {

namespace {

const auto ending = QStringLiteral(".turnscrew");

// What comes of an address is a file name on any system.
QString fileName(QString name)
{
    static const QRegularExpression strange(QStringLiteral("[^\\w .-]+"), QRegularExpression::UseUnicodePropertiesOption);
    name.replace(strange, QStringLiteral("_"));
    return name.left(80);
}

} // namespace

BackupPlan backupPlan(const QString &book, const QString &folder)
{
    const bool server = book.contains(QLatin1String("://"));
    const QString name = server ? book.section(QLatin1Char('/'), -1).section(QLatin1Char('?'), 0, 0) : QFileInfo(book).completeBaseName();
    return {.folder = folder, .name = fileName(name.isEmpty() ? QStringLiteral("workbook") : name)};
}

QStringList datedBackups(const BackupPlan &plan)
{
    const QRegularExpression ours(QStringLiteral("^%1 \\d{4}-\\d{2}-\\d{2} \\d{2}\\.\\d{2}\\.\\d{2}%2$")
                                      .arg(QRegularExpression::escape(plan.name), QRegularExpression::escape(ending)));
    const QDir folder(plan.folder);
    QStringList found;
    const QStringList names = folder.entryList({QStringLiteral("*") + ending}, QDir::Files, QDir::Name | QDir::Reversed);
    for (const QString &name : names)
        if (ours.match(name).hasMatch())
            found << folder.filePath(name);
    return found;
}

Expected<QString> makeDatedBackup(Desk &desk, const BackupPlan &plan, const QDateTime &now)
{
    const QDir folder(plan.folder);
    if (!folder.mkpath(QStringLiteral(".")))
        return Trouble{QStringLiteral("No backup was made"), QStringLiteral("the folder %1 cannot be made").arg(plan.folder),
                       QStringLiteral("choose another folder in the settings")};
    const QString file = folder.filePath(plan.name + now.toLocalTime().toString(QStringLiteral(" yyyy-MM-dd HH.mm.ss")) + ending);
    if (auto done = desk.backup(file); !done)
        return done.trouble();
    const QStringList copies = datedBackups(plan);
    for (qsizetype i = qMax(plan.keep, 1); i < copies.size(); ++i)
        QFile::remove(copies.at(i));
    return file;
}

} // namespace ts
