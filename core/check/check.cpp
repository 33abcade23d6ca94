#include "core/check/check.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "core/check/assembly.h"
#include "core/check/rules/rules.h"

namespace lacewright {
namespace {

constexpr RowRule kRowRules[] = {checkContinuity, checkSizeRows,      checkGeometry,
                                 checkMarkers,    checkEdgeYarnOvers, checkBalance};
constexpr ChartRule kFrameRules[] = {checkBoxes, checkSizeTimes};
constexpr ChartRule kChartRules[] = {checkExpectedCounts, checkSizeCounts,    checkSizeRise,
                                     checkSizeHalves,     checkSizeShoulders, checkSizeEase,
                                     checkClosing};

bool isFault(const Finding& finding) {
    return finding.severity == Severity::Fault;
}

}  // namespace

bool Report::hasFault() const {
    return std::any_of(findings.begin(), findings.end(), isFault);
}

// The survey of the last chart, and what was found in it.
class Checker::Memory {
 public:
    explicit Memory(const Chart& chart)
        : survey_(chart), assembly_(chart.height(), report_.findings) {
        for (const ChartRule rule : kFrameRules) rule(survey_, frameFindings_);
        std::vector<int> rows(static_cast<std::size_t>(chart.height()));
        std::iota(rows.begin(), rows.end(), 0);
        for (const int row : rows) {
            assembly_.setRow(row, findingsOf(row));
            report_.rows.push_back(
                {chart.rowNumber(row), survey_.forms()[static_cast<std::size_t>(row)]});
        }
        assembly_.relink(survey_, rows);
        settle();
    }

    void refresh(const Chart& chart) {
        const std::vector<int> rows = survey_.refresh(chart);
        if (rows.empty()) return;
        for (const int row : rows) {
            const auto r = static_cast<std::size_t>(row);
            assembly_.setRow(row, findingsOf(row));
            report_.rows[r].forms = survey_.forms()[r];
        }
        assembly_.relink(survey_, rows);
        if (assembly_.isDue() || chartFindingsMayDiffer(rows)) settle();
    }

    const Report& report() const { return report_; }
    const Chart& chart() const { return survey_.chart(); }

 private:
    std::vector<Finding> findingsOf(int row) const {
        std::vector<Finding> findings;
        for (const RowRule rule : kRowRules) rule(survey_, row, findings);
        const auto graver = [](const Finding& a, const Finding& b) {
            return a.severity > b.severity;
        };
        if (!std::is_sorted(findings.begin(), findings.end(), graver))
            std::stable_sort(findings.begin(), findings.end(), graver);
        return findings;
    }

    // Brings the report up to date with what was found in the rows.
    void settle() {
        std::vector<Finding> ofChart = frameFindings_;
        for (const ChartRule rule : kChartRules) rule(survey_, ofChart);
        assembly_.setChart(chart(), std::move(ofChart));
        assembly_.update();
        report_.knittable = !report_.hasFault();
        report_.anyTimes = survey_.anyTimes();
        report_.closes = report_.knittable ? closes(survey_) : std::nullopt;
    }

    // Whole-chart findings look at row 1, the last row, the ends of the row repeat and the rows of
    // shoulders, and at whether any row is at fault.
    bool chartFindingsMayDiffer(const std::vector<int>& rows) const {
        const auto& again = chart().rowRepeat;
        const int first = again ? again->firstRow : 0;
        const int last = again ? again->lastRow : chart().height() - 1;
        const auto& shoulders = chart().grading.shoulders;
        const auto seen = [&](int row) {
            return row == 0 || row == chart().height() - 1 || row == first || row == last ||
                   std::any_of(shoulders.begin(), shoulders.end(),
                               [row](const Shoulder& s) { return s.row == row; });
        };
        return std::any_of(rows.begin(), rows.end(), seen);
    }

    Survey survey_;
    std::vector<Finding> frameFindings_;
    Report report_;
    Assembly assembly_;
};

Checker::Checker() = default;
Checker::~Checker() = default;
Checker::Checker(Checker&&) noexcept = default;
Checker& Checker::operator=(Checker&&) noexcept = default;

const Report& Checker::update(const Chart& chart) {
    if (memory_ && sameFrame(memory_->chart(), chart)) {
        memory_->refresh(chart);
    } else {
        memory_ = std::make_unique<Memory>(chart);
    }
    return memory_->report();
}

const Report& Checker::report() const {
    static const Report kNothing;
    return memory_ ? memory_->report() : kNothing;
}

Report check(const Chart& chart) {
    Checker checker;
    return checker.update(chart);
}

}  // namespace lacewright
