#include "core/base/text.h"

#include <algorithm>
#include <cctype>

namespace lacewright {
namespace {

constexpr std::string_view kBlanks = " \t\r\n\f\v";

}  // namespace

std::string_view trim(std::string_view text) {
    const auto first = text.find_first_not_of(kBlanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

std::vector<std::string_view> splitWords(std::string_view text) {
    std::vector<std::string_view> words;
    for (auto at = text.find_first_not_of(kBlanks); at != std::string_view::npos;) {
        const auto end = text.find_first_of(kBlanks, at);
        words.push_back(text.substr(at, end - at));
        at = end == std::string_view::npos ? end : text.find_first_not_of(kBlanks, end);
    }
    return words;
}

std::vector<std::string_view> splitLines(std::string_view text) {
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const auto end = text.find('\n');
        std::string_view line = text.substr(0, end);
        if (!line.empty() && line.back() == '\r') line.remove_suffix(1);
        lines.push_back(line);
        if (end == std::string_view::npos) break;
        text.remove_prefix(end + 1);
    }
    return lines;
}

std::string join(const std::vector<std::string>& parts, std::string_view between) {
    std::string all;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (i > 0) all += between;
        all += parts[i];
    }
    return all;
}

std::string listing(const std::vector<std::string>& parts) {
    if (parts.size() < 2) return join(parts, "");
    const std::vector<std::string> front(parts.begin(), parts.end() - 1);
    return join(front, ", ") + " and " + parts.back();
}

std::string lowerAscii(std::string_view text) {
    std::string lower(text);
    for (char& c : lower) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return lower;
}

std::string counted(long long count, std::string_view one, std::string_view many) {
    return std::to_string(count) + " " + std::string(count == 1 ? one : many);
}

std::string escapeXml(std::string_view text) {
    std::string safe;
    safe.reserve(text.size());
    for (const char c : text) {
        switch (c) {
            case '&':
                safe += "&amp;";
                break;
            case '<':
                safe += "&lt;";
                break;
            case '>':
                safe += "&gt;";
                break;
            case '"':
                safe += "&quot;";
                break;
            case '\'':
                safe += "&#39;";
                break;
            default:
                if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t') safe += c;
        }
    }
    return safe;
}

std::size_t characterCount(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return static_cast<unsigned char>(c) >> 6U != 2;  // not the second byte of one, or a later
    }));
}

bool isUtf8(std::string_view text) {
    std::size_t i = 0;
    while (i < text.size()) {
        const auto lead = static_cast<unsigned char>(text[i]);
        const std::size_t length = lead < 0x80        ? 1
                                   : lead >> 5U == 6  ? 2
                                   : lead >> 4U == 14 ? 3
                                   : lead >> 3U == 30 ? 4
                                                      : 0;
        if (length == 0 || i + length > text.size()) return false;
        unsigned code = length == 1 ? lead : lead & (0xFFU >> (length + 1));
        for (std::size_t k = 1; k < length; ++k) {
            const auto next = static_cast<unsigned char>(text[i + k]);
            if (next >> 6U != 2) return false;
            code = code << 6U | (next & 0x3FU);
        }
        constexpr unsigned kSmallest[] = {0, 0, 0x80, 0x800, 0x10000};
        if (code < kSmallest[length] || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF))
            return false;
        i += length;
    }
    return true;
}

}  // namespace lacewright
