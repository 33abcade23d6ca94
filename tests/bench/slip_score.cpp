#include "tests/bench/slip_score.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace lacewright::test {

Rank rankOf(const std::vector<Suspect>& suspects, int number, const std::set<int>& columns) {
    Rank best;
    for (const Suspect& truth : suspects) {
        if (truth.row != number || !columns.contains(truth.column)) continue;
        int before = 0, tied = 0, right = 0;
        for (const Suspect& other : suspects) {
            const bool isRight = other.row == number && columns.contains(other.column);
            if (std::abs(other.weight - truth.weight) <= 1e-6 * truth.weight) {
                ++tied;
                right += isRight ? 1 : 0;
            } else if (other.weight > truth.weight) {
                ++before;
            }
        }
        Rank rank;
        rank.ceiling = static_cast<double>(right) / tied;
        rank.first = before == 0 ? rank.ceiling : 0;
        // None of the places left among the first three goes to a wrong one of the tied.
        double miss = 1;
        for (int place = before; place < 3 && place - before < tied; ++place) {
            miss *= std::max(0.0, static_cast<double>(tied - right - (place - before)) /
                                      (tied - (place - before)));
        }
        rank.three = before < 3 ? 1 - miss : 0;
        if (rank.first > best.first || best.ceiling == 0) best = rank;
        return best;
    }
    return best;
}

void Score::add(const Score& other) {
    mutants += other.mutants;
    detected += other.detected;
    first += other.first;
    three += other.three;
    mended += other.mended;
    alone += other.alone;
    ceiling += other.ceiling;
    ms += other.ms;
    worstMs = std::max(worstMs, other.worstMs);
}

void Score::print(const std::string& title) const {
    if (mutants == 0) return;
    const double n = mutants / 100.0;
    std::printf("%-44s %6d %6.1f %6.1f %6.1f %6.1f %6.1f %6.1f %7.2f %7.1f\n", title.c_str(),
                mutants, detected / n, first / n, three / n, mended / n, alone / n, ceiling / n,
                ms / mutants, worstMs);
}

void Score::printHead() {
    std::printf("%-44s %6s %6s %6s %6s %6s %6s %6s %7s %7s\n", "", "number", "found%", "first%",
                "three%", "mend%", "alone%", "ceil%", "ms", "worst");
}

}  // namespace lacewright::test
