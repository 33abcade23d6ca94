#include "core/check/advice.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/check/culprits.h"
#include "core/check/edge_advice.h"
#include "core/check/log_odds.h"
#include "core/check/mend.h"
#include "core/check/mend_trial.h"
#include "core/check/mend_words.h"
#include "core/check/odd_advice.h"
#include "core/check/problems.h"

namespace lacewright {
namespace {

constexpr std::size_t kMendsTried = 16;  // before giving up on a finding
constexpr double kSureApart = 2.0;       // log odds from which two rows are two faults, or one
constexpr int kCellsAdvised = 3000;      // of the rows of findings that get advice

Mend mendOf(const Chart& chart, const Repair& repair) {
    Mend mend{labelOf(chart, repair), {}, {}, {}};
    if (repair.castOn) {
        mend.steps.emplace_back(ChangeCastOn{*repair.castOn});
        return mend;
    }
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

// Whether the rows can be worked again is looked at only when every row fits.
bool closingIsOut(const Links& links) {
    return links.closing && !links.closing->fits();
}

// How likely it is that cells are wrong and not the cast-on.
double shareOfCells(const std::vector<Repair>& repairs) {
    double cells = kImpossible;
    double castOns = kImpossible;
    for (const Repair& repair : repairs) {
        double& logOdds = repair.castOn ? castOns : cells;
        logOdds = logAdd(logOdds, repair.logOdds);
    }
    return castOns == kImpossible ? 1 : 1 / (1 + std::exp(castOns - cells));
}

// The list is sorted: of each cell the first is kept.
void dropRepeated(std::vector<Suspect>& sorted) {
    std::set<std::pair<int, int>> seen;
    std::erase_if(sorted, [&](const Suspect& s) { return !seen.insert({s.row, s.column}).second; });
}

class Adviser {
 public:
    Adviser(const Chart& chart, const Report& report)
        : chart_(chart), search_(chart), trial_(chart, report, closingIsOut(search_.links())) {}

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
        const auto repairs = search_.repairs(*row, closing);
        const double share = shareOfCells(repairs);
        for (Suspect& suspect : finding.suspects) suspect.weight *= share;
        finding.mends = mendsOf(finding, repairs);
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
            if (chart_.indexOfRowNumber(upper->row) != *row + 1 ||
                search_.logApart(*row) < kSureApart)
                continue;
            apart.push_back(std::move(*upper));
            finding.folded.erase(upper);
        }
        std::move(apart.begin(), apart.end(), std::back_inserter(findings));
        std::stable_sort(findings.begin(), findings.end(),
                         [](const Finding& a, const Finding& b) { return a.row < b.row; });
    }

    // A first row whose repeat does not go into the cast-on may be what the row above it fails by.
    void tellTogether(std::vector<Finding>& findings) {
        const auto lower = std::find_if(findings.begin(), findings.end(), [](const Finding& f) {
            return f.rule == "cast-on" && f.severity == Severity::Fault && f.sizes.empty();
        });
        if (lower == findings.end() || chart_.height() < 2) return;
        const auto upper = std::find_if(findings.begin(), findings.end(), [&](const Finding& f) {
            return f.rule == "continuity" && f.severity == Severity::Fault && f.sizes.empty() &&
                   f.row == chart_.rowNumber(1);
        });
        if (upper == findings.end() || search_.logApart(0) > -kSureApart) return;
        std::vector<Finding> more = std::move(upper->folded);
        upper->folded.clear();
        lower->folded.push_back(std::move(*upper));
        std::move(more.begin(), more.end(), std::back_inserter(lower->folded));
        findings.erase(upper);
    }

    void adviseOnEdge(Finding& finding, const std::vector<Finding>& all) {
        lacewright::adviseOnEdge(chart_, trial_, finding, all);
    }

    std::vector<Finding> oddFindings() {
        std::vector<Finding> findings;
        for (OddFinding& odd : lacewright::oddFindings(chart_, oddCells())) {
            odd.finding.mends = mendsOf(odd.finding, {odd.repair});
            findings.push_back(std::move(odd.finding));
        }
        return findings;
    }

    // Of the whole chart: those of the findings about counts, and the odd cells of other rows.
    std::vector<Suspect> suspects(const std::vector<Finding>& findings) {
        std::vector<Suspect> all = oddSuspects(chart_, oddCells());
        for (const Finding& finding : findings) {
            if (!isAboutCounts(finding)) continue;
            all.insert(all.end(), finding.suspects.begin(), finding.suspects.end());
        }
        std::stable_sort(all.begin(), all.end(),
                         [](const Suspect& a, const Suspect& b) { return a.weight > b.weight; });
        dropRepeated(all);
        if (all.size() > kMaxSuspectsInAll) all.resize(kMaxSuspectsInAll);
        return all;
    }

 private:
    const std::vector<CulpritSearch::OddCell>& oddCells() {
        if (!odd_) odd_ = search_.oddCells();
        return *odd_;
    }

    std::string reasonOf(const Chart& mended, const Repair& repair) {
        if (repair.castOn) return reasonForCastOn(chart_);
        return reasonFor(chart_, mended, repair, search_.beliefsAt(repair.cells.front().row));
    }

    std::vector<Mend> mendsOf(const Finding& finding, const std::vector<Repair>& repairs) {
        std::vector<Mend> mends;
        std::size_t tried = 0;
        for (const Repair& repair : repairs) {
            if (mends.size() == kMaxMends || ++tried > kMendsTried) break;
            Mend mend = mendOf(chart_, repair);
            const std::optional<Chart> mended = trial_.mended(finding, mend);
            if (!mended) continue;
            mend.redrawn = redrawnCells(chart_, *mended);
            mend.reason = reasonOf(*mended, repair);
            if (std::find(mends.begin(), mends.end(), mend) == mends.end())
                mends.push_back(std::move(mend));
        }
        return mends;
    }

    const Chart& chart_;
    CulpritSearch search_;
    MendTrial trial_;
    std::optional<std::vector<CulpritSearch::OddCell>> odd_;
};

}  // namespace

void advise(const Chart& chart, Report& report) {
    Adviser adviser(chart, report);
    std::size_t advised = 0;
    std::size_t edges = 0;
    const auto affordable = std::clamp<std::size_t>(
        static_cast<std::size_t>(kCellsAdvised / chart.width), 12, kMaxAdvised);
    adviser.tellApart(report.findings, affordable);
    adviser.tellTogether(report.findings);
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
