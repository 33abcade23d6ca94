#include "core/check/alphabet.h"

#include <algorithm>
#include <optional>

#include "core/check/mirror_partner.h"
#include "core/check/turned_rows.h"
#include "core/check/usual_stitches.h"

namespace lacewright {
namespace {

// Cells that are thought to have been seen before the chart: of the ground, of every figure, and of
// all figures together as usual in lace.
constexpr double kGroundBefore = 0.5;
constexpr double kFigureBefore = 0.1;
constexpr double kFiguresBefore = 2.0;

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
    const auto add = [&](std::optional<StitchIndex> index) {
        if (!index || !takesPart(stitches, *index) || chosen.size() >= Alphabet::kMaxLetters)
            return;
        if (std::find(chosen.begin(), chosen.end(), *index) == chosen.end())
            chosen.push_back(*index);
    };
    for (std::size_t i = 0, drawn = chosen.size(); i < drawn; ++i)
        add(mirrorPartner(stitches, chosen[i], cells));
    for (const char* id : {"k", "yo", "k2tog"}) add(stitches.find(id));
    if (const auto leansRight = stitches.find("k2tog"))
        add(mirrorPartner(stitches, *leansRight, cells));
    const bool hasDouble = std::any_of(chosen.begin(), chosen.end(), [&](StitchIndex i) {
        return stitches[i].takes == 3 && stitches[i].makes == 1;
    });
    if (!hasDouble) add(stitches.find("sk2p"));
    return chosen;
}

LetterKind kindOf(const Stitch& stitch, bool isGround) {
    if (isGround) return LetterKind::Ground;
    if (stitch.kind == StitchKind::NoStitch) return LetterKind::Gap;
    return stitch.net() != 0 ? LetterKind::Shaping : LetterKind::Texture;
}

void turnRows(const Chart& chart, Alphabet& alphabet) {
    const StitchIndex ground = alphabet.stitches[0];
    const StitchIndex other = otherGround(*chart.stitches, ground);
    if (other != kCovered) alphabet.otherGround = alphabet.letterOf[other];
    alphabet.turned.assign(static_cast<std::size_t>(chart.height()), false);
    if (alphabet.otherGround != Alphabet::kNone) alphabet.turned = turnedRows(chart, ground, other);
}

void countLetters(const Chart& chart, Alphabet& alphabet) {
    std::vector<int> drawn(alphabet.stitches.size(), 0);
    for (int row = 0; row < chart.height(); ++row) {
        for (const StitchIndex index : chart.row(row).cells()) {
            const auto letter = alphabet.letterIn(row, index);
            if (letter >= 0) ++drawn[Alphabet::placeOf(letter)];
        }
    }
    double usual = 0;
    const auto usualOf = [&](std::size_t letter) {
        return usualness((*chart.stitches)[alphabet.stitches[letter]].id);
    };
    for (std::size_t i = 1; i < drawn.size(); ++i) usual += usualOf(i);
    double figures = 0;
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const double before =
            i == 0 ? kGroundBefore : kFigureBefore + kFiguresBefore * usualOf(i) / usual;
        alphabet.counts.push_back(drawn[i] + before);
        if (i > 0) figures += alphabet.counts.back();
    }
    for (std::size_t i = 0; i < drawn.size(); ++i) {
        const double all = i == 0 ? figures + alphabet.counts[0] : figures;
        alphabet.shares.push_back(alphabet.counts[i] / all);
    }
}

}  // namespace

Alphabet alphabetOf(const Chart& chart) {
    const StitchCatalogue& stitches = *chart.stitches;
    Alphabet alphabet;
    const auto cells = cellsOfEach(chart);
    alphabet.stitches = chosenStitches(stitches, cells);
    alphabet.letterOf.assign(stitches.size() + 1, Alphabet::kNone);
    for (int letter = 0; letter < alphabet.size(); ++letter) {
        alphabet.letterOf[alphabet.stitches[static_cast<std::size_t>(letter)]] =
            static_cast<Alphabet::Letter>(letter);
    }
    turnRows(chart, alphabet);
    countLetters(chart, alphabet);
    for (const StitchIndex index : alphabet.stitches) {
        const Stitch& stitch = stitches[index];
        const auto letter = alphabet.letterOf[mirrorPartner(stitches, index, cells)];
        alphabet.mirrors.push_back(letter == Alphabet::kNone ? alphabet.letterOf[index] : letter);
        alphabet.centred.push_back(stitch.kind == StitchKind::Decrease &&
                                   stitch.lean == Lean::Centred);
        alphabet.kinds.push_back(kindOf(stitch, index == alphabet.stitches[0]));
        if (alphabet.kinds.back() == LetterKind::Gap)
            alphabet.noStitch = static_cast<Alphabet::Letter>(alphabet.kinds.size() - 1);
    }
    return alphabet;
}

double Alphabet::shareWithout(Letter letter, Letter without) const {
    const std::size_t own = placeOf(letter);
    if (without <= kGround || letter == kGround) return shares[own];
    const double figures = counts[own] / shares[own];
    return std::max(counts[own] - (letter == without ? 1 : 0), 1e-6) / (figures - 1);
}

LetterGrid::LetterGrid(const Chart& chart, const Alphabet& alphabet, int firstRow, int lastRow)
    : width_(chart.width),
      height_(lastRow - firstRow + 1),
      firstRow_(firstRow),
      noStitch_(alphabet.noStitch) {
    letters_.reserve(static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_));
    for (int row = firstRow; row <= lastRow; ++row) {
        for (const StitchIndex index : chart.row(row).cells()) {
            letters_.push_back(alphabet.letterIn(row, index));
        }
    }
}

}  // namespace lacewright
