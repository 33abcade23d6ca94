#include "app/cli/measures.h"

#include <charconv>
#include <cmath>

#include "app/cli/verb.h"

namespace lacewright::cli {

std::optional<double> numberIn(std::string_view text) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
        return std::nullopt;
    return value;
}

std::optional<int> wholeIn(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::optional<double> lengthIn(std::string_view text) {
    const bool inches = text.ends_with("in");
    if (inches || text.ends_with("cm")) text.remove_suffix(2);
    const auto value = numberIn(text);
    if (!value) return std::nullopt;
    return inches ? cmOf(*value) : *value;
}

std::vector<std::string> split(const std::string& text, char at) {
    std::vector<std::string> parts;
    std::size_t from = 0;
    for (std::size_t to = text.find(at); to != std::string::npos; to = text.find(at, from)) {
        parts.push_back(text.substr(from, to - from));
        from = to + 1;
    }
    parts.push_back(text.substr(from));
    return parts;
}

Result<Gauge> gaugeFrom(std::string text) {
    const Error wrong = misuse(
        "--gauge must be stitches and rows over 10 cm, such as 22x30, or over 4 in, such as "
        "22x30/4in, not \"" +
        text + "\".");
    const bool fourInches = text.ends_with("/4in");
    if (fourInches) text.erase(text.size() - 4);
    const auto parts = split(text, 'x');
    if (parts.size() != 2) return wrong;
    const auto stitches = numberIn(parts[0]);
    const auto rows = numberIn(parts[1]);
    if (!stitches || !rows || *stitches <= 0 || *rows <= 0) return wrong;
    return fourInches ? gaugeOverFourInches(*stitches, *rows) : Gauge{*stitches, *rows, {}};
}

}  // namespace lacewright::cli
