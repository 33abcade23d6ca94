#include "core/sheet/text_width.h"

#include <array>
#include <cstdint>

#include "core/base/text.h"

namespace lacewright {
namespace {

// Advance widths of DejaVu Sans in thousandths of the font size, from blank (32) to tilde (126).
constexpr std::array<std::uint16_t, 95> kWidths = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361,  318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635,  611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352,  635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592,  525, 636, 337, 636, 838};
constexpr int kTwoByteWidth = 700;   // Latin, Greek and Cyrillic letters
constexpr int kLongerWidth = 1000;   // everything beyond: dashes, arrows, ideographs
constexpr double kBoldShare = 1.12;  // DejaVu Sans Bold against the book face

int widthOfByte(unsigned char byte) {
    if (byte < 0x80) return byte >= 32 && byte < 127 ? kWidths[byte - 32U] : 0;
    if (byte < 0xC0) return 0;  // continues a letter
    return byte < 0xE0 ? kTwoByteWidth : kLongerWidth;
}

// Where the letter that begins at `start` ends.
std::size_t letterEnd(std::string_view word, std::size_t start) {
    std::size_t end = start + 1;
    while (end < word.size() && (static_cast<unsigned char>(word[end]) & 0xC0U) == 0x80U) ++end;
    return end;
}

// Bytes of the longest beginning that fits, at least one letter.
std::size_t fittingBytes(std::string_view word, double width, bool bold) {
    std::size_t end = letterEnd(word, 0);
    while (end < word.size()) {
        const std::size_t next = letterEnd(word, end);
        if (textWidth(word.substr(0, next), bold) > width) break;
        end = next;
    }
    return end;
}

}  // namespace

double textWidth(std::string_view text, bool bold) {
    int sum = 0;
    for (const char c : text) sum += widthOfByte(static_cast<unsigned char>(c));
    return sum / 1000.0 * (bold ? kBoldShare : 1.0);
}

std::vector<std::string> wrapped(std::string_view text, double width, bool bold) {
    std::vector<std::string> lines;
    std::string line;
    const auto finish = [&] {
        if (!line.empty()) lines.push_back(std::move(line));
        line.clear();
    };
    for (std::string_view word : splitWords(text)) {
        const std::string longer =
            line.empty() ? std::string(word) : line + " " + std::string(word);
        if (textWidth(longer, bold) <= width) {
            line = longer;
            continue;
        }
        finish();
        while (textWidth(word, bold) > width) {
            const std::size_t bytes = fittingBytes(word, width, bold);
            if (bytes >= word.size()) break;
            lines.emplace_back(word.substr(0, bytes));
            word.remove_prefix(bytes);
        }
        line = word;
    }
    finish();
    return lines;
}

}  // namespace lacewright
