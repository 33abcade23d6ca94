#include "core/verdict/slip_evidence.h"

#include <numeric>

namespace lacewright {
namespace {

constexpr int kMostNotDrawn = 30;  // before a text is taken for one that makes no chart

}  // namespace

std::optional<double> SlipEvidence::of(const WrittenPattern& text, std::size_t row,
                                       const PlacedRow& meant, const PlacedRow& written,
                                       std::size_t times) {
    std::vector<int> key{static_cast<int>(row)};
    for (const PlacedRow::Part& part : written.parts) key.push_back(static_cast<int>(part.length));
    for (const PlacedRow::Part& part : meant.parts) {
        key.push_back(static_cast<int>(part.length));
        const auto first = meant.stitches.begin() + static_cast<std::ptrdiff_t>(part.first);
        const auto last = first + static_cast<std::ptrdiff_t>(part.length);
        for (int RowStitch::*count : {&RowStitch::takes, &RowStitch::makes}) {
            key.push_back(std::accumulate(first, last, 0, [&](int sum, const RowStitch& stitch) {
                return sum + stitch.*count;
            }));
        }
    }
    const auto [at, isNew] = frames_.try_emplace(key);
    if (isNew && notDrawn_ < kMostNotDrawn) {
        at->second = SlipFrame::make(text, row, size_, meant, written);
        notDrawn_ += at->second == nullptr ? 1 : 0;
    }
    if (at->second == nullptr) return std::nullopt;
    return at->second->evidence(meant, times);
}

}  // namespace lacewright
