#include <set>
#include <utility>

#include "core/check/rules/rules.h"
#include "core/check/rules/speech.h"

namespace lacewright {
namespace {

Finding fault(const Survey& survey, int row, const char* rule, std::vector<int> columns,
              const std::string& what) {
    Finding finding;
    finding.rule = rule;
    finding.severity = Severity::Fault;
    finding.row = survey.chart().rowNumber(row);
    finding.message = rowName(survey.chart(), row) + ", " + columnWords(columns) + ": " + what;
    finding.columns = std::move(columns);
    return finding;
}

// The columns of the wide stitch that an edge between `right` and `right + 1` would cut.
std::vector<int> cutAt(const Chart& chart, int row, int right) {
    if (right < 1 || right >= chart.width) return {};
    const Row& cells = chart.row(row);
    if (cells.at(right + 1) != kCovered) return {};
    const int owner = cells.ownerOf(right + 1);
    const StitchIndex stitch = cells.at(owner);
    if (stitch == kCovered) return {};
    std::vector<int> columns;
    for (int c = owner; c < owner + (*chart.stitches)[stitch].span && c <= chart.width; ++c)
        columns.push_back(c);
    return columns;
}

void checkBroken(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    const Row& cells = chart.row(row);
    for (int column = 1; column <= cells.width();) {
        const StitchIndex stitch = cells.at(column);
        if (stitch == kCovered) {
            findings.push_back(fault(survey, row, "wide-stitch", {column},
                                     "the cell belongs to no stitch; draw one there."));
            ++column;
            continue;
        }
        const int span = (*chart.stitches)[stitch].span;
        int found = 1;
        while (found < span && column + found <= cells.width() &&
               cells.at(column + found) == kCovered)
            ++found;
        if (found < span) {
            const bool outside = column + span - 1 > cells.width();
            findings.push_back(fault(
                survey, row, "wide-stitch", {column},
                "\"" + (*chart.stitches)[stitch].name + "\" spans " + std::to_string(span) +
                    " cells but " +
                    (outside ? "reaches outside the chart." : "another stitch stands in them.")));
        }
        column += found;
    }
}

void checkUnknown(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    std::map<StitchIndex, std::vector<int>> unknown;
    for (int column = 1; column <= chart.width; ++column) {
        const StitchIndex stitch = chart.row(row).at(column);
        if (stitch != kCovered && (*chart.stitches)[stitch].kind == StitchKind::Unknown)
            unknown[stitch].push_back(column);
    }
    for (auto& [stitch, columns] : unknown) {
        findings.push_back(fault(survey, row, "unknown-stitch", std::move(columns),
                                 "no stitch is called \"" + (*chart.stitches)[stitch].id +
                                     "\"; define it or draw another."));
    }
}

// The wide stitches that the edges of some segments cut, each once.
class Cuts {
 public:
    Cuts(const Chart& chart, int row) : chart_(chart), row_(row) {}

    void at(int right) {
        auto cut = cutAt(chart_, row_, right);
        if (!cut.empty()) cuts_.insert(std::move(cut));
    }
    const std::set<std::vector<int>>& all() const { return cuts_; }

 private:
    const Chart& chart_;
    int row_;
    std::set<std::vector<int>> cuts_;
};

void checkCuts(const Survey& survey, int row, std::vector<Finding>& findings) {
    const Chart& chart = survey.chart();
    for (const Segment& segment : survey.whole().path(row)) {
        if (!segment.isBox()) continue;
        Cuts cuts(chart, row);
        cuts.at(segment.first - 1);
        cuts.at(segment.last);
        const std::string& name = chart.repeats[static_cast<std::size_t>(segment.repeat)].name;
        for (const std::vector<int>& cut : cuts.all()) {
            findings.push_back(fault(survey, row, "wide-stitch", cut,
                                     "the edge of repeat " + name + " cuts through the stitch."));
        }
    }
    for (const SizeSurvey& s : survey.sizes()) {
        Cuts cuts(chart, row);
        for (const Segment& segment : s.paths.path(row)) {
            // What is worked no time is not cut.
            if (segment.isBox() && s.times[static_cast<std::size_t>(segment.repeat)] == 0) continue;
            const bool atStart = segment.first == s.paths.reach(row).start ||
                                 segment.part == Segment::Part::StartOfSize;
            if (atStart) cuts.at(segment.first - 1);
            if (segment.last == s.paths.reach(row).end) cuts.at(segment.last);
        }
        for (const std::vector<int>& cut : cuts.all()) {
            Finding finding =
                fault(survey, row, "wide-stitch", cut,
                      "the edge of size " + s.size.name + " cuts through the stitch.");
            finding.sizes = {s.size.name};
            findings.push_back(std::move(finding));
        }
    }
}

}  // namespace

void checkGeometry(const Survey& survey, int row, std::vector<Finding>& findings) {
    const RowTraits& traits = survey.chart().row(row).traits();
    if (traits.hasBroken) checkBroken(survey, row, findings);
    if (traits.hasUnknown) checkUnknown(survey, row, findings);
    if (traits.hasWide && !traits.hasBroken) checkCuts(survey, row, findings);
}

}  // namespace lacewright
