#pragma once

#include "model/jot/jotting.h"

#include <array>

namespace ts {

/// Whether something must follow the word that begins a line.
enum class Follows { Must, May };

/// One word that begins a line, and what makes records of it.
struct Keyword {
    const char *word;
    Jotted (*jot)(const Jotting &);
    Follows follows;
    const char *hint; ///< what is still to be typed: "what was seen"
};

/// All of them, those of several words first.
[[nodiscard]] const std::array<Keyword, 27> &keywords();

/// The keyword that a line begins with, or nullptr, and the rest of the line.
struct Begun {
    const Keyword *keyword = nullptr;
    QString rest;
};
[[nodiscard]] Begun keywordOf(const QString &line);

} // namespace ts
