#include "core/words/chart_from_rows.h"

#include <algorithm>

#include "core/base/text.h"
#include "core/chart/letter_names.h"
#include "core/words/chart_plan.h"
#include "core/words/compare.h"
#include "core/words/open_repeats.h"
#include "core/words/rows_once.h"
#include "core/words/size_reaches.h"
#include "core/words/size_scope.h"
#include "core/words/sized_boxes.h"

namespace lacewright {

namespace {

Error refused(const std::string& sentence) {
    return {ErrorCode::Refused, sentence, {}};
}

// All sizes of a text on one chart: that of the size with the widest edges, within which the others
// begin and end at columns of their own.
class SizesDrawer {
 public:
    explicit SizesDrawer(const WrittenPattern& pattern) : pattern_(pattern) {}

    Result<ChartFromRows> run() {
        if (pattern_.sizeCount() > static_cast<std::size_t>(kMaxSizes))
            return refused("The sizes are too many.");
        if (Result<ChartFromRows> named = drawnOnce(planByNames())) return named;
        Result<ChartFromRows> drawn = drawnOnce(planAsWritten());
        if (drawn) return drawn;
        for (const RepeatMarks marks : {RepeatMarks::Marked, RepeatMarks::PlainToo}) {
            if (Result<ChartFromRows> byPlace = drawnOnce(planByPlace(marks))) return byPlace;
        }
        return drawn;
    }

 private:
    Result<ChartFromRows> drawnOnce(const std::optional<Error>& problem) {
        return problem ? Result<ChartFromRows>(*problem) : nestedInWidest();
    }

    // Each size by itself, cut where its words mark the repeat.
    std::optional<Error> planAsWritten() {
        drawers_.clear();
        for (std::size_t i = 0; i < pattern_.sizeCount(); ++i)
            drawers_.emplace_back(withOpenRepeats(pattern_, i), i, 1);
        return planAll();
    }

    // The same where the words of a row mark several repeats.
    std::optional<Error> planByNames() {
        const auto named = withNamedRepeats(pattern_);
        if (!named) return refused("The rows do not mark several repeats.");
        drawers_.clear();
        for (std::size_t i = 0; i < pattern_.sizeCount(); ++i)
            drawers_.emplace_back(named->patterns[i], i, 1, named->times[i]);
        return planAll();
    }

    std::optional<Error> planAll() {
        plans_.clear();
        for (RowsDrawer& drawer : drawers_) {
            Result<ChartPlan> plan = drawer.plan();
            if (!plan) return plan.error();
            plans_.push_back(std::move(*plan));
        }
        return {};
    }

    // All sizes together, cut where the stitches allow it.
    std::optional<Error> planByPlace(RepeatMarks marks) {
        const Error apart = refused("The sizes do not share their repeats.");
        if (!pattern_.castOn) return apart;
        std::vector<RowsDrawer> drawers;
        std::vector<const WrittenPattern*> patterns;
        for (std::size_t i = 0; i < pattern_.sizeCount(); ++i) drawers.emplace_back(pattern_, i, 1);
        for (const RowsDrawer& drawer : drawers) patterns.push_back(&drawer.pattern());
        auto boxes = sizedBoxes(patterns, marks);
        if (!boxes) return apart;
        plans_.clear();
        for (std::size_t i = 0; i < pattern_.sizeCount(); ++i) {
            ChartPlan& plan = plans_.emplace_back();
            plan.cut.rows = std::move(boxes->rows[i]);
            plan.castOn = pattern_.castOn->of(i);
            plan.times.assign(boxes->times[i].begin(), boxes->times[i].end());
            for (std::size_t box = 0; box < plan.times.size(); ++box)
                plan.names.push_back(letterName(static_cast<int>(box)));
        }
        drawers_ = std::move(drawers);
        return {};
    }

    Result<ChartFromRows> nestedInWidest() {
        widest_ = 0;
        for (std::size_t i = 1; i < plans_.size(); ++i) {
            if (plans_[i].edgeLength() > plans_[widest_].edgeLength()) widest_ = i;
        }
        ChartPlan wide = plans_[widest_];
        joinWidestEdges(wide.cut.rows);
        std::vector<std::vector<NestedRow>> nested;
        for (std::size_t i = 0; i < plans_.size(); ++i) {
            NestedRows rows = nestedRows(wide.cut.rows, plans_[i].cut.rows);
            if (rows.notWithin) return notWithin(i, *rows.notWithin);
            nested.push_back(std::move(rows.rows));
        }
        for (const ChartPlan& plan : plans_) {
            wide.knittable = wide.knittable && plan.knittable;
        }
        Result<ChartFromRows> drawn = drawers_[widest_].draw(std::move(wide));
        if (!drawn) return drawn.error();
        const bool fixed = std::all_of(plans_.begin(), plans_.end(), [](const ChartPlan& plan) {
            return plan.castOn && plan.castOn->multiple == 0;
        });
        if (!fixed) {
            for (std::size_t i = 0; i < plans_.size(); ++i) {
                if (plans_[i].edgeLength() != plans_[widest_].edgeLength()) return differs(i);
            }
            return drawn;
        }
        return sized(std::move(*drawn), nested);
    }

    using Rows = std::vector<BoxRow>;

    // One size may reach farthest to the right and another to the left, and one whose edge stands
    // within a repeat is no model for others: takes each edge from the first size that has room for
    // all of them.
    void joinWidestEdges(Rows& rows) const {
        for (const ChartPlan& plan : plans_) {
            if (plan.cut.rows.size() != rows.size()) return;
            for (const BoxRow& row : plan.cut.rows) {
                if (!row.hasBox() || row.boxes.size() != rows.front().boxes.size()) return;
            }
        }
        const Rows right = edgeModel(&SizesDrawer::rightEdgeAlone);
        const Rows left = edgeModel(&SizesDrawer::leftEdgeAlone);
        for (std::size_t r = 0; r < rows.size(); ++r) {
            rows[r].before = right[r].before;
            rows[r].boxes.back().after = left[r].boxes.back().after;
        }
    }

    // The rows of a size within which the same edge of all sizes lies.
    template <typename Alone>
    Rows edgeModel(Alone alone) const {
        std::vector<Rows> edges;
        for (const ChartPlan& plan : plans_) edges.push_back(alone(plan.cut.rows));
        const auto length = [](const Rows& rows) {
            std::size_t sum = 0;
            for (const BoxRow& row : rows) sum += row.edges().size();
            return sum;
        };
        std::stable_sort(edges.begin(), edges.end(),
                         [&](const Rows& a, const Rows& b) { return length(a) > length(b); });
        for (const Rows& model : edges) {
            if (std::all_of(edges.begin(), edges.end(),
                            [&](const Rows& rows) { return !nestedRows(model, rows).notWithin; }))
                return model;
        }
        return edges.front();
    }

    static Rows rightEdgeAlone(Rows rows) {
        for (BoxRow& row : rows) row.boxes.back().after.clear();
        return rows;
    }

    static Rows leftEdgeAlone(Rows rows) {
        for (BoxRow& row : rows) row.before.clear();
        return rows;
    }

    std::string nameOf(std::size_t size) const {
        return size < pattern_.sizes.size() ? pattern_.sizes[size] : std::to_string(size + 1);
    }

    Error differs(std::size_t size) const {
        return refused("Size " + nameOf(size) + " is not worked within the stitches of size " +
                       nameOf(widest_) + " on every row: draw one size at a time.");
    }

    // `row`: index from 0, from the bottom.
    Error notWithin(std::size_t size, std::size_t row) const {
        const std::size_t own = plans_[size].cut.rows.size();
        const std::size_t widest = plans_[widest_].cut.rows.size();
        if (own != widest) {
            return refused("Size " + nameOf(size) + " works " + std::to_string(own) +
                           " rows and size " + nameOf(widest_) + " " + std::to_string(widest) +
                           ", so that one chart cannot show both: draw one size at a time.");
        }
        const std::string number = std::to_string(row + 1);
        const auto repeated = [&](std::size_t of) {
            const std::vector<BoxRow>& rows = plans_[of].cut.rows;
            return row < rows.size() ? rows[row].all().size() - rows[row].edges().size() : 0;
        };
        if (repeated(size) != repeated(widest_)) {
            return refused(
                "On row " + number + " size " + nameOf(size) + " repeats " +
                counted(static_cast<std::int64_t>(repeated(size)), "stitch", "stitches") +
                " and size " + nameOf(widest_) + " " + std::to_string(repeated(widest_)) +
                ", so that one chart cannot show both: draw one size at a time.");
        }
        return refused("Row " + number + " of size " + nameOf(size) + " is no part of row " +
                       number + " of size " + nameOf(widest_) +
                       ", so that one chart cannot show both: draw one size at a time.");
    }

    Result<ChartFromRows> sized(ChartFromRows drawn,
                                const std::vector<std::vector<NestedRow>>& nested) const {
        Chart& chart = drawn.chart;
        chart.castOn.reset();
        for (std::size_t i = 0; i < plans_.size(); ++i) {
            Size size;
            size.name = chartText(nameOf(i));
            for (std::size_t box = 0; box < plans_[i].times.size(); ++box)
                size.times[plans_[i].names[box]] = static_cast<int>(plans_[i].times[box]);
            for (const Repeat& repeat : chart.repeats) size.times.try_emplace(repeat.name, 1);
            size.stitches = plans_[i].castOn->plus;
            if (const auto row = setReaches(chart, nested[i], size)) return notWithin(i, *row);
            chart.sizes.push_back(std::move(size));
        }
        letterReaches(chart);
        // Proven for every size, where there is something to prove.
        if (drawn.knittable) {
            const Result<Comparison> comparison = compareRows(chart, pattern_);
            if (!comparison) return comparison.error();
            if (!comparison->same()) {
                const std::size_t other = widest_ == 0 ? plans_.size() - 1 : 0;
                const int number = comparison->differences.front().number;
                return notWithin(other, static_cast<std::size_t>(std::max(1, number) - 1));
            }
        }
        return drawn;
    }

    const WrittenPattern& pattern_;
    std::vector<RowsDrawer> drawers_;
    std::vector<ChartPlan> plans_;
    std::size_t widest_ = 0;
};

}  // namespace

Result<ChartFromRows> chartFromRows(const WrittenPattern& pattern,
                                    std::optional<std::size_t> size) {
    if (!pattern.pieces.empty())
        return refused(
            "The text holds several pieces, each with a cast-on of its own; a chart draws one.");
    if (differsInRows(pattern)) {
        if (!size && pattern.sizeCount() > 1)
            return refused("Some rows are for some sizes only; a chart draws one size of them.");
        return chartFromRows(rowsOfSize(pattern, size.value_or(0)), size);
    }
    if (!size && pattern.sizeCount() > 1) {
        const auto once = withRowsOnce(pattern);
        if (!once) return SizesDrawer(pattern).run();
        Result<ChartFromRows> drawn = SizesDrawer(once->pattern).run();
        if (drawn) {
            drawn->chart.rowRepeat = once->repeat;
            drawn->remarks.push_back(once->remark);
        }
        return drawn;
    }
    RowsDrawer drawer(withOpenRepeats(pattern, size.value_or(0)), size.value_or(0), 2);
    Result<ChartPlan> plan = drawer.plan();
    if (!plan) return plan.error();
    return drawer.draw(std::move(*plan));
}

}  // namespace lacewright
