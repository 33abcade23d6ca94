#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

namespace lacewright {

// One step of SVG path data in its relative form: l h v c s q t a z (or a further m).
struct PathStep {
    char letter = 'z';
    std::array<double, 7> numbers = {};  // as many as the letter asks for
    bool operator==(const PathStep&) const = default;
};

// The steps of a glyph's tail; nothing when it does not follow the grammar, uses absolute letters
// or a number out of proportion. Repeated arguments without a letter become steps of their own.
std::optional<std::vector<PathStep>> parsePathTail(std::string_view tail);

// How many elements a painter may make of the steps (an arc becomes up to four curves of three
// elements each), the first move included.
int pathElements(const std::vector<PathStep>& steps);

}  // namespace lacewright
