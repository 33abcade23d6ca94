#include "app/cli/text_table.h"

#include <algorithm>

#include "core/base/text.h"

namespace lacewright::cli {
namespace {

std::string csvField(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"') quoted += '"';
        quoted += c;
    }
    return quoted + "\"";
}

}  // namespace

void writeTable(std::ostream& out, const TextTable& table) {
    std::vector<std::size_t> widths;
    for (const auto& line : table) {
        widths.resize(std::max(widths.size(), line.size()));
        for (std::size_t i = 0; i < line.size(); ++i)
            widths[i] = std::max(widths[i], characterCount(line[i]));
    }
    for (const auto& line : table) {
        std::string text;
        for (std::size_t i = 0; i < line.size(); ++i) {
            text += line[i] + std::string(widths[i] - characterCount(line[i]) + 2, ' ');
        }
        text.erase(text.find_last_not_of(' ') + 1);
        out << text << "\n";
    }
}

void writeCsv(std::ostream& out, const TextTable& table) {
    for (const auto& line : table) {
        for (std::size_t i = 0; i < line.size(); ++i)
            out << (i > 0 ? "," : "") << csvField(line[i]);
        out << "\n";
    }
}

}  // namespace lacewright::cli
