#pragma once

#include "model/jot/reading_line.h"
#include "model/jot/tried.h"

namespace ts {

/// A line "WORDS [stop | failed | not applicable] [: | =] TYPED" whose words are one of the names.
template <class E>
struct TriedLine {
    E what;
    Said said = Said::Nothing;
    QString typed;
};

/// Parts the line by the longest of the names that it begins with; nothing where it begins with none, or other words follow the name.
template <class E>
[[nodiscard]] std::optional<TriedLine<E>> splitTried(const QString &line, const QList<std::pair<QString, E>> &names);

/// What is left of such a line once the name is off it.
struct TriedRest {
    Said said = Said::Nothing;
    QString typed;
};
[[nodiscard]] std::optional<TriedRest> triedRest(const QString &rest);

/// Takes "lead 3 m" or "lead 0.05 Ω" out of what was typed.
struct LeadTold {
    std::optional<double> metres;
    std::optional<double> ohms;
    QString rest;
};
[[nodiscard]] LeadTold takeLead(const QString &typed);

template <class E>
std::optional<TriedLine<E>> splitTried(const QString &line, const QList<std::pair<QString, E>> &names)
{
    std::optional<TriedLine<E>> best;
    qsizetype length = 0;
    for (const auto &[name, what] : names) {
        if (name.size() <= length || !line.startsWith(name, Qt::CaseInsensitive))
            continue;
        if (const auto rest = triedRest(line.mid(name.size()))) {
            best = TriedLine<E>{what, rest->said, rest->typed};
            length = name.size();
        }
    }
    return best;
}

} // namespace ts
