#include "core/check/mend.h"

#include <algorithm>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

Error noLongerFits(std::string sentence) {
    return {ErrorCode::Refused, std::move(sentence), {}};
}

// The chart with one size changed.
template <class Change>
Result<Chart> withSize(const Chart& chart, const std::string& name, Change change) {
    const Size* found = chart.findSize(name);
    if (found == nullptr) return Error{ErrorCode::NotFound, "There is no size " + name + ".", {}};
    Size size = *found;
    change(size);
    return changeSize(chart, name, std::move(size));
}

struct StepApplier {
    const Chart& chart;

    Result<Chart> operator()(const ReplaceStitch& step) const {
        const auto stitch = chart.stitches->find(step.stitch);
        if (!stitch) return noLongerFits("The chart has no stitch " + step.stitch + ".");
        const bool inside = step.row >= 0 && step.row < chart.height() && step.column >= 1 &&
                            step.column <= chart.width;
        if (!inside) return noLongerFits("The cell to change is no longer there.");
        const auto* spans = chart.stitches->spans();
        if (spans[chart.row(step.row).at(step.column)] != spans[*stitch]) {
            return noLongerFits("The cell to change no longer holds a stitch as wide as " +
                                step.stitch + ".");
        }
        return drawStitch(chart, step.row, step.column, *stitch);
    }
    Result<Chart> operator()(const RewriteRow& step) const {
        if (step.row < 0 || step.row >= chart.height()) {
            return noLongerFits("The row to change is no longer there.");
        }
        return replaceRow(chart, step.row, step.cells);
    }
    Result<Chart> operator()(const SubstituteForSize& step) const {
        return withSize(chart, step.size, [&](Size& size) {
            const Substitution& added = step.substitution;
            std::erase_if(size.substitutions, [&](const Substitution& held) {
                return held.row == added.row && held.column == added.column &&
                       held.edge == added.edge;
            });
            size.substitutions.push_back(added);
        });
    }
    Result<Chart> operator()(const MoveEdge& step) const {
        return withSize(chart, step.size, [&](Size& size) {
            (step.edge == Edge::Start ? size.reach.start : size.reach.end) = step.column;
        });
    }
    Result<Chart> operator()(const ChangeTimes& step) const {
        return withSize(chart, step.size,
                        [&](Size& size) { size.times[step.repeat] = step.times; });
    }
    Result<Chart> operator()(const ChangeCastOn& step) const {
        ChartProperties properties = propertiesOf(chart);
        properties.castOn = step.castOn;
        return setProperties(chart, properties);
    }
    Result<Chart> operator()(const ChangeExpected& step) const {
        return withSize(chart, step.size, [&](Size& size) { size.stitches = step.stitches; });
    }
};

}  // namespace

Result<Chart> applyMend(const Chart& chart, const Mend& mend) {
    Chart mended = chart;
    for (const MendStep& step : mend.steps) {
        Result<Chart> next = std::visit(StepApplier{mended}, step);
        if (!next) return next.error();
        mended = std::move(next).value();
    }
    return mended;
}

std::vector<RedrawnCell> redrawnCells(const Chart& before, const Chart& after) {
    std::vector<RedrawnCell> cells;
    after.rows.forEachDifference(before.rows, [&](std::size_t index) {
        const int row = static_cast<int>(index);
        for (int column = 1; column <= after.width; ++column) {
            const StitchIndex stitch = after.row(row).at(column);
            if (stitch == before.row(row).at(column) || stitch == kCovered) continue;
            cells.push_back({after.rowNumber(row), column, (*after.stitches)[stitch].id});
        }
    });
    return cells;
}

}  // namespace lacewright
