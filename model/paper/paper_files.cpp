#include "model/paper/paper_files.h"

#include <QFile>
#include <QtDebug>

// A static library's resources are linked in only where they are asked for by name, outside every namespace.
static void takeInPaperFiles()
{
    Q_INIT_RESOURCE(paper_files);
}

namespace ts {

QString paperFile(const QString &name)
{
    takeInPaperFiles();
    QFile file(QStringLiteral(":/paper/") + name);
    if (!file.open(QIODevice::ReadOnly)) {
        qWarning().noquote() << "the program lacks its file" << name;
        return {};
    }
    return QString::fromUtf8(file.readAll());
}

} // namespace ts
