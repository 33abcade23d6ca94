#pragma once

#include <cstddef>
#include <string>

#include "core/base/result.h"

namespace lacewright {

struct JsonValue;

// Why a file was refused. Thrown within core/file only; readChart turns it into an Error.
struct Refusal {
    ErrorCode code = ErrorCode::Malformed;
    std::string message;  // a sentence
    const JsonValue* value =
        nullptr;             // the value at fault; null while the text is still being parsed
    std::size_t offset = 0;  // without a value: the byte at fault
    std::string path = {};   // without a value: the JSON path, if it is known
};

[[noreturn]] inline void refuse(const JsonValue& value, std::string message,
                                ErrorCode code = ErrorCode::Malformed) {
    throw Refusal{code, std::move(message), &value};
}

}  // namespace lacewright
