#pragma once

#include "views/widgets/typed.h"

#include "model/values/money.h"

namespace ts::typed {

/// A sum as typed in the user's locale; nothing where nothing is typed. `field` names what it was typed in, in the sentence that refuses it.
[[nodiscard]] Expected<std::optional<Money>> moneyOrNone(const QString &field, const QString &text, const Currency &currency);

} // namespace ts::typed
