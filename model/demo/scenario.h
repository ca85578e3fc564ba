#pragma once

#include "model/values/expected.h"

#include <QDateTime>
#include <QJsonObject>
#include <QList>

namespace ts {

/// One line of the demo's story: when, on which unit, and what happened.
struct DemoEvent {
    QDateTime at;
    int tag = 0;         ///< 0: the bench as a whole
    QString verb;        ///< "jot", "photo", "stage" …
    QJsonObject content; ///< the whole line
    QString file;

    /// What the verb says.
    [[nodiscard]] QJsonValue said() const { return content.value(verb); }
    /// For a refusal: file, instant and the first words of the line.
    [[nodiscard]] QString where() const;
};

/// The whole story from the program's own files, in order of time; what runs over hours is spread to its instants. Refuses a
/// file that is no JSON, a line without a verb or an instant, by file and line.
[[nodiscard]] Expected<QList<DemoEvent>> demoScenario();

} // namespace ts
