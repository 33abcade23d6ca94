#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>

namespace lacewright {

enum class ErrorCode {
    NotFound,     // a file or a named thing does not exist
    Unreadable,   // the disk refused to read
    Unwritable,   // the disk refused to write
    Malformed,    // the text does not follow its grammar
    Unsupported,  // well formed, but of a version or kind we do not know
    OutOfRange,   // a number or place outside what is allowed
    Refused       // an edit that the chart does not allow
};

// Why something could not be done, as one sentence for a person. `place` says where: a file name,
// "file:line:column" or a JSON path; it may be empty.
struct Error {
    ErrorCode code = ErrorCode::Refused;
    std::string message;
    std::string place;

    // "place: message", or the message alone.
    std::string text() const { return place.empty() ? message : place + ": " + message; }
    bool operator==(const Error&) const = default;
};

// A value or an error; member names follow std::expected, which our compiler does not have yet.
template <class T>
class [[nodiscard]] Result {
 public:
    Result(T value) : state_(std::move(value)) {}
    Result(Error error) : state_(std::move(error)) {}

    bool has_value() const { return state_.index() == 0; }
    explicit operator bool() const { return has_value(); }

    // Requires: has_value().
    const T& value() const& {
        assert(has_value());
        return *std::get_if<0>(&state_);
    }
    T& value() & {
        assert(has_value());
        return *std::get_if<0>(&state_);
    }
    T&& value() && {
        assert(has_value());
        return std::move(*std::get_if<0>(&state_));
    }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    // Requires: !has_value().
    const Error& error() const {
        assert(!has_value());
        return *std::get_if<1>(&state_);
    }

 private:
    std::variant<T, Error> state_;
};

struct Done {
    bool operator==(const Done&) const = default;
};

// The outcome of something done for its effect.
using Outcome = Result<Done>;

}  // namespace lacewright
