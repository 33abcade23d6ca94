#include "core/check/check.h"

#include <algorithm>
#include <utility>

#include "core/check/fold.h"
#include "core/check/rules/rules.h"

namespace lacewright {
namespace {

constexpr RowRule kRowRules[] = {checkContinuity, checkSizeRows,      checkGeometry,
                                 checkMarkers,    checkEdgeYarnOvers, checkBalance};
constexpr ChartRule kFrameRules[] = {checkBoxes, checkSizeTimes};
constexpr ChartRule kChartRules[] = {checkSizeCounts, checkClosing};

bool isFault(const Finding& finding) {
    return finding.severity == Severity::Fault;
}

}  // namespace

bool Report::hasFault() const {
    return std::any_of(findings.begin(), findings.end(), isFault);
}

// The survey of the last chart, and the findings of each row before they were folded together.
class Checker::Memory {
 public:
    explicit Memory(const Chart& chart)
        : survey_(chart), byRow_(static_cast<std::size_t>(chart.height())) {
        for (const ChartRule rule : kFrameRules) rule(survey_, frameFindings_);
        for (int row = 0; row < chart.height(); ++row) {
            checkRow(row);
            report_.rows.push_back(
                {chart.rowNumber(row), survey_.forms()[static_cast<std::size_t>(row)]});
        }
        assemble();
    }

    void refresh(const Chart& chart) {
        const std::vector<int> rows = survey_.refresh(chart);
        if (rows.empty()) return;
        bool findingsDiffer = false;
        for (const int row : rows) {
            const auto r = static_cast<std::size_t>(row);
            const std::vector<Finding> before = std::exchange(byRow_[r], {});
            checkRow(row);
            findingsDiffer = findingsDiffer || before != byRow_[r] || mayFold(row);
            report_.rows[r].forms = survey_.forms()[r];
        }
        if (findingsDiffer || chartFindingsMayDiffer(rows)) assemble();
    }

    const Report& report() const { return report_; }
    const Chart& chart() const { return survey_.chart(); }

 private:
    void checkRow(int row) {
        std::vector<Finding>& findings = byRow_[static_cast<std::size_t>(row)];
        findings.clear();
        for (const RowRule rule : kRowRules) rule(survey_, row, findings);
        std::stable_sort(findings.begin(), findings.end(), [](const Finding& a, const Finding& b) {
            return a.severity > b.severity;
        });
    }

    // Whole-chart findings look at rows 1 and the ends of the row repeat, and at whether any row is
    // at fault.
    bool chartFindingsMayDiffer(const std::vector<int>& rows) const {
        const auto& again = chart().rowRepeat;
        const int first = again ? again->firstRow : 0;
        const int last = again ? again->lastRow : chart().height() - 1;
        return std::any_of(rows.begin(), rows.end(),
                           [&](int row) { return row == 0 || row == first || row == last; });
    }

    // Whether findings of the row or of the one above may be folded otherwise than before: that
    // depends on the counts of both, not on the findings alone.
    bool mayFold(int row) const {
        const auto r = static_cast<std::size_t>(row);
        return survey_.misfit(row) != nullptr && !byRow_[r].empty();
    }

    void assemble() {
        std::vector<Finding> ofChart = frameFindings_;
        for (const ChartRule rule : kChartRules) rule(survey_, ofChart);
        std::stable_sort(ofChart.begin(), ofChart.end(),
                         [](const Finding& a, const Finding& b) { return a.row < b.row; });
        report_.findings.clear();
        auto next = ofChart.begin();
        for (int row = 0; row < chart().height(); ++row) {
            const auto& own = byRow_[static_cast<std::size_t>(row)];
            if (own.empty()) continue;
            for (; next != ofChart.end() && next->row <= chart().rowNumber(row); ++next) {
                report_.findings.push_back(std::move(*next));
            }
            std::vector<Finding> findings = own;
            foldWithinRow(findings);
            const bool below =
                sameCauseAsBelow(survey_, row) ||
                (row > 0 && cutForEveryone(byRow_[static_cast<std::size_t>(row) - 1]));
            if (row > 0) foldUnderCutsBelow(report_.findings, chart().rowNumber(row - 1), findings);
            if (below) foldIntoRow(chart().rowNumber(row - 1), findings);
            std::move(findings.begin(), findings.end(), std::back_inserter(report_.findings));
        }
        std::move(next, ofChart.end(), std::back_inserter(report_.findings));
        report_.knittable = !report_.hasFault();
        report_.closes = report_.knittable ? closes(survey_) : std::nullopt;
    }

    static bool cutForEveryone(const std::vector<Finding>& findings) {
        return std::any_of(findings.begin(), findings.end(),
                           [](const Finding& f) { return isCut(f) && f.sizes.empty(); });
    }

    // Moves a row's own miscount under the fault of the row below, if that one stands by itself.
    void foldIntoRow(int rowBelow, std::vector<Finding>& findings) {
        const auto own = std::find_if(findings.begin(), findings.end(), [](const Finding& f) {
            return f.rule == "continuity" && isFault(f) && f.sizes.empty();
        });
        if (own == findings.end()) return;
        for (auto below = report_.findings.rbegin(); below != report_.findings.rend(); ++below) {
            if (below->row != rowBelow || !isFault(*below) || !below->sizes.empty()) continue;
            below->folded.push_back(std::move(*own));
            findings.erase(own);
            return;
        }
    }

    Survey survey_;
    std::vector<Finding> frameFindings_;
    std::vector<std::vector<Finding>> byRow_;
    Report report_;
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
