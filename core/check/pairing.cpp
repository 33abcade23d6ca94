#include "core/check/pairing.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>
#include <limits>
#include <tuple>
#include <utility>

namespace lacewright {
namespace {

// Steps of dynamic programming one stretch may cost; an unbalanced stretch beyond that (hundreds of
// surplus units) is paired by the stack alone.
constexpr std::int64_t kMaxSteps = 4'000'000;
constexpr std::int64_t kNever = std::numeric_limits<std::int64_t>::max() / 4;

// Units with F and the gap in columns after each stitch, so that line and circle cost alike: the
// sum over gaps of |F - cut|. On a line the last gap is 0.
struct Course {
    const std::vector<ShapingUnit>& units;
    std::vector<int> sums;
    std::vector<int> gaps;
    int surplus = 0;  // units that stay without partner, with their sign

    Course(const std::vector<ShapingUnit>& all, int lengthOfRing) : units(all) {
        sums.reserve(units.size());
        gaps.reserve(units.size());
        for (std::size_t i = 0; i < units.size(); ++i) {
            surplus += units[i].net;
            sums.push_back(surplus);
            const bool last = i + 1 == units.size();
            const int next = last ? units.front().column + lengthOfRing : units[i + 1].column;
            gaps.push_back(last && lengthOfRing == 0 ? 0 : next - units[i].column);
        }
    }
    int many() const { return std::abs(surplus); }
    int sign() const { return surplus > 0 ? 1 : -1; }
};

struct Choice {
    std::int64_t cost = kNever;
    int ways = 0;  // choices that cost as little, counted up to 2
    int cut = 0;
    std::vector<int> leftOut;  // units of each stitch that stay without partner
};

// The cheapest units to leave out when F is measured from `cut`. cost(i, j): the first i stitches
// done, j units left out; ways(i, j): how many choices cost as little.
class LeaveOut {
 public:
    LeaveOut(const Course& course, int cut)
        : course_(course),
          cut_(cut),
          rows_(static_cast<std::size_t>(course.many()) + 1),
          cost_((course.units.size() + 1) * rows_, kNever),
          ways_(cost_.size(), 0) {
        cost_[0] = 0;
        ways_[0] = 1;
        for (std::size_t i = 0; i < course.units.size(); ++i) {
            for (int left = 0; left <= course.many(); ++left) step(i, left);
        }
    }

    // Of equal choices the one that leaves out what is read last.
    Choice best() const {
        std::size_t i = course_.units.size();
        int left = course_.many();
        Choice choice{cost_[slot(i, left)], ways_[slot(i, left)], cut_, std::vector<int>(i, 0)};
        while (i > 0) {
            --i;
            const std::int64_t before = cost_[slot(i + 1, left)] - gapCost(i, left);
            int some = canLeave(i, left);
            while (cost_[slot(i, left - some)] != before) --some;
            choice.leftOut[i] = some;
            left -= some;
        }
        return choice;
    }

 private:
    std::size_t slot(std::size_t i, int left) const {
        return i * rows_ + static_cast<std::size_t>(left);
    }
    // Units of stitch i that may be among `left` ones left out.
    int canLeave(std::size_t i, int left) const {
        return std::clamp(course_.units[i].net * course_.sign(), 0, left);
    }
    std::int64_t gapCost(std::size_t i, int left) const {
        const std::int64_t f = course_.sums[i] - cut_ - std::int64_t{left} * course_.sign();
        return std::abs(f) * course_.gaps[i];
    }
    void step(std::size_t i, int left) {
        std::int64_t best = kNever;
        int ways = 0;
        for (int some = 0; some <= canLeave(i, left); ++some) {
            const std::size_t from = slot(i, left - some);
            if (cost_[from] >= kNever || cost_[from] > best) continue;
            ways = cost_[from] < best ? ways_[from] : std::min(2, ways + ways_[from]);
            best = cost_[from];
        }
        if (best >= kNever) return;
        cost_[slot(i + 1, left)] = best + gapCost(i, left);
        ways_[slot(i + 1, left)] = ways;
    }

    const Course& course_;
    int cut_;
    std::size_t rows_;
    std::vector<std::int64_t> cost_;
    std::vector<int> ways_;
};

// The same for one surplus unit: where it is left out, F is less by it from there on.
Choice leaveOneOut(const Course& course, int cut) {
    const std::size_t n = course.units.size();
    std::int64_t cost = 0;
    for (std::size_t i = 0; i < n; ++i)
        cost += std::int64_t{std::abs(course.sums[i] - cut - course.sign())} * course.gaps[i];
    Choice choice;
    choice.cut = cut;
    std::size_t best = 0;
    for (std::size_t i = 0; i < n; ++i) {
        if (course.units[i].net * course.sign() > 0 && cost <= choice.cost) {
            choice.ways = cost < choice.cost ? 1 : 2;
            choice.cost = cost;
            best = i;
        }
        const int f = course.sums[i] - cut;
        cost += std::int64_t{std::abs(f) - std::abs(f - course.sign())} * course.gaps[i];
    }
    choice.leftOut.assign(n, 0);
    choice.leftOut[best] = 1;
    return choice;
}

Choice leaveOut(const Course& course, int cut) {
    return course.many() == 1 ? leaveOneOut(course, cut) : LeaveOut(course, cut).best();
}

bool affordable(const Course& course, std::int64_t cuts) {
    const auto stitches = static_cast<std::int64_t>(course.units.size());
    return cuts * stitches * (std::int64_t{course.many()} + 1) <= kMaxSteps;
}

// The units the stack leaves open are left out.
Choice byStackAlone(const Course& course) {
    Choice choice{0, 2, 0, std::vector<int>(course.units.size(), 0)};
    std::vector<std::size_t> open;  // one entry per unit
    for (std::size_t i = 0; i < course.units.size(); ++i) {
        const int net = course.units[i].net;
        for (int unit = std::abs(net); unit > 0; --unit) {
            if (open.empty() || (course.units[open.back()].net > 0) == (net > 0)) {
                open.push_back(i);
            } else {
                open.pop_back();
            }
        }
    }
    for (const std::size_t i : open) ++choice.leftOut[i];
    return choice;
}

// The least that pairing can cost when the circle is cut at `cut`.
std::int64_t leastCost(const Course& course, int cut) {
    std::int64_t sum = 0;
    for (std::size_t i = 0; i < course.sums.size(); ++i) {
        const int apart = std::abs(course.sums[i] - cut) - course.many();
        sum += std::int64_t{std::max(apart, 0)} * course.gaps[i];
    }
    return sum;
}

// The best place to cut a circle. Of equal cuts the one with the fewest pairs over the repeat's
// edge.
Choice bestOnRing(const Course& course) {
    const auto [lowest, highest] = std::minmax_element(course.sums.begin(), course.sums.end());
    const int low = std::min(*lowest - course.many(), 0);
    const int high = std::max(*highest + course.many(), 0);
    if (!affordable(course, high - low + 1)) return byStackAlone(course);
    std::vector<std::pair<std::int64_t, int>> cuts;  // the most promising first
    for (int cut = low; cut <= high; ++cut) cuts.emplace_back(leastCost(course, cut), cut);
    std::sort(cuts.begin(), cuts.end());
    const auto rank = [](const Choice& choice) {
        return std::tuple(choice.cost, std::abs(choice.cut), choice.cut);
    };
    Choice best;
    for (const auto& [least, cut] : cuts) {
        if (least > best.cost) break;
        Choice choice = leaveOut(course, cut);
        if (choice.cost > best.cost) continue;
        const int ways = choice.cost == best.cost ? 2 : choice.ways;
        if (rank(choice) < rank(best)) best = std::move(choice);
        best.ways = ways;
    }
    return best;
}

Choice bestOnLine(const Course& course) {
    return affordable(course, 1) ? leaveOut(course, 0) : byStackAlone(course);
}

std::vector<int> leftOutIn(const Course& course, const Choice& choice) {
    std::vector<int> columns;
    for (std::size_t i = 0; i < course.units.size(); ++i)
        columns.insert(columns.end(), static_cast<std::size_t>(choice.leftOut[i]),
                       course.units[i].column);
    return columns;
}

// Pairs each unit with the last open one of the other kind, from stitch `start` once around.
Companions pairFrom(const Course& course, const Choice& choice, std::size_t start,
                    int lengthOfRing) {
    struct Open {
        int column;
        int sign;
        bool around;  // read after the repeat's edge was passed
    };
    Companions result;
    std::vector<Open> open;
    const std::size_t n = course.units.size();
    for (std::size_t k = 0; k < n; ++k) {
        const std::size_t i = (start + k) % n;
        const auto [column, net] = course.units[i];
        const bool around = start + k >= n;
        const int sign = net > 0 ? 1 : -1;
        for (int unit = std::abs(net) - choice.leftOut[i]; unit > 0; --unit) {
            if (open.empty() || open.back().sign == sign) {
                open.push_back({column, sign, around});
                continue;
            }
            const Open other = open.back();
            open.pop_back();
            const bool across = other.around != around;
            const int forward = column - other.column + (across ? lengthOfRing : 0);
            result.pairs.push_back(sign > 0 ? CompanionPair{column, other.column, -forward, across}
                                            : CompanionPair{other.column, column, forward, across});
        }
    }
    result.orphans = leftOutIn(course, choice);
    result.ambiguous = choice.ways > 1;
    return result;
}

}  // namespace

Companions pairOnLine(const std::vector<ShapingUnit>& units) {
    if (units.empty()) return {};
    const Course course(units, 0);
    return pairFrom(course, bestOnLine(course), 0, 0);
}

Companions pairOnRing(const std::vector<ShapingUnit>& units, int first, int last) {
    if (units.empty()) return {};
    const int length = last - first + 1;
    const Course course(units, length);
    const Choice choice = bestOnRing(course);
    std::size_t start = 0;
    int leftOut = 0;
    for (std::size_t i = 0; choice.cut != 0 && i < units.size(); ++i) {
        leftOut += choice.leftOut[i] * course.sign();
        if (course.sums[i] - leftOut != choice.cut) continue;
        start = (i + 1) % units.size();
        break;
    }
    return pairFrom(course, choice, start, length);
}

std::vector<int> orphansOnLine(const std::vector<ShapingUnit>& units) {
    const Course course(units, 0);
    return course.surplus == 0 ? std::vector<int>{} : leftOutIn(course, bestOnLine(course));
}

std::vector<int> orphansOnRing(const std::vector<ShapingUnit>& units, int first, int last) {
    const Course course(units, last - first + 1);
    return course.surplus == 0 ? std::vector<int>{} : leftOutIn(course, bestOnRing(course));
}

}  // namespace lacewright
