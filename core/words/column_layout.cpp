#include "core/words/column_layout.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <optional>

namespace lacewright {

namespace {

constexpr int kSweeps = 4;
constexpr double kGapCost = 0.05;          // of one more gap, so that gaps stay together
constexpr double kInwardPull = 0.001;      // settles ties, so that mirrored stitches stay mirrored
constexpr double kMostSteps = 30'000'000;  // stitches times gaps, over the whole chart

struct Target {
    double at = 0;
    double weight = 1;
};
using Targets = std::vector<Target>;

int widthOf(const LaidRow& row) {
    int width = 0;
    for (const LaidStitch& stitch : row) width += stitch.span;
    return width;
}

// Where the loops of a row lie: those it takes or those it makes.
std::vector<double> loopColumns(const LaidRow& row, int LaidStitch::*count) {
    std::vector<double> columns;
    for (const LaidStitch& stitch : row) {
        const int loops = stitch.*count;
        for (int i = 0; i < loops; ++i)
            columns.push_back(stitch.column + stitch.span * (i + 0.5) / loops - 0.5);
    }
    return columns;
}

// Draws every stitch of `row` towards the loops of a neighbouring row; `count` says which of its
// own loops join them. What takes none (a yarn over) is drawn between its neighbours' loops.
void addTargets(const LaidRow& row, int LaidStitch::*count, const std::vector<double>& loops,
                std::vector<Targets>& targets) {
    std::size_t next = 0;
    for (std::size_t i = 0; i < row.size(); ++i) {
        const auto own = static_cast<std::size_t>(row[i].*count);
        if (own == 0 && next > 0 && next < loops.size()) {
            targets[i].push_back({(loops[next - 1] + loops[next]) / 2, 0.5});
        } else if (own > 0 && next + own <= loops.size()) {
            double sum = 0;
            for (std::size_t k = next; k < next + own; ++k) sum += loops[k];
            targets[i].push_back({sum / static_cast<double>(own), 1});
        }
        next += own;
    }
}

// Places one row: stitch i stands `offset` gaps to the left of where it would stand without any,
// and offsets never shrink. Exact, by dynamic programming over stitches and offsets.
void place(LaidRow& row, int width, const std::vector<Targets>& targets) {
    const auto gaps = static_cast<std::size_t>(width - widthOf(row));
    std::vector<double> best(gaps + 1, 0);
    std::vector<std::vector<std::size_t>> from(row.size(), std::vector<std::size_t>(gaps + 1));
    std::vector<int> base(row.size());
    int next = 1;
    for (std::size_t i = 0; i < row.size(); ++i) {
        base[i] = next;
        next += row[i].span;
        std::vector<double> now(gaps + 1);
        std::size_t least = 0;  // the best offset below the present one
        for (std::size_t offset = 0; offset <= gaps; ++offset) {
            if (offset > 0 && best[offset - 1] < best[least]) least = offset - 1;
            const bool gap = offset > 0 && best[least] + kGapCost < best[offset];
            from[i][offset] = gap ? least : offset;
            double cost = gap ? best[least] + kGapCost : best[offset];
            const double centre = base[i] + static_cast<double>(offset) + (row[i].span - 1) / 2.0;
            for (const Target& target : targets[i])
                cost += target.weight * std::abs(centre - target.at);
            cost += kInwardPull * std::abs(centre - (width + 1) / 2.0);
            now[offset] = cost;
        }
        best.swap(now);
    }
    std::size_t offset =
        static_cast<std::size_t>(std::min_element(best.begin(), best.end()) - best.begin());
    for (std::size_t i = row.size(); i-- > 0;) {
        row[i].column = base[i] + static_cast<int>(offset);
        offset = from[i][offset];
    }
}

class Layout {
 public:
    Layout(std::vector<LaidRow>& rows, int width) : rows_(rows), width_(width) {}

    void run() {
        std::size_t widest = 0;
        for (std::size_t r = 0; r < rows_.size(); ++r) {
            if (widthOf(rows_[r]) > widthOf(rows_[widest])) widest = r;
        }
        settle(widest, false, false);
        for (std::size_t r = widest + 1; r < rows_.size(); ++r) settle(r, true, false);
        for (std::size_t r = widest; r-- > 0;) settle(r, false, true);
        for (int sweep = 0; sweep < kSweeps; ++sweep) {
            for (std::size_t r = 0; r < rows_.size(); ++r) settle(r, true, true);
        }
    }

 private:
    void settle(std::size_t r, bool below, bool above) {
        std::vector<Targets> targets(rows_[r].size());
        if (below && r > 0) {
            addTargets(rows_[r], &LaidStitch::takes, loopColumns(rows_[r - 1], &LaidStitch::makes),
                       targets);
        }
        if (above && r + 1 < rows_.size()) {
            addTargets(rows_[r], &LaidStitch::makes, loopColumns(rows_[r + 1], &LaidStitch::takes),
                       targets);
        }
        place(rows_[r], width_, targets);
    }

    std::vector<LaidRow>& rows_;
    int width_;
};

}  // namespace

int layOut(std::vector<LaidRow>& rows) {
    int width = 1;
    for (const LaidRow& row : rows) width = std::max(width, widthOf(row));
    double steps = 0;
    for (LaidRow& row : rows) {
        int next = 1;
        for (LaidStitch& stitch : row) {
            stitch.column = next;
            next += stitch.span;
        }
        steps += static_cast<double>(row.size()) * (width - widthOf(row) + 1);
    }
    if (steps <= kMostSteps && !rows.empty()) Layout(rows, width).run();
    return width;
}

}  // namespace lacewright
