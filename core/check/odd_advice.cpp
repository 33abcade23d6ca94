#include "core/check/odd_advice.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "core/check/log_odds.h"
#include "core/check/mend_words.h"

namespace lacewright {
namespace {

using OddCell = CulpritSearch::OddCell;

constexpr double kOddEnough = 9.5;        // log odds from which an odd cell is a finding
constexpr double kShiftOddEnough = 12.0;  // the same for a row that looks shifted
constexpr std::size_t kMaxOddFindings = 4;

Finding findingOf(const Chart& chart, const OddCell& odd) {
    const int row = odd.cell.row;
    const int column = odd.cell.column;
    Finding finding;
    finding.rule = "symmetry";
    finding.severity = Severity::Warning;
    finding.row = chart.rowNumber(row);
    finding.columns = {column};
    const Stitch& meant = (*chart.stitches)[odd.rather];
    const std::string place = placeInWords(chart, row, column);
    if (odd.shift) {
        finding.message = "The rest of the chart suggests that " + stitchInWords(meant) +
                          (odd.shift->putIn ? " is missing from " : " is one too many in ") +
                          place + ": what follows stands one column too far to the " +
                          (odd.shift->putIn ? "right." : "left.");
    } else {
        const Stitch& drawn = (*chart.stitches)[chart.row(row).at(column)];
        finding.message = "The rest of the chart suggests " + stitchInWords(meant) + " in " +
                          place + ", where " + stitchInWords(drawn) + " is drawn.";
    }
    finding.suspects = {{finding.row, column, 1.0, meant.id}};
    return finding;
}

}  // namespace

std::vector<OddFinding> oddFindings(const Chart& chart, std::vector<OddCell> oddCells) {
    std::stable_sort(oddCells.begin(), oddCells.end(),
                     [](const OddCell& a, const OddCell& b) { return a.sure > b.sure; });
    std::vector<OddFinding> findings;
    std::set<int> told;     // rows
    std::set<int> shifted;  // rows
    for (const OddCell& odd : oddCells) {
        if (odd.sure < kOddEnough || findings.size() == kMaxOddFindings) break;
        const int row = odd.cell.row;
        if (odd.shift && odd.sure < kShiftOddEnough) continue;
        if (shifted.contains(row) || (odd.shift && told.contains(row))) continue;
        told.insert(row);
        if (odd.shift) shifted.insert(row);
        findings.push_back({findingOf(chart, odd),
                            {{{row, odd.cell.column, odd.rather}}, odd.shift, {}, odd.sure}});
    }
    return findings;
}

std::vector<Suspect> oddSuspects(const Chart& chart, const std::vector<OddCell>& oddCells) {
    std::map<int, double> shifted;  // log odds, by row index
    for (const OddCell& odd : oddCells) {
        if (!odd.shift) continue;
        const auto [known, isNew] = shifted.try_emplace(odd.cell.row, odd.cell.weight);
        if (!isNew) known->second = logAdd(known->second, odd.cell.weight);
    }
    const auto weightOf = [](double logOdds) { return 1 / (1 + std::exp(kOddEnough - logOdds)); };
    std::vector<Suspect> suspects;
    for (const OddCell& odd : oddCells) {
        const auto shift = shifted.find(odd.cell.row);
        double weight = weightOf(odd.cell.weight);
        if (odd.shift) {
            weight = weightOf(shift->second) * std::exp(odd.cell.weight - shift->second);
        } else if (shift != shifted.end()) {
            weight /= 1 + std::exp(shift->second - odd.cell.weight);
        }
        suspects.push_back({chart.rowNumber(odd.cell.row), odd.cell.column, weight,
                            (*chart.stitches)[odd.rather].id});
    }
    return suspects;
}

}  // namespace lacewright
