#pragma once

#include <cstdint>
#include <cstdlib>
#include <limits>
#include <string>

#include "core/words/reader.h"

// What the targets that read written rows share.
namespace lacewright::fuzz {

inline void require(bool condition) {
    if (!condition) std::abort();
}

struct Input {
    std::string text;
    ReadRows read;
};

// Reads the bytes as written rows: every message points into the text and can be shown, and the
// rows stand in order.
inline Input readInput(const std::uint8_t* data, std::size_t size) {
    Input input;
    input.text.assign(reinterpret_cast<const char*>(data), size);
    input.read = readWritten(input.text);
    for (const ReadMessage& message : input.read.messages) {
        require(message.place.offset + message.place.length <= size);
        require(message.place.line >= 1 && message.place.column >= 1);
        require(!rendered(message, input.text, "text").empty());
    }
    int before = std::numeric_limits<int>::min();
    for (const WrittenRow& row : input.read.pattern.rows) {
        require(row.number > before);
        require(row.place.offset + row.place.length <= size);
        before = row.number;
    }
    return input;
}

}  // namespace lacewright::fuzz
