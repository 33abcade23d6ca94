#include "core/verdict/placed_row.h"

#include <algorithm>

namespace lacewright {
namespace {

// A stretch of a fixed number, such as "k to last 2 sts", is written out.
std::int64_t timesWrittenOut(const RowPart& part) {
    return part.starred || !part.times.isConstant() ? 1 : part.times.constant();
}

std::string nameOf(const RowPart& part, const WrittenProof& proof) {
    if (part.times.terms().size() != 1) return {};
    const Variable variable = part.times.terms().front().variable;
    return isNamedCount(variable) ? proof.nameOf(variable) : std::string();
}

}  // namespace

std::optional<std::vector<std::size_t>> PlacedRow::unfolded(std::size_t length) const {
    std::vector<std::size_t> places;
    const auto repeat =
        std::find_if(parts.begin(), parts.end(), [](const Part& part) { return part.repeats; });
    std::size_t more = length < stitches.size() ? 0 : length - stitches.size();
    const bool fits =
        length >= stitches.size() &&
        (more == 0 ||
         (repeat != parts.end() && repeat->length > 0 && more % repeat->length == 0 &&
          std::count_if(parts.begin(), parts.end(), [](const Part& p) { return p.repeats; }) == 1));
    if (!fits) return std::nullopt;
    for (std::size_t i = 0; i < stitches.size(); ++i) {
        places.push_back(i);
        if (more == 0 || i + 1 != repeat->first + repeat->length) continue;
        for (; more > 0; more -= repeat->length) {
            for (std::size_t j = 0; j < repeat->length; ++j) places.push_back(repeat->first + j);
        }
    }
    return places;
}

std::string PlacedRow::placeInWords(std::size_t index) const {
    const auto here = std::find_if(parts.begin(), parts.end(), [&](const Part& part) {
        return index < part.first + part.length;
    });
    const bool anyRepeats =
        std::any_of(parts.begin(), parts.end(), [](const Part& part) { return part.repeats; });
    if (here == parts.end()) return "stitch " + std::to_string(index + 1);
    const std::string words = "stitch " + std::to_string(index - here->first + 1);
    if (!anyRepeats) return words;
    const auto inWords = [](const Part& part) {
        return part.name.empty() ? "the repeat" : "repeat " + part.name;
    };
    if (here->repeats) return words + " of " + inWords(*here);
    const auto before = std::find_if(std::make_reverse_iterator(here), parts.rend(),
                                     [](const Part& part) { return part.repeats; });
    if (before != parts.rend()) return words + " after " + inWords(*before);
    return words + " before " +
           inWords(*std::find_if(here, parts.end(), [](const Part& part) { return part.repeats; }));
}

std::vector<std::string> PlacedRow::ids() const {
    std::vector<std::string> ids;
    for (const RowStitch& stitch : stitches) ids.push_back(stitch.id);
    return ids;
}

std::optional<PlacedRow> placedRow(const WrittenPattern& pattern, std::size_t row,
                                   const WrittenProof& proof, std::size_t size) {
    const auto worked = workedRow(pattern, pattern.rows[row], proof.rows[row], size);
    if (!worked) return std::nullopt;
    PlacedRow placed;
    for (const RowPart& part : worked->parts) {
        const std::string name = nameOf(part, proof);
        const bool repeats = part.starred || !name.empty();
        if (repeats || placed.parts.empty() || placed.parts.back().repeats)
            placed.parts.push_back({placed.stitches.size(), 0, repeats, name});
        for (std::int64_t i = timesWrittenOut(part); i > 0; --i) {
            placed.stitches.insert(placed.stitches.end(), part.stitches.begin(),
                                   part.stitches.end());
        }
        placed.parts.back().length = placed.stitches.size() - placed.parts.back().first;
    }
    return placed;
}

}  // namespace lacewright
