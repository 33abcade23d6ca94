#include <algorithm>

#include "core/base/text.h"
#include "core/chart/edit_steps.h"
#include "core/count/tally.h"
#include "core/plan/planner.h"

namespace lacewright {
namespace {

// What a size keeps of its own when it begins and ends elsewhere, or nowhere else.
Size keptOf(const Size* before, const Reach& reach) {
    Size kept;
    if (before == nullptr) return kept;
    kept.extras = before->extras;
    kept.body = before->body;
    kept.shoulder = before->shoulder;
    if (before->reach == reach) kept.changes = before->changes;
    // On the rows of its own an edge stands elsewhere.
    const auto stays = [&](const Substitution& substitution) {
        Size after = kept;
        after.reach = reach;
        const Reach then = before->on(substitution.row);
        const Reach now = after.on(substitution.row);
        return substitution.edge == Edge::Start ? then.start == now.start : then.end == now.end;
    };
    for (const Substitution& substitution : before->substitutions) {
        if (stays(substitution)) kept.substitutions.push_back(substitution);
    }
    return kept;
}

}  // namespace

Result<Chart> usePlan(const Chart& chart, const Plan& plan) {
    Chart changed = chart;
    changed.gauge.stitches = plan.gauge.stitches;
    changed.gauge.rows = plan.gauge.rows;
    changed.grading.edgeStitches = plan.edgeStitches;
    changed.grading.pieces = plan.pieces;
    changed.sizes.clear();
    for (const PlannedSize& planned : plan.sizes) {
        Size size = keptOf(chart.findSize(planned.wanted.name), planned.chosen.reach);
        size.name = planned.wanted.name;
        size.reach = planned.chosen.reach;
        if (planned.wanted.body) size.body = planned.wanted.body;
        const std::vector<int> passes = passesAt(plan.shares, planned.chosen.times);
        for (std::size_t i = 0; i < chart.repeats.size() && i < passes.size(); ++i)
            size.times[chart.repeats[i].name] = passes[i];
        const RowForms forms =
            formsOf(chart, 0, size, pathOn(chart, 0, &size), timesOf(chart, size));
        size.stitches = static_cast<int>(forms.takes.constant());
        changed.sizes.push_back(std::move(size));
    }
    settlePoints(chart, changed);
    return settled(std::move(changed));
}

std::vector<std::string> lostByPlan(const Chart& chart, const Plan& plan) {
    std::vector<std::string> lost;
    for (const Size& before : chart.sizes) {
        const auto planned =
            std::find_if(plan.sizes.begin(), plan.sizes.end(),
                         [&](const PlannedSize& size) { return size.wanted.name == before.name; });
        if (planned == plan.sizes.end()) {
            lost.push_back("Size " + before.name + " is not planned and goes.");
            continue;
        }
        const Size kept = keptOf(&before, planned->chosen.reach);
        const std::size_t changes = before.changes.size() - kept.changes.size();
        const std::size_t stitches = before.substitutions.size() - kept.substitutions.size();
        std::vector<std::string> what;
        if (changes > 0) {
            what.push_back(
                counted(static_cast<long long>(changes), "span of rows", "spans of rows") +
                " of its own");
        }
        if (stitches > 0) {
            what.push_back(counted(static_cast<long long>(stitches), "stitch", "stitches") +
                           " that it works otherwise");
        }
        if (what.empty()) continue;
        lost.push_back("Size " + before.name + " loses " + listing(what) + ", made for columns " +
                       std::to_string(before.reach.start) + " to " +
                       std::to_string(before.reach.end) + ".");
    }
    return lost;
}

}  // namespace lacewright
