#pragma once

#include "model/values/expected.h"

#include <QtTest>

namespace ts::testing {

/// Fails the test with the trouble's sentence where something was refused.
template <class T>
void wantOk(const Expected<T> &result)
{
    if (!result)
        QFAIL(qPrintable(result.trouble().sentence()));
}

/// The sentence of a refusal, or an empty text where it was not refused.
template <class T>
[[nodiscard]] QString refusal(const Expected<T> &result)
{
    return result ? QString() : result.trouble().sentence();
}

/// The program that was built with the tests. Found from where they are, so that a test is the same whichever build it is of.
[[nodiscard]] inline QString programFile()
{
    return QCoreApplication::applicationDirPath() + QStringLiteral("/../turnscrew");
}

/// The folder of published check values and real records beside the project, or an empty text where it is not there.
[[nodiscard]] QString sharedFolder();

} // namespace ts::testing
