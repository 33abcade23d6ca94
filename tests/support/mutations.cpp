#include "tests/support/mutations.h"

#include "core/check/misfits.h"

namespace lacewright::test {
namespace {

using Cells = std::vector<StitchIndex>;

StitchIndex stitchCalled(std::string_view id) {
    return builtInStitches()->find(id).value();
}

StitchIndex mirrorOf(const StitchCatalogue& stitches, StitchIndex index) {
    return stitches.find(stitches[index].mirror).value_or(index);
}

std::optional<std::size_t> chosenCell(const Cells& cells, const StitchCatalogue& stitches,
                                      Slip slip, std::mt19937& random) {
    const bool figuresOnly = random() % 2 == 0;
    std::vector<std::size_t> eligible;
    for (std::size_t x = 0; x < cells.size(); ++x) {
        const StitchIndex cell = cells[x];
        if (cell == stitchCalled("no-stitch") || cell == kCovered) continue;
        if (slip != Slip::LeanSwapped && stitches[cell].span > 1) continue;
        if (slip == Slip::LeanSwapped ? mirrorOf(stitches, cell) == cell
                                      : figuresOnly && cell == stitchCalled("k")) {
            continue;
        }
        eligible.push_back(x);
    }
    if (eligible.empty()) return std::nullopt;
    return eligible[random() % eligible.size()];
}

StitchIndex anotherStitch(StitchIndex drawn, std::mt19937& random) {
    const char* const ids[] = {"k", "yo", "k2tog", "ssk", "s2kp"};
    StitchIndex other = drawn;
    while (other == drawn) other = stitchCalled(ids[random() % std::size(ids)]);
    return other;
}

Cells without(Cells cells, std::size_t x, StitchIndex filler) {
    cells.erase(cells.begin() + static_cast<std::ptrdiff_t>(x));
    cells.push_back(filler);
    return cells;
}

Cells with(Cells cells, std::size_t x, StitchIndex added) {
    cells.insert(cells.begin() + static_cast<std::ptrdiff_t>(x), added);
    cells.pop_back();
    return cells;
}

}  // namespace

const char* nameOf(Slip slip) {
    switch (slip) {
        case Slip::Replaced:
            return "replaced";
        case Slip::Dropped:
            return "dropped";
        case Slip::Doubled:
            return "doubled";
        case Slip::LeanSwapped:
            return "lean swapped";
    }
    return "";
}

std::optional<Mutant> mutated(const Chart& chart, Slip slip, int row, std::mt19937& random) {
    const Cells& right = chart.row(row).cells();
    const bool moves = slip == Slip::Dropped || slip == Slip::Doubled;
    if (moves && chart.row(row).traits().hasWide) return std::nullopt;
    const auto x = chosenCell(right, *chart.stitches, slip, random);
    if (!x) return std::nullopt;
    Cells wrong = right;
    Mutant mutant{chart, row, {}, false};
    if (slip == Slip::Replaced) {
        wrong[*x] = anotherStitch(right[*x], random);
        mutant.columns = {static_cast<int>(*x) + 1};
    } else if (slip == Slip::LeanSwapped) {
        wrong[*x] = mirrorOf(*chart.stitches, right[*x]);
        mutant.columns = {static_cast<int>(*x) + 1};
    } else if (slip == Slip::Dropped) {
        wrong = without(right, *x, stitchCalled("k"));
        for (std::size_t p = 0; p < wrong.size(); ++p) {
            if (with(wrong, p, right[*x]) == right) mutant.columns.insert(static_cast<int>(p) + 1);
        }
    } else {
        wrong = with(right, *x, right[*x]);
        for (std::size_t p = 0; p < wrong.size(); ++p) {
            if (without(wrong, p, right.back()) == right)
                mutant.columns.insert(static_cast<int>(p) + 1);
        }
    }
    if (wrong == right) return std::nullopt;
    mutant.chart.rows.replace(static_cast<std::size_t>(row), makeRow(wrong, *chart.stitches));
    mutant.countsChange = !linksOf(mutant.chart).fit();
    return mutant;
}

}  // namespace lacewright::test
