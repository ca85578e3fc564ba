#include "tests/testing.h"

#include <QDir>

namespace ts::testing {

QString sharedFolder()
{
    const QString set = qEnvironmentVariable("TURNSCREW_SHARED");
    const QDir folder(set.isEmpty() ? QStringLiteral(SOURCE_DIR "/../shared") : set);
    return folder.exists() ? folder.canonicalPath() : QString();
}

} // namespace ts::testing
