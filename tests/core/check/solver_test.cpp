// A second oracle: an SMT solver (Z3, a general-purpose library) is asked for numbers of repeats
// that break a chart which the program calls proven, and for a witness where it does not.

#include <gtest/gtest.h>
#include <z3++.h>

#include "core/check/check.h"
#include "core/count/path.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"
#include "tests/support/random_charts.h"

namespace lacewright {
namespace {

using namespace lacewright::test;

class Question {
 public:
    explicit Question(const Chart& chart) : chart_(chart) {
        for (const Repeat& repeat : chart.repeats)
            n_.push_back(context_.int_const(repeat.name.c_str()));
    }

    // Can some row fail, every count of row 1 being at least 1? Counts that begin later are chosen
    // by the knitter, who fails only when no choice works.
    bool canFail() {
        z3::expr fits = context_.bool_val(true);
        z3::expr counts = context_.bool_val(true);
        z3::expr chosenCounts = context_.bool_val(true);
        z3::expr_vector chosen(context_);
        for (int row = 1; row < chart_.height(); ++row)
            fits = fits && sum(row, false) == sum(row - 1, true);
        for (std::size_t i = 0; i < n_.size(); ++i) {
            if (chart_.repeats[i].firstRow > 0) {
                chosen.push_back(n_[i]);
                chosenCounts = chosenCounts && n_[i] >= 0;
            } else {
                counts = counts && n_[i] >= 1;
            }
        }
        z3::solver solver(context_);
        solver.add(counts);
        solver.add(chosen.empty() ? !fits : !z3::exists(chosen, chosenCounts && fits));
        const z3::check_result answer = solver.check();
        EXPECT_NE(answer, z3::unknown);
        return answer == z3::sat;
    }

 private:
    z3::expr sum(int row, bool makes) {
        z3::expr total = context_.int_val(0);
        for (const Segment& segment : pathOn(chart_, row, nullptr)) {
            int loops = 0;
            for (int column = segment.first; column <= segment.last; ++column) {
                const StitchIndex index = chart_.row(row).at(column);
                if (index == kCovered) continue;
                const Stitch& stitch = (*chart_.stitches)[index];
                loops += makes ? stitch.makes : stitch.takes;
            }
            total = total + (segment.isBox() ? n_[static_cast<std::size_t>(segment.repeat)] * loops
                                             : context_.int_val(loops));
        }
        return total;
    }

    const Chart& chart_;
    z3::context context_;
    std::vector<z3::expr> n_;
};

TEST(Solver, FindsNoNumberOfRepeatsThatBreaksAProvenChart) {
    RandomCharts charts(20260214);
    int proven = 0;
    int broken = 0;
    for (int i = 0; i < 150; ++i) {
        const Chart chart = charts.next();
        const Report report = check(chart);
        // Charts that hold only from some number of repeats on have another question to answer.
        bool raised = false;
        for (const Finding& f : report.findings)
            raised = raised || f.message.find("at least") != std::string::npos;
        if (raised) continue;
        ASSERT_EQ(report.knittable, !Question(chart).canFail()) << "chart " << i << "\n"
                                                                << describe(report);
        ++(report.knittable ? proven : broken);
    }
    EXPECT_GT(proven, 25);
    EXPECT_GT(broken, 25);
}

}  // namespace
}  // namespace lacewright
