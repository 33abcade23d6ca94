#include "core/check/row_mirror.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "core/check/misfits.h"

namespace lacewright {
namespace {

// How often a row mirrors about its centred decrease if it has one, about any other place of its
// repeat, and about its middle if it has no repeat.
constexpr double kAboutDecrease = 0.5;
constexpr double kAnywhere = 0.15;
constexpr double kAboutMiddle = 0.3;
// What it takes to foretell a stitch, as a logarithm of its odds.
constexpr double kPlain = 0.2;
constexpr double kFigure = 2.5;
constexpr double kSurest = 12.0;
constexpr std::size_t kFewest = 3;   // stitches that can mirror
constexpr std::size_t kWidest = 40;  // repeats in which every axis is looked at
constexpr double kMostCentred = 6;   // decreases that may each be the centre

using Stitches = std::vector<MirrorStitch>;

// The logarithm of the odds of the half that the other foretells; nothing when they part, or when
// nothing but plain stitches mirrors.
std::optional<double> foretold(const Stitches& row, std::size_t axis, bool ring, bool swaps) {
    double sum = 0;
    bool figures = false;
    for (std::size_t x = 0; x < row.size(); ++x) {
        const std::size_t image = ring ? (axis + row.size() - x) % row.size() : axis - x;
        if (image == x) continue;
        if (row[image].name != (swaps ? row[x].mirror : row[x].name)) return std::nullopt;
        if (image < x) continue;
        figures = figures || row[x].figure;
        sum += row[x].figure ? kFigure : kPlain;
    }
    return figures ? std::optional(std::min(sum, kSurest)) : std::nullopt;
}

// A row that knows both leans swaps them.
bool leansBothWays(const Stitches& row) {
    std::vector<MirrorStitch> leaning;  // each once
    for (const MirrorStitch& stitch : row) {
        if (stitch.mirror == stitch.name) continue;
        const auto sees = [&](int name) {
            return std::any_of(leaning.begin(), leaning.end(),
                               [&](const MirrorStitch& other) { return other.name == name; });
        };
        if (sees(stitch.mirror)) return true;
        if (!sees(stitch.name)) leaning.push_back(stitch);
    }
    return false;
}

double oddsAbout(const Stitches& row, std::size_t axis, bool ring) {
    double best = 0;
    for (const bool swaps : {true, false}) {
        const auto log = foretold(row, axis, ring, swaps);
        if (log) best = std::max(best, std::exp(*log));
        if (log || leansBothWays(row)) break;
    }
    return best;
}

}  // namespace

MirrorStitch mirrorStitch(const StitchCatalogue& stitches, StitchIndex index) {
    const Stitch& stitch = stitches[index];
    const auto mirror = stitches.find(stitch.mirror);
    return {index, mirror.value_or(index), stitch.net() != 0 || stitch.takes != 1,
            stitch.takes == 3 && stitch.makes == 1};
}

double mirrorOdds(const Stitches& row, bool ring) {
    if (row.size() < kFewest) return 0;
    if (!ring)
        return std::log(1 - kAboutMiddle + kAboutMiddle * oddsAbout(row, row.size() - 1, false));
    const auto centred = static_cast<double>(std::count_if(
        row.begin(), row.end(), [](const MirrorStitch& stitch) { return stitch.centred; }));
    const bool aboutDecrease = centred > 0 && centred <= kMostCentred;
    const bool anywhere = row.size() <= kWidest;
    double odds = 1 - (anywhere ? kAnywhere : 0) - (aboutDecrease ? kAboutDecrease : 0);
    for (std::size_t axis = 0; anywhere && axis < row.size(); ++axis)
        odds += kAnywhere / static_cast<double>(row.size()) * oddsAbout(row, axis, true);
    for (std::size_t x = 0; aboutDecrease && x < row.size(); ++x) {
        if (row[x].centred)
            odds += kAboutDecrease / centred * oddsAbout(row, 2 * x % row.size(), true);
    }
    return std::log(odds);
}

RowMirror::RowMirror(const StitchCatalogue& stitches, const Alphabet& alphabet,
                     const std::vector<int>& groups)
    : groups_(groups), stitches_(1), takesPart_(1, false) {
    for (const int group : groups) groupCount_ = std::max(groupCount_, group + 1);
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const auto index = static_cast<StitchIndex>(i);
        stitches_.push_back(mirrorStitch(stitches, index));
        const auto letter = alphabet.letterOf[index];
        if (letter >= 0) {
            const auto partner = alphabet.mirrors[Alphabet::placeOf(letter)];
            stitches_.back().mirror = alphabet.stitches[Alphabet::placeOf(partner)];
        }
        takesPart_.push_back(stitches[index].kind != StitchKind::NoStitch);
    }
}

double RowMirror::odds(const std::vector<StitchIndex>& cells) const {
    double odds = 0;
    Stitches row;
    const bool ring = groupCount_ > 0;
    for (int group = ring ? 0 : kOutsideRepeats; group < groupCount_; ++group) {
        row.clear();
        for (std::size_t x = 0; x < cells.size(); ++x) {
            if (groups_[x] == group && takesPart_[cells[x]]) row.push_back(stitches_[cells[x]]);
        }
        odds += mirrorOdds(row, ring);
    }
    return odds;
}

}  // namespace lacewright
