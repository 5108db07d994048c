/// @file result.h  A value or an error, for everything that can be refused.
#pragma once
#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace tenthday {

/// Why something was refused: one plain English line that names what and where.
/// The window puts its own translated words before it.
struct Error {
    std::string text;
    friend bool operator==(const Error&, const Error&) = default;
};

/// Either a value or an Error. Look with ok() before value(); asserts otherwise.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value) : content_(std::in_place_index<0>, std::move(value)) {}  // NOLINT(*-explicit-*)
    Result(Error error) : content_(std::in_place_index<1>, std::move(error)) {}  // NOLINT

    [[nodiscard]] bool ok() const noexcept { return content_.index() == 0; }
    explicit operator bool() const noexcept { return ok(); }
    [[nodiscard]] const T& value() const& { return assert(ok()), std::get<0>(content_); }
    [[nodiscard]] T& value() & { return assert(ok()), std::get<0>(content_); }
    /// By value: a loop over a temporary's value() must not outlive it.
    [[nodiscard]] T value() && { return assert(ok()), std::get<0>(std::move(content_)); }
    [[nodiscard]] const Error& error() const { return assert(!ok()), std::get<1>(content_); }

private:
    std::variant<T, Error> content_;
};

/// Done, or an Error.
template <>
class [[nodiscard]] Result<void> {
public:
    Result() = default;
    Result(Error error) : error_(std::move(error)) {}  // NOLINT(*-explicit-*)

    [[nodiscard]] bool ok() const noexcept { return !error_; }
    explicit operator bool() const noexcept { return ok(); }
    [[nodiscard]] const Error& error() const { return assert(error_), *error_; }

private:
    std::optional<Error> error_;
};

}  // namespace tenthday
