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

std::vector<Start> startsOf(const BoxRow& row) {
    Start given;
    for (const RowStitch& stitch : row.before) {
        given.takes += stitch.takes;
        given.makes += stitch.makes;
    }
    std::vector<Start> starts = {given};
    const std::size_t width = row.box.size();
    if (width == 0) return starts;
    Start start = given;
    for (std::size_t i = 0; i < std::min(row.after.size(), kMostMoves); ++i) {
        const RowStitch& leaves = row.box[i % width];
        if (!sameStitch(leaves, row.after[i])) break;
        start = {start.shift + 1, start.takes + leaves.takes, start.makes + leaves.makes};
        starts.push_back(start);
    }
    start = given;
    for (std::size_t i = 0; i < std::min(row.before.size(), kMostMoves); ++i) {
        const RowStitch& joins = row.before[row.before.size() - 1 - i];
        if (!sameStitch(joins, row.box[width - 1 - i % width])) break;
        start = {start.shift - 1, start.takes - joins.takes, start.makes - joins.makes};
        starts.push_back(start);
    }
    return starts;
}

void move(BoxRow& row, int shift) {
    const std::size_t width = row.box.size();
    for (int i = 0; i < shift; ++i) {
        row.before.push_back(row.box.front());
        std::rotate(row.box.begin(), row.box.begin() + 1, row.box.end());
    }
    row.after.erase(row.after.begin(), row.after.begin() + std::max(0, shift));
    for (int i = 0; i > shift; --i) {
        row.after.insert(row.after.begin(), row.before.back());
        row.before.pop_back();
        std::rotate(row.box.begin(), row.box.begin() + static_cast<std::ptrdiff_t>(width - 1),
                    row.box.end());
    }
}

}  // namespace

bool sameStitch(const RowStitch& a, const RowStitch& b) {
    return a.id == b.id && a.takes == b.takes && a.makes == b.makes && a.presents == b.presents;
}

void lineUpBoxes(std::vector<BoxRow>& rows) {
    std::vector<std::vector<Start>> starts;
    std::vector<std::vector<std::int64_t>> cost;
    std::vector<std::vector<std::size_t>> from;
    for (const BoxRow& row : rows) {
        starts.push_back(startsOf(row));
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
            cost.back()[i] =
                best + (row.starred ? kMoveCost : kPlainMoveCost) * std::abs(now[i].shift);
        }
    }
    if (rows.empty()) return;
    std::size_t at = static_cast<std::size_t>(
        std::min_element(cost.back().begin(), cost.back().end()) - cost.back().begin());
    for (std::size_t r = rows.size(); r-- > 0;) {
        move(rows[r], starts[r][at].shift);
        at = from[r][at];
    }
}

}  // namespace lacewright
