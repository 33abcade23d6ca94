#include "core/check/advice.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/check/culprits.h"
#include "core/check/edge_mends.h"
#include "core/check/log_odds.h"
#include "core/check/mend.h"
#include "core/check/mend_words.h"
#include "core/check/problems.h"

namespace lacewright {
namespace {

constexpr std::size_t kMendsTried = 16;   // before giving up on a finding
constexpr double kLeastWeight = 0.002;    // suspects below are not named
constexpr double kOddEnough = 9.5;        // log odds from which an odd cell is a finding
constexpr double kShiftOddEnough = 12.0;  // the same for a row that looks shifted
constexpr double kOddAtAll = CulpritSearch::kLeastOdd;  // log odds from which it is listed
constexpr std::size_t kMaxOddFindings = 4;
constexpr std::size_t kMaxSuspectsOfChart = 24;
constexpr int kCellsAdvised = 3000;  // of the rows of findings that get advice

class Adviser {
 public:
    Adviser(const Chart& chart, const Report& report) : chart_(chart), search_(chart) {
        collectProblems(report.findings, known_);
        // Whether the rows can be worked again is looked at only when every row fits.
        const auto& closing = search_.links().closing;
        closingKnown_ = closing && !closing->fits();
    }

    void adviseOn(Finding& finding) {
        const bool closing = finding.rule == "closing";
        const auto row = closing ? std::optional(search_.links().closingRow)
                                 : chart_.indexOfRowNumber(finding.row);
        if (!row) return;
        std::vector<int> following;
        for (const Finding& folded : finding.folded) {
            const auto upper = chart_.indexOfRowNumber(folded.row);
            if (upper && isAboutCounts(folded)) following.push_back(*upper);
        }
        finding.suspects.clear();
        for (const CellGuess& guess : search_.suspects(*row, closing, following)) {
            if (guess.weight < kLeastWeight || finding.suspects.size() == kMaxSuspects) break;
            finding.suspects.push_back(
                {chart_.rowNumber(guess.row), guess.column, guess.weight, {}});
        }
        finding.mends = mendsOf(finding, search_.repairs(*row, closing));
    }

    // Two rows in error, one above the other, can count like one row that lost a stitch. Where the
    // rest of the chart speaks for two, each becomes a finding.
    void tellApart(std::vector<Finding>& findings, std::size_t most) {
        std::vector<Finding> apart;
        for (Finding& finding : findings) {
            const auto row = chart_.indexOfRowNumber(finding.row);
            const auto upper =
                std::find_if(finding.folded.begin(), finding.folded.end(), isAboutCounts);
            if (!isAboutCounts(finding) || !row || upper == finding.folded.end()) continue;
            if (most-- == 0) break;
            if (chart_.indexOfRowNumber(upper->row) != *row + 1 || !search_.wrongApart(*row))
                continue;
            apart.push_back(std::move(*upper));
            finding.folded.erase(upper);
        }
        std::move(apart.begin(), apart.end(), std::back_inserter(findings));
        std::stable_sort(findings.begin(), findings.end(),
                         [](const Finding& a, const Finding& b) { return a.row < b.row; });
    }

    // `all` are the findings of the chart.
    void adviseOnEdge(Finding& finding, const std::vector<Finding>& all) {
        bareEdges_ = bareEdges(checker_.update(chart_));
        EdgeMends proposals = edgeMendsFor(chart_, finding);
        finding.mends.clear();
        if (!offerFirst(finding, proposals.substitutions))
            offerFirst(finding, bothEdges(finding, proposals.substitutions, all));
        offerFirst(finding, proposals.moves);
    }

    std::vector<Finding> oddFindings() {
        std::vector<Finding> findings;
        std::set<int> shifted;
        for (const auto& odd : oddCells()) {
            if (odd.cell.weight < kOddEnough || findings.size() == kMaxOddFindings) break;
            if (odd.shift && odd.cell.weight < kShiftOddEnough) continue;
            // A row that is shifted is odd in many cells for one reason.
            const bool told =
                shifted.contains(odd.cell.row) ||
                (odd.shift && std::any_of(findings.begin(), findings.end(), [&](const Finding& f) {
                     return f.row == chart_.rowNumber(odd.cell.row);
                 }));
            if (told) continue;
            if (odd.shift) shifted.insert(odd.cell.row);
            findings.push_back(oddFinding(odd));
        }
        return findings;
    }

    // Of the whole chart: those of the findings about counts, and the odd cells of other rows.
    std::vector<Suspect> suspects(const std::vector<Finding>& findings) {
        std::vector<Suspect> all;
        for (const Finding& finding : findings) {
            if (!isAboutCounts(finding)) continue;
            all.insert(all.end(), finding.suspects.begin(), finding.suspects.end());
        }
        addOddCells(all);
        std::stable_sort(all.begin(), all.end(),
                         [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
        dropRepeated(all);
        if (all.size() > kMaxSuspectsOfChart) all.resize(kMaxSuspectsOfChart);
        return all;
    }

 private:
    // In a row that looks shifted the places where that may have happened share the suspicion, and
    // little of it is left for single cells.
    void addOddCells(std::vector<Suspect>& all) {
        std::map<int, double> shifted;  // log odds, by row index
        for (const auto& odd : oddCells()) {
            if (!odd.shift) continue;
            const auto known = shifted.find(odd.cell.row);
            shifted[odd.cell.row] =
                known == shifted.end() ? odd.cell.weight : logAdd(known->second, odd.cell.weight);
        }
        const auto share = [](double logOdds, double enough) {
            return 1 / (1 + std::exp(enough - logOdds));
        };
        for (const auto& odd : oddCells()) {
            if (odd.cell.weight < kOddAtAll) break;
            const auto known = shifted.find(odd.cell.row);
            double weight = share(odd.cell.weight, kOddEnough);
            if (odd.shift) {
                weight = share(known->second, kShiftOddEnough) *
                         std::exp(odd.cell.weight - known->second);
            } else if (known != shifted.end()) {
                weight *= 1 - share(known->second, kShiftOddEnough);
            }
            all.push_back({chart_.rowNumber(odd.cell.row), odd.cell.column, weight,
                           (*chart_.stitches)[odd.rather].id});
        }
    }

    // The list is sorted: of each cell the first is kept.
    static void dropRepeated(std::vector<Suspect>& sorted) {
        std::set<std::pair<int, int>> seen;
        std::erase_if(sorted, [&](const Suspect& s) {
            return !seen.insert({s.row, s.column}).second;
        });
    }

    const std::vector<CulpritSearch::OddCell>& oddCells() {
        if (!odd_) odd_ = search_.oddCells();
        return *odd_;
    }

    static Mend mendOf(const Chart& chart, const Repair& repair) {
        Mend mend{labelOf(chart, repair), {}, {}, {}};
        if (repair.shift) {
            mend.steps.push_back(RewriteRow{repair.cells.front().row, repair.shift->after});
            return mend;
        }
        for (const Repair::Cell& cell : repair.cells) {
            mend.steps.push_back(
                ReplaceStitch{cell.row, cell.column, (*chart.stitches)[cell.stitch].id});
        }
        return mend;
    }

    // Applied and checked again: the finding is gone, and nothing new has come up.
    bool helps(const Finding& finding, const Chart& mended) {
        std::set<Problem> problems;
        collectProblems(checker_.update(mended).findings, problems);
        for (Problem own : problemsOf(finding)) {
            for (const bool fault : {false, true}) {
                own.fault = fault;
                if (problems.contains(own)) return false;
            }
        }
        return std::all_of(problems.begin(), problems.end(), [&](const Problem& problem) {
            return known_.contains(problem) || becameMilder(problem) ||
                   (closingKnown_ && problem.rule == "closing");
        });
    }

    static std::ptrdiff_t bareEdges(const Report& report) {
        return std::count_if(report.findings.begin(), report.findings.end(),
                             [](const Finding& f) { return f.rule == "edge-yarn-over"; });
    }

    // The first of the mends that helps and leaves no yarn over bare at an edge.
    bool offerFirst(Finding& finding, const std::vector<Mend>& mends) {
        for (const Mend& mend : mends) {
            const Result<Chart> mended = applyMend(chart_, mend);
            if (!mended || !helps(finding, *mended)) continue;
            if (bareEdges(checker_.report()) > bareEdges_) continue;
            finding.mends.push_back(mend);
            return true;
        }
        return false;
    }

    // What the sizes part at their other edge on the row: a finding for all that part the same.
    // Empty when there is a size that parts nothing there.
    static std::vector<Finding> atOtherEdge(const Finding& finding,
                                            const std::vector<Finding>& all) {
        std::vector<Finding> others;
        std::size_t sizes = 0;
        for (const Finding& other : all) {
            if (!isAboutEdge(other) || other.row != finding.row || other.message == finding.message)
                continue;
            Finding same = other;
            std::erase_if(same.sizes, [&](const std::string& size) {
                return std::find(finding.sizes.begin(), finding.sizes.end(), size) ==
                       finding.sizes.end();
            });
            sizes += same.sizes.size();
            if (!same.sizes.empty()) others.push_back(std::move(same));
        }
        return sizes == finding.sizes.size() ? others : std::vector<Finding>{};
    }

    // Where both edges of a size part companions on a row, and one makes up for the other, only
    // both can be mended: in one edit.
    std::vector<Mend> bothEdges(const Finding& finding, const std::vector<Mend>& here,
                                const std::vector<Finding>& all) const {
        std::vector<std::vector<Mend>> there;
        for (const Finding& other : atOtherEdge(finding, all)) {
            there.push_back(edgeMendsFor(chart_, other).substitutions);
            if (there.back().empty()) return {};
        }
        if (there.empty()) return {};
        std::vector<Mend> both;
        for (const Mend& one : here) {
            for (const std::size_t way : {std::size_t{0}, std::size_t{1}}) {
                Mend mend = one;
                for (const std::vector<Mend>& ways : there) {
                    const Mend& other = ways[std::min(way, ways.size() - 1)];
                    mend.label += "; at the other edge f" + other.label.substr(1);  // "For ..."
                    mend.steps.insert(mend.steps.end(), other.steps.begin(), other.steps.end());
                }
                mend.reason += "; one edge makes up for the other, so both are mended";
                both.push_back(std::move(mend));
            }
        }
        return both;
    }

    bool becameMilder(Problem problem) const {
        if (problem.fault) return false;
        problem.fault = true;
        return known_.contains(problem);
    }

    std::vector<Mend> mendsOf(const Finding& finding, const std::vector<Repair>& repairs) {
        std::vector<Mend> mends;
        std::size_t tried = 0;
        for (const Repair& repair : repairs) {
            if (mends.size() == kMaxMends || ++tried > kMendsTried) break;
            Mend mend = mendOf(chart_, repair);
            const Result<Chart> mended = applyMend(chart_, mend);
            if (!mended || !helps(finding, *mended)) continue;
            mend.redrawn = redrawnCells(chart_, *mended);
            mend.reason =
                reasonFor(chart_, *mended, repair, search_.beliefsAt(repair.cells.front().row));
            if (std::find(mends.begin(), mends.end(), mend) == mends.end())
                mends.push_back(std::move(mend));
        }
        return mends;
    }

    Finding oddFinding(const CulpritSearch::OddCell& odd) {
        const auto [row, column, weight] = odd.cell;
        Finding finding;
        finding.rule = "symmetry";
        finding.severity = Severity::Warning;
        finding.row = chart_.rowNumber(row);
        finding.columns = {column};
        const std::string place = placeInWords(chart_, row, column);
        const std::string rather = stitchInWords((*chart_.stitches)[odd.rather]);
        if (odd.shift) {
            finding.message = "The rest of the chart suggests that " + rather +
                              (odd.shift->putIn ? " is missing from " : " is one too many in ") +
                              place + ": what follows stands one column too far to the " +
                              (odd.shift->putIn ? "right." : "left.");
        } else {
            const Stitch& drawn = (*chart_.stitches)[chart_.row(row).at(column)];
            finding.message = "The rest of the chart suggests " + rather + " in " + place +
                              ", where " + stitchInWords(drawn) + " is drawn.";
        }
        finding.suspects = {{finding.row, column, 1.0, (*chart_.stitches)[odd.rather].id}};
        finding.mends = mendsOf(finding, {{{{row, column, odd.rather}}, odd.shift, weight}});
        return finding;
    }

    const Chart& chart_;
    CulpritSearch search_;
    Checker checker_;
    std::set<Problem> known_;
    std::optional<std::vector<CulpritSearch::OddCell>> odd_;
    bool closingKnown_ = false;
    std::ptrdiff_t bareEdges_ = 0;  // yarn overs at an edge before
};

}  // namespace

void advise(const Chart& chart, Report& report) {
    Adviser adviser(chart, report);
    std::size_t advised = 0;
    std::size_t edges = 0;
    const auto affordable = std::clamp<std::size_t>(
        static_cast<std::size_t>(kCellsAdvised / chart.width), 12, kMaxAdvised);
    adviser.tellApart(report.findings, affordable);
    for (Finding& finding : report.findings) {
        if (isAboutCounts(finding) && advised++ < affordable) adviser.adviseOn(finding);
        if (isAboutEdge(finding) && edges++ < affordable)
            adviser.adviseOnEdge(finding, report.findings);
    }
    std::erase_if(report.findings,
                  [](const Finding& finding) { return finding.rule == "symmetry"; });
    report.suspects = adviser.suspects(report.findings);
    for (Finding& odd : adviser.oddFindings()) report.findings.push_back(std::move(odd));
    std::stable_sort(report.findings.begin(), report.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.row < b.row; });
}

void advise(const Chart& chart, Finding& finding) {
    if (isAboutCounts(finding)) Adviser(chart, check(chart)).adviseOn(finding);
    if (isAboutEdge(finding)) {
        const Report report = check(chart);
        Adviser(chart, report).adviseOnEdge(finding, report.findings);
    }
}

}  // namespace lacewright
