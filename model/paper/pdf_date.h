#pragma once

#include <QByteArray>
#include <QDateTime>

namespace ts {

/// Puts a time, in UTC, in place of the one that Qt's PDF writer took from the computer, so that the same sheet has the same
/// bytes whenever and wherever it is written. The table of places at the end of the file is put right with it.
void setCreationDate(QByteArray &pdf, const QDateTime &at);

} // namespace ts
