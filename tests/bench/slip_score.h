#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/check/finding.h"

// How well the place and the mend of a slip were found.
namespace lacewright::test {

// Where the true cell stands in a list, ties broken at random.
struct Rank {
    double first = 0;    // chance to come first
    double three = 0;    // chance to be among the first three
    double ceiling = 0;  // 1 / (cells as likely as the true one)
};

// `number`: of the row as the knitter reads it; `columns`: each of them is right.
Rank rankOf(const std::vector<Suspect>& suspects, int number, const std::set<int>& columns);

// Sums over slips; printed as shares of their number.
struct Score {
    int mutants = 0;
    double detected = 0, first = 0, three = 0, mended = 0, alone = 0, ceiling = 0, ms = 0,
           worstMs = 0;

    void add(const Score& other);
    void print(const std::string& title) const;
    static void printHead();
};

}  // namespace lacewright::test
