#pragma once

#include "model/values/words.h"

namespace ts::shown {

/// A stored word of an enumeration in the user's language: "as_it_leaves" gives "as it leaves". One that is not known here
/// stands as it is, with spaces.
[[nodiscard]] QString word(const QString &stored);
template <class E>
    requires std::is_enum_v<E>
[[nodiscard]] QString word(E value)
{
    return word(toWord(value));
}
/// The same with a big first letter, for headings and buttons.
[[nodiscard]] QString bigWord(const QString &stored);

} // namespace ts::shown
