#include <algorithm>
#include <utility>

#include "core/base/text.h"
#include "core/chart/shaping.h"
#include "core/count/tally.h"
#include "core/sheet/grid.h"
#include "core/sheet/row_words.h"

namespace lacewright {
namespace {

constexpr int kGap = 5;                // units between two lines of the foot
constexpr int kTick = 6;               // length of the ticks of brackets and size lines
constexpr int kNarrow = 30;            // columns up to which every column may have its number
constexpr int kTextGap = 3;            // between a tick and the name beside it
constexpr std::size_t kMostSpans = 3;  // of rows named beside a size line
constexpr int kNumberEvery = 5;        // beyond that

// Places things of different widths on as few lines as they need, each beside the others.
class Lanes {
 public:
    // The lane in which right..left (x of both ends) is free, taken from now on.
    int take(int left, int right) {
        for (std::size_t lane = 0; lane < ends_.size(); ++lane) {
            const bool free = std::all_of(
                ends_[lane].begin(), ends_[lane].end(),
                [&](const auto& taken) { return right < taken.first || left > taken.second; });
            if (!free) continue;
            ends_[lane].emplace_back(left, right);
            return static_cast<int>(lane);
        }
        ends_.push_back({{left, right}});
        return static_cast<int>(ends_.size()) - 1;
    }
    int count() const { return static_cast<int>(ends_.size()); }

 private:
    std::vector<std::vector<std::pair<int, int>>> ends_;
};

class Foot {
 public:
    Foot(const Drawing& drawing, const Piece& piece, ItemGroup& group)
        : drawing_(drawing), piece_(piece), group_(group), y_(piece.height() + kGap) {}

    void columnNumbers() {
        const double points = drawing_.small();
        const auto fits = [&](int number) {
            return drawing_.textUnits(std::to_string(number), points) < kCellUnits;
        };
        const bool each = piece_.columns() <= kNarrow && fits(piece_.left);
        y_ += drawing_.units(points);
        for (int column = piece_.right; column <= piece_.left; ++column) {
            if (!each && column % kNumberEvery != 0 && column != 1) continue;
            addText(group_, Role::ColumnNumber, {piece_.x(column) + kCellUnits / 2, y_},
                    Anchor::Middle, points, std::to_string(column));
        }
        y_ += kGap;
    }

    void repeats() {
        Lanes lanes;
        const int height = drawing_.units(drawing_.body()) + kTick + kGap;
        for (const Repeat& repeat : drawing_.chart.repeats) {
            const int right = std::max(repeat.right, piece_.right);
            const int left = std::min(repeat.left, piece_.left);
            if (right > left || repeat.firstRow > piece_.lastRow ||
                repeat.lastRow < piece_.firstRow) {
                continue;
            }
            const std::string label = repeatLabel(repeat);
            const int from = piece_.x(left) + 2;
            const int to = piece_.x(right) + kCellUnits - 2;
            const int middle = (from + to) / 2;
            const int half = drawing_.textUnits(label, drawing_.body()) / 2 + kGap;
            const int lane = lanes.take(std::min(from, middle - half), std::max(to, middle + half));
            const int y = y_ + lane * height;
            std::vector<Spot> run;
            if (left == repeat.left) run.push_back({from, y});
            run.push_back({from, y + kTick});
            run.push_back({to, y + kTick});
            if (right == repeat.right) run.push_back({to, y});
            group_.items.emplace_back(Shape{Role::Bracket, {run}, false});
            addText(group_, Role::RepeatName, {middle, y + height - kGap}, Anchor::Middle,
                    drawing_.body(), label);
        }
        y_ += lanes.count() * height + (lanes.count() > 0 ? kGap : 0);
    }

    // A name as wide as its column stands under its tick; a longer one to the right of it, low
    // enough for the ticks of the columns it passes.
    void points() {
        std::vector<const Point*> points;
        for (const Point& point : drawing_.chart.points) {
            if (point.column >= piece_.right && point.column <= piece_.left)
                points.push_back(&point);
        }
        std::ranges::stable_sort(points, {}, &Point::column);
        const int height = drawing_.units(drawing_.body()) + kTick + kGap;
        std::vector<std::pair<int, int>> told;  // x and lane of the points further right
        int lanes = 0;
        for (const Point* point : points) {
            const int x = piece_.x(point->column) + kCellUnits / 2;
            const int width = drawing_.textUnits(point->name, drawing_.body(), true) + 2;
            const bool narrow = width <= kCellUnits;
            int lane = 0;
            for (const auto& [other, lower] : told) {
                if (!narrow && other <= x + width) lane = std::max(lane, lower + 1);
            }
            told.emplace_back(x, lane);
            lanes = std::max(lanes, lane + 1);
            const int foot = y_ + (lane + 1) * height - kGap;
            addLine(group_, Role::PointMark, {x, y_}, {x, narrow ? y_ + kTick : foot});
            addText(group_, Role::PointName, {narrow ? x : x + kTextGap, foot},
                    narrow ? Anchor::Middle : Anchor::Start, drawing_.body(), point->name);
        }
        y_ += lanes * height + (lanes > 0 ? kGap : 0);
    }

    // A line for every size; where it is shaped, one below it for the columns of other rows.
    void sizes() {
        for (const Size& size : drawing_.chart.sizes) {
            const std::vector<WorkedReach> reaches = workedReaches(drawing_.chart, size);
            for (const WorkedReach& worked : reaches) {
                const bool first = &worked == &reaches.front();
                std::string label = first ? size.name : "";
                if (reaches.size() > 1) label += (first ? ", " : "") + rowsOf(worked);
                sizeLine(worked.reach, label, drawing_.size == &size);
            }
        }
    }

 private:
    std::string rowsOf(const WorkedReach& worked) const {
        std::vector<std::string> spans;
        for (const auto& [first, last] : worked.rows) {
            if (spans.size() == kMostSpans) {
                spans.push_back("\u2026");
                break;
            }
            spans.push_back(rowsInWords(drawing_.chart, first, last));
        }
        return join(spans, ", ");
    }

    void sizeLine(const Reach& reach, const std::string& label, bool chosen) {
        const int start = std::max(reach.start, piece_.right);
        const int end = std::min(reach.end, piece_.left);
        if (start > end) return;
        const int height = drawing_.units(drawing_.body());
        const int y = y_ + height / 2 + 1;
        const int from = piece_.x(end) + 1;
        const int to = piece_.x(start) + kCellUnits - 1;
        std::vector<Spot> run;
        if (end == reach.end) run.push_back({from, y - kTick});
        run.push_back({from, y});
        run.push_back({to, y});
        if (start == reach.start) run.push_back({to, y - kTick});
        group_.items.emplace_back(
            Shape{chosen ? Role::ChosenSizeLine : Role::SizeLine, {run}, false});
        addText(group_, chosen ? Role::ChosenSizeName : Role::SizeName,
                {to + kGap + 2, y_ + height - 1}, Anchor::Start, drawing_.body(), label);
        y_ += height + kGap;
    }

    std::string repeatLabel(const Repeat& repeat) const {
        std::string label = "repeat " + repeat.name;
        if (drawing_.size != nullptr) {
            const auto times = drawing_.size->times.find(repeat.name);
            if (times != drawing_.size->times.end())
                label += " \u00D7 " + std::to_string(times->second);
        }
        const Chart& chart = drawing_.chart;
        if (repeat.firstRow == 0 && repeat.lastRow == chart.height() - 1) return label;
        return label + ", " + rowsInWords(chart, repeat.firstRow, repeat.lastRow);
    }

    const Drawing& drawing_;
    const Piece& piece_;
    ItemGroup& group_;
    int y_;  // where the next line begins
};

}  // namespace

ItemGroup drawFoot(const Drawing& drawing, const Piece& piece) {
    ItemGroup group = emptyGroup("foot");
    Foot foot(drawing, piece, group);
    foot.columnNumbers();
    foot.repeats();
    foot.points();
    foot.sizes();
    return group;
}

}  // namespace lacewright
