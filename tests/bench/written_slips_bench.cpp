// Puts known errors into the written rows of published patterns and tells how well they are found.
// Usage: written_slips_bench [slips per line] [tune|held] [cases]
//
// Seeded like mutation_bench, and what counts as right is the same; places are those of the row as
// worked, what repeats once. A slip is silent when the verdict stays "can be knitted".
#include <cstdio>
#include <cstdlib>
#include <map>

#include "core/base/disk.h"
#include "core/verdict/placed_row.h"
#include "core/verdict/written_advice.h"
#include "core/verdict/written_report.h"
#include "core/words/reader.h"
#include "tests/bench/mutation_corpora.h"
#include "tests/bench/seconds.h"
#include "tests/bench/slip_score.h"
#include "tests/support/published_charts.h"
#include "tests/support/written_slips.h"

namespace lacewright::test {
namespace {

using Stitches = std::vector<std::string>;

// The stitches of a row as worked. Empty when it cannot be counted.
Stitches stitchesOf(const WrittenPattern& pattern, int number) {
    const WrittenProof proof = proveWritten(pattern);
    for (std::size_t row = 0; row < pattern.rows.size(); ++row) {
        if (pattern.rows[row].number != number) continue;
        const auto placed = placedRow(pattern, row, proof, 0);
        if (placed) return placed->ids();
    }
    return {};
}

Stitches without(Stitches stitches, std::size_t at) {
    stitches.erase(stitches.begin() + static_cast<std::ptrdiff_t>(at));
    return stitches;
}

// The places where undoing the slip gives the right row.
std::set<int> rightPlaces(const Stitches& right, const Stitches& wrong) {
    std::set<int> places;
    if (right.size() == wrong.size()) {
        for (std::size_t i = 0; i < right.size(); ++i) {
            if (right[i] != wrong[i]) places.insert(static_cast<int>(i) + 1);
        }
        return places;
    }
    const bool dropped = right.size() > wrong.size();
    const Stitches& longer = dropped ? right : wrong;
    for (std::size_t i = 0; i < longer.size(); ++i) {
        if (without(longer, i) == (dropped ? wrong : right)) places.insert(static_cast<int>(i) + 1);
    }
    return places;
}

struct Judged {
    Score score;
    Report report;
    bool silent = false;
    const Finding* finding = nullptr;
};

const Finding* findingFor(const Report& report, int row) {
    const auto isAbout = [&](const Finding& finding, int number) {
        if (finding.row == number) return true;
        return std::any_of(finding.folded.begin(), finding.folded.end(),
                           [&](const Finding& folded) { return folded.row == number; });
    };
    for (const int number : {row, row + 1}) {
        for (const Finding& finding : report.findings) {
            if (finding.severity == Severity::Fault && isAbout(finding, number)) return &finding;
        }
    }
    for (const Finding& finding : report.findings) {
        if (finding.rule == "closing") return &finding;
    }
    // A repeat of another width can show wherever the rows above it no longer go round.
    for (const Finding& finding : report.findings) {
        if (finding.severity == Severity::Fault) return &finding;
    }
    return nullptr;
}

bool restores(const Mend& mend, int row, const Stitches& right) {
    return mend.reworked.size() == 1 && mend.reworked[0].row == row &&
           mend.reworked[0].stitches == right;
}

// Nothing for a slip whose text cannot be read, or that changes nothing that can be placed.
std::optional<Judged> judge(const std::string& text, const SlippedText& slip) {
    const ReadRows right = readWritten(text);
    const Stitches meant = stitchesOf(right.pattern, slip.row);
    Judged judged;
    const double start = threadSeconds();
    const ReadRows read = readWritten(slip.text);
    if (read.hasErrors()) return std::nullopt;
    judged.report = reportOnRows(read, {0}).report;
    adviseOnRows(read.pattern, {0}, judged.report);
    judged.score.ms = judged.score.worstMs = 1e3 * (threadSeconds() - start);
    const Stitches drawn = stitchesOf(read.pattern, slip.row);
    const std::set<int> places = rightPlaces(meant, drawn);
    if (places.empty()) return std::nullopt;
    judged.score.mutants = 1;
    const Report& report = judged.report;
    const bool closed = reportOnRows(right, {0}).report.closes.value_or(false);
    judged.silent = !report.hasFault() && (!closed || report.closes.value_or(false));
    std::vector<const Finding*> findings;
    if (judged.silent) {
        for (const Finding& finding : report.findings) {
            if (finding.rule == "symmetry") findings.push_back(&finding);
        }
    } else if ((judged.finding = findingFor(report, slip.row)) != nullptr) {
        findings.push_back(judged.finding);
    }
    judged.score.detected = findings.empty() ? 0 : 1;
    for (const Finding* finding : findings) {
        for (const Mend& mend : finding->mends) {
            if (restores(mend, slip.row, meant)) judged.score.mended = 1;
        }
    }
    const bool advised = judged.finding != nullptr && !judged.finding->suspects.empty();
    const Rank rank =
        rankOf(advised ? judged.finding->suspects : report.suspects, slip.row, places);
    judged.score.first = rank.first;
    judged.score.three = rank.three;
    judged.score.ceiling = rank.ceiling;
    return judged;
}

void printCase(const std::string& name, Slip slip, const SlippedText& text, const Judged& judged) {
    std::printf("\n%s: %s%s, row %d (first %.2f, three %.2f, mended %.0f)\n", name.c_str(),
                nameOf(slip), judged.silent ? ", silent" : "", text.row, judged.score.first,
                judged.score.three, judged.score.mended);
    std::printf("%s", text.text.c_str());
    if (judged.finding != nullptr) {
        std::printf("  %s\n", judged.finding->message.c_str());
        for (const Mend& mend : judged.finding->mends)
            std::printf("  mend: %s\n", mend.label.c_str());
    }
    const auto& suspects =
        judged.finding != nullptr ? judged.finding->suspects : judged.report.suspects;
    for (std::size_t i = 0; i < std::min<std::size_t>(suspects.size(), 6); ++i) {
        std::printf("  row %d place %d: %.3f\n", suspects[i].row, suspects[i].column,
                    suspects[i].weight);
    }
}

int run(int perLine, CorpusHalf half, bool cases) {
    std::mt19937 random(half == CorpusHalf::Held ? 90210U : 2024U);
    const std::vector<PublishedText> texts = halfOf(publishedTexts(), half);
    std::map<std::pair<bool, Slip>, Score> scores;
    Score visible;
    Score everything;
    int unread = 0;
    for (int i = 0; i < perLine * 4; ++i) {
        const auto& [name, text] = texts[random() % texts.size()];
        const Slip slip = kSlips[static_cast<std::size_t>(i) % std::size(kSlips)];
        const std::vector<int> rows = rowsToHit(text);
        if (rows.empty()) continue;
        const auto wrong = slipped(text, slip, rows[random() % rows.size()], random);
        if (!wrong) continue;
        const auto judged = judge(text, *wrong);
        if (!judged) {
            ++unread;
            continue;
        }
        if (cases && judged->score.first < 0.5) printCase(name, slip, *wrong, *judged);
        scores[{!judged->silent, slip}].add(judged->score);
        if (!judged->silent) visible.add(judged->score);
        everything.add(judged->score);
    }
    Score::printHead();
    for (const auto& [key, score] : scores)
        score.print("written, " + std::string(nameOf(key.second)) + (key.first ? "" : ", silent"));
    visible.print("WRITTEN ROWS, counts change");
    everything.print("WRITTEN ROWS, all slips");
    std::printf("and %d slips that are no longer read, or that no place can be told of\n", unread);
    return 0;
}

}  // namespace
}  // namespace lacewright::test

int main(int argc, char** argv) {
    using namespace lacewright::test;
    return run(argc > 1 ? std::atoi(argv[1]) : 100, halfNamed(argc > 2 ? argv[2] : ""),
               argc > 3 && std::string(argv[3]) == "cases");
}
