#pragma once

#include <QString>

#include <optional>
#include <utility>
#include <variant>

namespace ts {

/// Why something was refused, in three parts that make one plain sentence.
struct Trouble {
    QString did;   ///< what we were doing: "Cannot open deck.turnscrew"
    QString wrong; ///< what went wrong: "the file is empty"
    QString todo;  ///< what to do about it, may be empty: "choose another file"

    /// The parts as one line ending in a full stop; line breaks inside are folded to spaces.
    [[nodiscard]] QString sentence() const;
    bool operator==(const Trouble &) const = default;
};

/// A value, or the Trouble that kept it from being made. Look before you take the value.
template <class T>
class [[nodiscard]] Expected {
public:
    Expected(T value) : m_content(std::in_place_index<0>, std::move(value)) {}
    Expected(Trouble trouble) : m_content(std::in_place_index<1>, std::move(trouble)) {}

    [[nodiscard]] bool ok() const { return m_content.index() == 0; }
    explicit operator bool() const { return ok(); }

    const T &value() const & { return std::get<0>(m_content); }
    T &value() & { return std::get<0>(m_content); }
    T &&value() && { return std::get<0>(std::move(m_content)); }
    const T &operator*() const & { return value(); }
    T &operator*() & { return value(); }
    T &&operator*() && { return std::move(*this).value(); }
    const T *operator->() const { return &value(); }
    T *operator->() { return &value(); }
    const Trouble &trouble() const { return std::get<1>(m_content); }

private:
    std::variant<T, Trouble> m_content;
};

/// Done, or the Trouble that kept it from being done.
template <>
class [[nodiscard]] Expected<void> {
public:
    Expected() = default;
    Expected(Trouble trouble) : m_trouble(std::move(trouble)) {}

    [[nodiscard]] bool ok() const { return !m_trouble; }
    explicit operator bool() const { return ok(); }
    const Trouble &trouble() const { return *m_trouble; }

private:
    std::optional<Trouble> m_trouble;
};

} // namespace ts
