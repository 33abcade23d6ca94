#include "core/words/box_rows.h"

#include <algorithm>
#include <cstdint>
#include <limits>

namespace lacewright {

namespace {

constexpr std::size_t kMostMoves = 120;     // stitches a box may move to either side
constexpr std::int64_t kStepCost = 10'000;  // of a box that begins one loop beside the one below
constexpr std::int64_t kMoveCost = 20;      // of one stitch away from a box that the text marks
constexpr std::int64_t kPlainMoveCost = 1;

// Loops before the box when it begins `shift` stitches further to the left.
struct Start {
    int shift = 0;
    std::int64_t takes = 0;
    std::int64_t makes = 0;
};

using Stitches = std::vector<RowStitch>;

void append(Stitches& to, const Stitches& more) {
    to.insert(to.end(), more.begin(), more.end());
}

// What stands right of the box, up to the box before or the edge.
Stitches& rightOf(BoxRow& row, std::size_t box) {
    return box == 0 ? row.before : row.boxes[box - 1].after;
}

const Stitches& rightOf(const BoxRow& row, std::size_t box) {
    return box == 0 ? row.before : row.boxes[box - 1].after;
}

void count(Start& start, const Stitches& stitches) {
    for (const RowStitch& stitch : stitches) {
        start.takes += stitch.takes;
        start.makes += stitch.makes;
    }
}

std::vector<Start> startsOf(const BoxRow& row, std::size_t at) {
    const RowBox& box = row.boxes[at];
    const Stitches& before = rightOf(row, at);
    Start given;
    count(given, row.before);
    for (std::size_t i = 0; i < at; ++i) {
        count(given, row.boxes[i].stitches);
        count(given, row.boxes[i].after);
    }
    std::vector<Start> starts = {given};
    const std::size_t width = box.stitches.size();
    if (width == 0) return starts;
    Start start = given;
    for (std::size_t i = 0; i < std::min(box.after.size(), kMostMoves); ++i) {
        const RowStitch& leaves = box.stitches[i % width];
        if (!sameStitch(leaves, box.after[i])) break;
        start = {start.shift + 1, start.takes + leaves.takes, start.makes + leaves.makes};
        starts.push_back(start);
    }
    start = given;
    for (std::size_t i = 0; i < std::min(before.size(), kMostMoves); ++i) {
        const RowStitch& joins = before[before.size() - 1 - i];
        if (!sameStitch(joins, box.stitches[width - 1 - i % width])) break;
        start = {start.shift - 1, start.takes - joins.takes, start.makes - joins.makes};
        starts.push_back(start);
    }
    return starts;
}

void move(BoxRow& row, std::size_t at, int shift) {
    Stitches& before = rightOf(row, at);
    Stitches& box = row.boxes[at].stitches;
    Stitches& after = row.boxes[at].after;
    for (int i = 0; i < shift; ++i) {
        before.push_back(box.front());
        std::rotate(box.begin(), box.begin() + 1, box.end());
    }
    after.erase(after.begin(), after.begin() + std::max(0, shift));
    for (int i = 0; i > shift; --i) {
        after.insert(after.begin(), before.back());
        before.pop_back();
        std::rotate(box.begin(), box.end() - 1, box.end());
    }
}

void lineUpBox(std::vector<BoxRow>& rows, std::size_t box) {
    std::vector<std::vector<Start>> starts;
    std::vector<std::vector<std::int64_t>> cost;
    std::vector<std::vector<std::size_t>> from;
    for (const BoxRow& row : rows) {
        starts.push_back(startsOf(row, box));
        const auto& now = starts.back();
        cost.emplace_back(now.size());
        from.emplace_back(now.size());
        for (std::size_t i = 0; i < now.size(); ++i) {
            std::int64_t best = 0;
            if (starts.size() > 1) {
                const auto& below = starts[starts.size() - 2];
                best = std::numeric_limits<std::int64_t>::max();
                for (std::size_t k = 0; k < below.size(); ++k) {
                    const std::int64_t sum = cost[cost.size() - 2][k] +
                                             kStepCost * std::abs(now[i].takes - below[k].makes);
                    if (sum >= best) continue;
                    best = sum;
                    from.back()[i] = k;
                }
            }
            const std::int64_t move = row.boxes[box].starred ? kMoveCost : kPlainMoveCost;
            cost.back()[i] = best + move * std::abs(now[i].shift);
        }
    }
    std::size_t at = static_cast<std::size_t>(
        std::min_element(cost.back().begin(), cost.back().end()) - cost.back().begin());
    for (std::size_t r = rows.size(); r-- > 0;) {
        move(rows[r], box, starts[r][at].shift);
        at = from[r][at];
    }
}

}  // namespace

bool BoxRow::hasBox() const {
    return std::any_of(boxes.begin(), boxes.end(),
                       [](const RowBox& box) { return !box.stitches.empty(); });
}

std::vector<RowStitch> BoxRow::edges() const {
    Stitches stitches = before;
    for (const RowBox& box : boxes) append(stitches, box.after);
    return stitches;
}

std::vector<RowStitch> BoxRow::all() const {
    Stitches stitches = before;
    for (const RowBox& box : boxes) {
        append(stitches, box.stitches);
        append(stitches, box.after);
    }
    return stitches;
}

bool sameStitch(const RowStitch& a, const RowStitch& b) {
    return a.id == b.id && a.takes == b.takes && a.makes == b.makes && a.presents == b.presents;
}

void lineUpBoxes(std::vector<BoxRow>& rows) {
    if (rows.empty()) return;
    for (std::size_t box = 0; box < rows.front().boxes.size(); ++box) lineUpBox(rows, box);
}

}  // namespace lacewright
