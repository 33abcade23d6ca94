#include "core/check/alphabet.h"

#include <algorithm>
#include <numeric>

namespace lacewright {
namespace {

constexpr double kSmoothing = 0.5;  // cells every letter is thought to have more than it has

bool takesPart(const StitchCatalogue& stitches, StitchIndex index) {
    const Stitch& stitch = stitches[index];
    return stitch.span == 1;
}

std::vector<int> cellsOfEach(const Chart& chart) {
    std::vector<int> cells(chart.stitches->size() + 1, 0);
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex index : chart.row(row).cells()) ++cells[index];
    }
    return cells;
}

std::vector<StitchIndex> chosenStitches(const StitchCatalogue& stitches,
                                        const std::vector<int>& cells) {
    std::vector<StitchIndex> chosen;
    for (std::size_t i = 1; i < cells.size(); ++i) {
        const auto index = static_cast<StitchIndex>(i);
        if (cells[i] > 0 && takesPart(stitches, index)) chosen.push_back(index);
    }
    // The gaps of a chart are never its ground, however many they are.
    const auto isGap = [&](StitchIndex i) { return stitches[i].kind == StitchKind::NoStitch; };
    std::stable_sort(chosen.begin(), chosen.end(), [&](StitchIndex a, StitchIndex b) {
        return std::pair(isGap(b), cells[a]) > std::pair(isGap(a), cells[b]);
    });
    if (chosen.size() > Alphabet::kMaxLetters) chosen.resize(Alphabet::kMaxLetters);
    const auto add = [&](std::string_view id) {
        const auto index = stitches.find(id);
        if (!index || !takesPart(stitches, *index) || chosen.size() >= Alphabet::kMaxLetters)
            return;
        if (std::find(chosen.begin(), chosen.end(), *index) == chosen.end())
            chosen.push_back(*index);
    };
    for (std::size_t i = 0, drawn = chosen.size(); i < drawn; ++i) add(stitches[chosen[i]].mirror);
    for (const char* id : {"k", "yo", "k2tog", "ssk"}) add(id);
    return chosen;
}

}  // namespace

Alphabet alphabetOf(const Chart& chart) {
    const StitchCatalogue& stitches = *chart.stitches;
    const std::vector<int> cells = cellsOfEach(chart);
    Alphabet alphabet;
    alphabet.stitches = chosenStitches(stitches, cells);
    alphabet.letterOf.assign(stitches.size() + 1, Alphabet::kNone);
    for (int letter = 0; letter < alphabet.size(); ++letter) {
        alphabet.letterOf[alphabet.stitches[static_cast<std::size_t>(letter)]] =
            static_cast<Alphabet::Letter>(letter);
    }
    double all = 0;
    for (const StitchIndex index : alphabet.stitches) all += cells[index] + kSmoothing;
    const double ground = cells[alphabet.stitches[0]] + kSmoothing;
    for (const StitchIndex index : alphabet.stitches) {
        const auto mirror = stitches.find(stitches[index].mirror);
        const auto letter = mirror ? alphabet.letterOf[*mirror] : Alphabet::kNone;
        alphabet.mirrors.push_back(letter == Alphabet::kNone ? alphabet.letterOf[index] : letter);
        alphabet.centred.push_back(stitches[index].kind == StitchKind::Decrease &&
                                   stitches[index].lean == Lean::Centred);
        if (stitches[index].kind == StitchKind::NoStitch) {
            alphabet.noStitch = static_cast<Alphabet::Letter>(alphabet.shares.size());
        }
        const bool isGround = index == alphabet.stitches[0];
        alphabet.shares.push_back((cells[index] + kSmoothing) / (isGround ? all : all - ground));
    }
    return alphabet;
}

LetterGrid::LetterGrid(const Chart& chart, const Alphabet& alphabet, int firstRow, int lastRow)
    : width_(chart.width),
      height_(lastRow - firstRow + 1),
      firstRow_(firstRow),
      noStitch_(alphabet.noStitch) {
    letters_.reserve(static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_));
    for (int row = firstRow; row <= lastRow; ++row) {
        for (const StitchIndex index : chart.row(row).cells()) {
            letters_.push_back(alphabet.letterOf[index]);
        }
    }
}

}  // namespace lacewright
