#include "core/words/read_message.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr std::size_t kLongestLine = 160;  // bytes of a line shown around the caret

std::size_t characters(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

// A cut must not fall into the middle of a character.
std::size_t characterStart(std::string_view text, std::size_t at) {
    while (at > 0 && at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0U) == 0x80U)
        --at;
    return at;
}

}  // namespace

std::string ReadMessage::sentence() const {
    std::string out = what;
    if (!expected.empty()) out += "; expected " + expected;
    if (!nearest.empty()) out += "; did you mean " + nearest + "?";
    return out;
}

std::string rendered(const ReadMessage& message, std::string_view text, std::string_view name) {
    const std::size_t at = std::min(message.place.offset, text.size());
    std::size_t begin = at;
    while (begin > 0 && text[begin - 1] != '\n') --begin;
    std::size_t end = std::min(text.find('\n', at), text.size());
    if (end > begin && text[end - 1] == '\r') --end;
    if (at - begin > kLongestLine / 2) begin = characterStart(text, at - kLongestLine / 2);
    if (end - begin > kLongestLine) end = characterStart(text, begin + kLongestLine);

    std::string line(text.substr(begin, end - begin));
    std::replace(line.begin(), line.end(), '\t', ' ');
    const std::size_t length = std::min(message.place.length, end > at ? end - at : 0);
    const std::size_t carets = std::max<std::size_t>(1, characters(text.substr(at, length)));
    return std::string(name) + ":" + std::to_string(message.place.line) + ":" +
           std::to_string(message.place.column) + ": " + message.sentence() + "\n    " + line +
           "\n    " + std::string(characters(text.substr(begin, at - begin)), ' ') +
           std::string(carets, '^') + "\n";
}

}  // namespace lacewright
