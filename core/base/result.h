// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace littoral {

/// What kind of thing went wrong, as far as a caller can act on it.
enum class Fault {
    NotFound,   ///< no such tank, file, row
    BadInput,   ///< what was typed or read does not parse or is out of range
    Storage,    ///< the file system or the database refused
    NewerStore, ///< written by a later version of the program
    OtherFile,  ///< not a store of ours
    Damaged,    ///< a store that fails its own integrity check
    Busy,       ///< another program holds it
    Conflict,   ///< would contradict what is there (a name taken, a record already gone)
    Cancelled,
    NotConverged,
};

/// A failure in words for a person: what happened, where, and how to mend it. UTF-8; whole sentences, already
/// translated.
struct Error
{
    Fault fault = Fault::BadInput;
    std::string what;
    std::string where; ///< file, line, field; may be empty
    std::string mend;  ///< what the reader can do; may be empty

    /// "where: what mend" with the empty parts left out.
    [[nodiscard]] std::string sentence() const
    {
        std::string text;
        if (!where.empty()) {
            text += where + ": ";
        }
        text += what;
        if (!mend.empty()) {
            text += ' ' + mend;
        }
        return text;
    }
};

/// A value or the Error that kept it from being made. Member names follow std::expected, so that a later compiler can
/// turn this into an alias.
template <typename T> class [[nodiscard]] Result
{
public:
    Result(T value)
        : m_state(std::in_place_index<0>, std::move(value))
    {
    }
    Result(Error error)
        : m_state(std::in_place_index<1>, std::move(error))
    {
    }

    [[nodiscard]] bool has_value() const { return m_state.index() == 0; }
    explicit operator bool() const { return has_value(); }

    [[nodiscard]] T& value() & { return std::get<0>(m_state); }
    [[nodiscard]] const T& value() const& { return std::get<0>(m_state); }
    [[nodiscard]] T&& value() && { return std::get<0>(std::move(m_state)); }
    [[nodiscard]] T& operator*() & { return value(); }
    [[nodiscard]] const T& operator*() const& { return value(); }
    [[nodiscard]] T* operator->() { return &value(); }
    [[nodiscard]] const T* operator->() const { return &value(); }
    [[nodiscard]] const Error& error() const { return std::get<1>(m_state); }

private:
    std::variant<T, Error> m_state;
};

template <> class [[nodiscard]] Result<void>
{
public:
    Result() = default;
    Result(Error error)
        : m_error(std::move(error))
        , m_failed(true)
    {
    }

    [[nodiscard]] bool has_value() const { return !m_failed; }
    explicit operator bool() const { return has_value(); }
    [[nodiscard]] const Error& error() const { return m_error; }

private:
    Error m_error;
    bool m_failed = false;
};

} // namespace littoral
