#include "core/check/nearest_cast_ons.h"

#include <algorithm>
#include <cstdlib>
#include <optional>

#include "core/count/shares.h"

namespace lacewright {
namespace {

std::optional<CastOn> fixed(std::int64_t count) {
    if (count < 1 || count > kMaxNeedle) return std::nullopt;
    return CastOn{0, static_cast<int>(count)};
}

std::vector<CastOn> fixedCounts(std::int64_t wanted, const AffineForm& takes) {
    std::vector<std::int64_t> parts;
    for (const AffineForm::Term& term : takes.terms()) {
        if (term.coefficient > 0) parts.push_back(term.coefficient);
    }
    const std::int64_t room = wanted - takes.constant();
    std::vector<std::int64_t> counts;
    if (parts.empty()) {
        counts.push_back(takes.constant());
    } else if (room < 0) {
        counts.push_back(takes.constant() + *std::min_element(parts.begin(), parts.end()));
    } else {
        counts.push_back(takes.constant() + nextShared(parts, room));
        if (const auto below = largestShared(parts, room))
            counts.push_back(takes.constant() + *below);
    }
    std::stable_sort(counts.begin(), counts.end(), [&](std::int64_t a, std::int64_t b) {
        return std::abs(a - wanted) < std::abs(b - wanted);
    });
    std::vector<CastOn> castOns;
    for (const std::int64_t count : counts) {
        if (const auto castOn = fixed(count)) castOns.push_back(*castOn);
    }
    return castOns;
}

}  // namespace

std::vector<CastOn> castOnsFor(const CastOn& drawn, const AffineForm& takes) {
    if (drawn.multiple == 0) return fixedCounts(drawn.plus, takes);
    if (takes.terms().size() != 1) return {};
    const auto each = static_cast<int>(takes.terms().front().coefficient);
    const auto plus = static_cast<int>(takes.constant());
    if (each < 1) return {};
    return {CastOn{each, plus}};
}

}  // namespace lacewright
