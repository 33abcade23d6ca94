#include "tests/support/written_slips.h"

#include <array>
#include <regex>
#include <string_view>

namespace lacewright::test {
namespace {

// One stitch of a line of text. In "k3" there are three.
struct Spot {
    std::size_t begin = 0;  // of its words in the text
    std::size_t length = 0;
    std::string stitch;  // "k", "yo", "k2tog"
    int before = 0;      // as many of the same within these words
    int behind = 0;
    bool ground() const { return stitch == "k" || stitch == "p"; }
};

std::string heading(int row) {
    return "\n(Row|Rnd) " + std::to_string(row) + "( \\([RW]S\\))?: ";
}

// Where the words of a row stand. A row that shares its words with others is left alone.
std::optional<std::pair<std::size_t, std::size_t>> lineOf(const std::string& text, int row) {
    std::smatch match;
    if (!std::regex_search(text, match, std::regex(heading(row)))) return std::nullopt;
    const auto begin = static_cast<std::size_t>(match.position() + match.length());
    const std::size_t end = std::min(text.find('\n', begin), text.size());
    return std::pair(begin, end);
}

std::vector<Spot> spotsIn(const std::string& text, std::size_t begin, std::size_t end) {
    static const std::regex words(
        R"(\b(?:([kp])(\d+)(?![a-z0-9])|(yo(?! twice| \d)|k2tog|ssk|skp|sk2p|s2kp|k3tog|p2tog|p3tog|ktbl|ptbl))(?![a-z0-9]))");
    std::vector<Spot> spots;
    const auto first = text.begin() + static_cast<std::ptrdiff_t>(begin);
    const auto last = text.begin() + static_cast<std::ptrdiff_t>(end);
    for (std::sregex_iterator it(first, last, words); it != std::sregex_iterator(); ++it) {
        const int count = (*it)[1].matched ? std::stoi((*it)[2]) : 1;
        for (int i = 0; i < count; ++i) {
            spots.push_back({begin + static_cast<std::size_t>(it->position()),
                             static_cast<std::size_t>(it->length()),
                             (*it)[1].matched ? (*it)[1].str() : (*it)[3].str(), i, count - 1 - i});
        }
    }
    return spots;
}

std::string inWords(const std::string& stitch, int count) {
    if (count == 0) return "";
    if (stitch == "k" || stitch == "p") return stitch + std::to_string(count);
    return stitch;
}

std::string joined(const std::vector<std::string>& parts) {
    std::string all;
    for (const std::string& part : parts) {
        if (part.empty()) continue;
        if (!all.empty()) all += ", ";
        all += part;
    }
    return all;
}

std::string leaning(const std::string& stitch) {
    if (stitch == "k2tog") return "ssk";
    return stitch == "ssk" || stitch == "skp" ? "k2tog" : "";
}

std::string another(const std::string& stitch, std::mt19937& random) {
    static constexpr std::array<std::string_view, 5> kStitches = {"k", "yo", "k2tog", "ssk",
                                                                  "s2kp"};
    std::string other = stitch;
    while (other == stitch) other = kStitches[random() % kStitches.size()];
    return other;
}

// The text without the words at a place, and without the comma that held them apart from others.
std::string without(std::string text, std::size_t begin, std::size_t length) {
    const std::size_t end = begin + length;
    if (text.compare(end, 2, ", ") == 0) {
        length += 2;
    } else if (begin >= 2 && text.compare(begin - 2, 2, ", ") == 0) {
        begin -= 2;
        length += 2;
    }
    return text.erase(begin, length);
}

}  // namespace

std::vector<int> rowsToHit(const std::string& text) {
    std::vector<int> rows;
    static const std::regex line(R"(\n(?:Row|Rnd) (\d+)(?: \([RW]S\))?: )");
    for (std::sregex_iterator it(text.begin(), text.end(), line); it != std::sregex_iterator();
         ++it) {
        const int row = std::stoi((*it)[1]);
        const auto place = lineOf(text, row);
        if (place && !spotsIn(text, place->first, place->second).empty()) rows.push_back(row);
    }
    return rows;
}

std::optional<SlippedText> slipped(const std::string& text, Slip slip, int row,
                                   std::mt19937& random) {
    const auto place = lineOf(text, row);
    if (!place) return std::nullopt;
    std::vector<Spot> spots = spotsIn(text, place->first, place->second);
    const bool figuresOnly = random() % 2 == 0;
    std::erase_if(spots, [&](const Spot& spot) {
        return slip == Slip::LeanSwapped ? leaning(spot.stitch).empty()
                                         : figuresOnly && spot.ground();
    });
    if (spots.empty()) return std::nullopt;
    const Spot& spot = spots[random() % spots.size()];
    const auto becomes = [&](const std::string& stitch) {
        return joined({inWords(spot.stitch, spot.before), inWords(stitch, 1),
                       inWords(spot.stitch, spot.behind)});
    };
    const int count = spot.before + 1 + spot.behind;
    std::string words;
    switch (slip) {
        case Slip::Replaced:
            words = becomes(another(spot.stitch, random));
            break;
        case Slip::LeanSwapped:
            words = leaning(spot.stitch);
            break;
        case Slip::Dropped:
            if (count == 1) return SlippedText{without(text, spot.begin, spot.length), row};
            words = inWords(spot.stitch, count - 1);
            break;
        case Slip::Doubled:
            words =
                spot.ground() ? inWords(spot.stitch, count + 1) : spot.stitch + ", " + spot.stitch;
            break;
    }
    return SlippedText{std::string(text).replace(spot.begin, spot.length, words), row};
}

}  // namespace lacewright::test
