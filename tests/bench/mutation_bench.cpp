// Puts known errors into correct charts and tells how well their place and their mend are found.
// Usage: mutation_bench [mutants per line] [tune|held] [cases]
//
// Every line is seeded, so two runs print the same figures, times apart. `tune` takes one half of
// the handbook patterns and one set of seeds, `held` the other half and other seeds: look at single
// cases of the first only, and report both. Without either word all patterns are taken. `cases`
// prints every slip of one cell whose first suspect is wrong.
//
// What counts as right: the cell that was hit. Of a stitch left out, the places where putting it in
// again gives the right row; of one drawn twice, those where taking it out does: within a run of
// equal stitches every place is the same. Equal weights are counted by their chance (a tie of two
// is half a hit). A mend is right when it gives the row back as it was.
// A slip is silent when every row still fits: no count changes, or the chart is another one that
// could be meant, since nothing says what its first row takes or its last row leaves.
//   found%  the slip is reported; a silent one, as an oddity
//   first%  the likeliest suspect is right      three%  one of the likeliest three
//   mend%   a mend offered gives the row back   alone%  what blind choice by counts would reach
//   ceil%   what the place of the right cell in the list allows: below it others weigh as much
#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <map>
#include <memory>

#include "core/check/advice.h"
#include "core/check/mend.h"
#include "core/check/misfits.h"
#include "tests/bench/mutation_corpora.h"
#include "tests/bench/seconds.h"
#include "tests/bench/slip_score.h"
#include "tests/support/motifs.h"
#include "tests/support/mutations.h"

namespace lacewright::test {
namespace {

// How many cells of the row and the one below could be redrawn so that every row fits: what the
// counts alone leave open.
double chanceFromCounts(const Mutant& mutant) {
    const char* const ids[] = {"k", "p", "yo", "k2tog", "ssk", "s2kp", "sk2p"};
    const StitchCatalogue& stitches = *mutant.chart.stitches;
    int possible = 0;
    for (int column = 1; column <= mutant.chart.width; ++column) {
        bool fits = false;
        for (const char* id : ids) {
            Chart tried = mutant.chart;
            auto cells = tried.row(mutant.row).cells();
            cells[static_cast<std::size_t>(column - 1)] = stitches.find(id).value();
            tried.rows.replace(static_cast<std::size_t>(mutant.row), makeRow(cells, stitches));
            fits = fits || linksOf(tried).fit();
        }
        possible += fits ? 1 : 0;
    }
    return possible == 0 ? 0 : 1.0 / possible;
}

bool restores(const Chart& wrong, const Mend& mend, const Chart& right, int row) {
    const Result<Chart> mended = applyMend(wrong, mend);
    return mended && mended->row(row) == right.row(row);
}

// The finding about a slip in `row`: its own, alone or folded under that of the row below, or that
// of the row above, or the closing.
const Finding* findingFor(const Report& report, const Chart& chart, int row) {
    const Finding* closing = nullptr;
    for (const Finding& finding : report.findings) {
        const bool counts = finding.rule == "continuity" || finding.rule == "cast-on";
        if (finding.rule == "closing" && finding.severity == Severity::Warning) closing = &finding;
        if (!counts || finding.severity != Severity::Fault) continue;
        if (finding.row == chart.rowNumber(row)) return &finding;
        for (const Finding& folded : finding.folded) {
            if (folded.rule == "continuity" && folded.row == chart.rowNumber(row)) return &finding;
        }
        if (row + 1 < chart.height() && finding.row == chart.rowNumber(row + 1)) return &finding;
    }
    return closing;
}

// A fault of any other kind is told of the row, such as counts that sizes do not reach.
bool isFaulty(const Report& report, const Chart& chart, int row) {
    return std::any_of(report.findings.begin(), report.findings.end(), [&](const Finding& finding) {
        return finding.severity == Severity::Fault && finding.row == chart.rowNumber(row);
    });
}

Score judge(const Chart& right, const Chart& wrong, const Mutant& mutant) {
    Score score;
    score.mutants = 1;
    const double start = test::threadSeconds();
    Report report = check(wrong);
    advise(wrong, report);
    score.ms = 1e3 * (test::threadSeconds() - start);
    score.worstMs = score.ms;
    Rank rank;
    if (mutant.countsChange) {
        const Finding* finding = findingFor(report, wrong, mutant.row);
        score.detected = finding != nullptr || isFaulty(report, wrong, mutant.row) ? 1 : 0;
        if (finding != nullptr) {
            rank = rankOf(finding->suspects, wrong.rowNumber(mutant.row), mutant.columns);
            for (const Mend& mend : finding->mends) {
                if (restores(wrong, mend, right, mutant.row)) score.mended = 1;
            }
        }
        if (wrong.rows == mutant.chart.rows) score.alone = chanceFromCounts(mutant);
    } else {
        rank = rankOf(report.suspects, wrong.rowNumber(mutant.row), mutant.columns);
        for (const Finding& finding : report.findings) {
            if (finding.rule != "symmetry") continue;
            score.detected = 1;
            for (const Mend& mend : finding.mends) {
                if (restores(wrong, mend, right, mutant.row)) score.mended = 1;
            }
        }
    }
    score.first = rank.first;
    score.three = rank.three;
    score.ceiling = rank.ceiling;
    return score;
}

std::string cellsFromTheRight(const Chart& chart, int row) {
    std::string text;
    for (const StitchIndex index : chart.row(row).cells())
        text += (index == kCovered ? "." : (*chart.stitches)[index].id) + " ";
    return text;
}

// A slip that was not placed: the row as it was and as it is, those about it, and the suspects.
void printCase(const std::string& corpus, Slip slip, const Chart& right, const Mutant& mutant,
               const Score& score) {
    const Chart& wrong = mutant.chart;
    std::printf("\n%s, %s: %s%s, row %d, columns", corpus.c_str(), right.name.c_str(), nameOf(slip),
                mutant.countsChange ? "" : ", silent", wrong.rowNumber(mutant.row));
    for (const int column : mutant.columns) std::printf(" %d", column);
    std::printf(" (first %.2f, three %.2f, mended %.0f)\n", score.first, score.three, score.mended);
    std::printf("  was %s\n  is  %s\n", cellsFromTheRight(right, mutant.row).c_str(),
                cellsFromTheRight(wrong, mutant.row).c_str());
    Report report = check(wrong);
    advise(wrong, report);
    const Finding* finding = mutant.countsChange ? findingFor(report, wrong, mutant.row) : nullptr;
    const auto& suspects = finding != nullptr ? finding->suspects : report.suspects;
    for (std::size_t i = 0; i < std::min<std::size_t>(suspects.size(), 6); ++i)
        std::printf("  row %d column %d: %.3f\n", suspects[i].row, suspects[i].column,
                    suspects[i].weight);
    if (finding != nullptr) {
        for (const Mend& mend : finding->mends) std::printf("  mend: %s\n", mend.label.c_str());
    }
    for (int row = right.height() - 1; row >= 0; --row) {
        if (right.height() < 24 || std::abs(row - mutant.row) < 8)
            std::printf("  %3d | %s\n", wrong.rowNumber(row),
                        cellsFromTheRight(wrong, row).c_str());
    }
}

// Whether a row with a slip or the row above it no longer fits. Of several slips in a chart one can
// make up for another, and then nothing shows.
bool shows(const Links& links, int row) {
    const auto r = static_cast<std::size_t>(row);
    const bool above = r + 1 < links.rows.size() && !links.rows[r + 1].fits();
    const bool closes = !links.closing || links.closing->fits() ||
                        (row != links.closingRow && row != links.closing->below);
    return !links.rows[r].fits() || above || !closes;
}

// `errors` slips in distinct rows; each that shows is scored, the others are counted.
Score manyErrors(const MutationCorpus& corpus, int errors, int trials, unsigned seed,
                 Score& symmetric, int& madeUpFor) {
    std::mt19937 random(seed + static_cast<unsigned>(errors));
    Score score;
    for (int trial = 0; trial < trials; ++trial) {
        const auto [right, isSymmetric] = corpus.draw(random);
        Chart wrong = right;
        std::vector<Mutant> mutants;
        std::set<int> rows;
        for (int attempt = 0; attempt < 200 && static_cast<int>(mutants.size()) < errors;
             ++attempt) {
            const int row = static_cast<int>(random() % static_cast<unsigned>(right.height()));
            if (rows.contains(row)) continue;
            const auto mutant = mutated(right, kSlips[random() % std::size(kSlips)], row, random);
            if (!mutant || !mutant->countsChange) continue;
            rows.insert(row);
            wrong.rows.replace(static_cast<std::size_t>(row),
                               mutant->chart.rows[static_cast<std::size_t>(row)]);
            mutants.push_back(*mutant);
        }
        const Links links = linksOf(wrong);
        for (const Mutant& mutant : mutants) {
            if (!shows(links, mutant.row)) {
                ++madeUpFor;
                continue;
            }
            const Score one = judge(right, wrong, mutant);
            score.add(one);
            if (isSymmetric) symmetric.add(one);
        }
    }
    return score;
}

void falseAlarms(CorpusHalf half) {
    std::printf("\nFalse alarms on correct charts\n");
    std::mt19937 random(99);
    for (const MutationCorpus& corpus : mutationCorpora(half)) {
        const int charts = corpus.name == "published" ? 60 : 200;
        int alarms = 0;
        std::set<std::string> alarmed;
        for (int i = 0; i < charts; ++i) {
            const Chart chart = corpus.draw(random).chart;
            Report report = check(chart);
            advise(chart, report);
            const bool alarm = report.hasFault() ||
                               std::any_of(report.findings.begin(), report.findings.end(),
                                           [](const Finding& f) { return f.rule == "symmetry"; });
            alarms += alarm ? 1 : 0;
            if (alarm && alarmed.insert(chart.name).second) {
                for (const Finding& finding : report.findings)
                    std::printf("%s: %s\n", chart.name.c_str(), finding.message.c_str());
            }
        }
        std::printf("%-44s %d of %d\n", corpus.name.c_str(), alarms, charts);
    }
}

void largeCharts() {
    std::printf("\nTime for check and advice on large charts with one fault\n");
    std::mt19937 random(5);
    for (const auto& [width, height] :
         {std::pair{100, 100}, std::pair{200, 60}, std::pair{200, 400}}) {
        const Chart small = randomMotif(Symmetry::MirrorAndDiagonals, random);
        std::vector<RowPtr> rows;
        for (int row = 0; row < height; ++row) {
            std::vector<StitchIndex> cells;
            const auto& source = small.row(row % small.height()).cells();
            const auto box = static_cast<std::size_t>(small.width - 4);
            while (static_cast<int>(cells.size() + box) <= width) {
                cells.insert(cells.end(), source.begin() + 2,
                             source.begin() + 2 + static_cast<std::ptrdiff_t>(box));
            }
            cells.resize(static_cast<std::size_t>(width), source[0]);
            rows.push_back(makeRow(cells, *small.stitches));
        }
        Chart chart = small;
        chart.repeats.clear();
        chart.rowRepeat.reset();
        chart.castOn.reset();
        chart.width = width;
        chart.rows = RowList(rows);
        std::optional<Mutant> mutant;
        while (!mutant || !mutant->countsChange)
            mutant = mutated(chart, Slip::Replaced, height / 2 / 2 * 2, random);
        Score score = judge(chart, mutant->chart, *mutant);
        std::printf("%d x %d: %.1f ms, first %.2f\n", width, height, score.ms, score.first);
    }
}

int run(int perLine, CorpusHalf half, bool cases) {
    const unsigned seed = half == CorpusHalf::Held ? 90210U : 2024U;
    Score::printHead();
    Score everything, published, symmetricVisible, symmetricLean;
    for (const MutationCorpus& corpus : mutationCorpora(half)) {
        std::mt19937 random(seed);
        std::map<std::pair<bool, Slip>, Score> scores;
        for (int i = 0; i < perLine * 4; ++i) {
            const auto [right, isSymmetric] = corpus.draw(random);
            const Slip slip = kSlips[static_cast<std::size_t>(i) % std::size(kSlips)];
            const int row = static_cast<int>(random() % static_cast<unsigned>(right.height()));
            const auto mutant = mutated(right, slip, row, random);
            if (!mutant) continue;
            const Score score = judge(right, mutant->chart, *mutant);
            if (cases && score.first < 0.5) printCase(corpus.name, slip, right, *mutant, score);
            scores[{mutant->countsChange, slip}].add(score);
            everything.add(score);
            if (corpus.published) published.add(score);
            if (isSymmetric && mutant->countsChange) symmetricVisible.add(score);
            if (isSymmetric && !mutant->countsChange && slip == Slip::LeanSwapped)
                symmetricLean.add(score);
        }
        for (const auto& [key, score] : scores) {
            score.print(corpus.name + ", " + nameOf(key.second) + (key.first ? "" : ", silent"));
        }
    }
    symmetricVisible.print("ALL with symmetry, counts change");
    symmetricLean.print("ALL with symmetry, silent lean swaps");
    published.print("PUBLISHED PATTERNS AND SAMPLES, all slips");
    everything.print("EVERYTHING, charts without symmetry too");
    for (int errors = 2; errors <= 4; ++errors) {
        Score all, symmetric;
        int madeUpFor = 0;
        for (const MutationCorpus& corpus : mutationCorpora(half)) {
            const Score score =
                manyErrors(corpus, errors, perLine / 2, seed + 4242U, symmetric, madeUpFor);
            score.print(corpus.name + ", " + std::to_string(errors) + " errors");
            all.add(score);
        }
        symmetric.print("ALL with symmetry, " + std::to_string(errors) + " errors");
        all.print("EVERYTHING, " + std::to_string(errors) + " errors");
        std::printf("and %d slips that others make up for, so that no count shows them\n",
                    madeUpFor);
    }
    falseAlarms(half);
    largeCharts();
    return 0;
}

}  // namespace
}  // namespace lacewright::test

int main(int argc, char** argv) {
    using namespace lacewright::test;
    return run(argc > 1 ? std::atoi(argv[1]) : 100, halfNamed(argc > 2 ? argv[2] : ""),
               argc > 3 && std::string(argv[3]) == "cases");
}
