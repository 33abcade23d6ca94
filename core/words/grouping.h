#pragma once

#include <cstddef>
#include <span>
#include <string>
#include <vector>

// How a run of stitches is put in the fewest words a knitter reads easily: counts ("k3") and
// bracketed repeats ("[yo, k2tog] 3 times"), before it becomes text.
namespace lacewright {

// A word's number, standing for the same work wherever it appears.
using WordIndex = int;

struct Phrase {
    WordIndex word = -1;       // one word, worked `times` over; -1: a bracket
    std::vector<Phrase> body;  // what a bracket holds
    // How often, one number for each size or one for all.
    std::vector<int> times = {1};
    // The stitches it stands for, all times together: positions in the run it was made from. With
    // several sizes those of the first.
    std::size_t first = 0;
    std::size_t length = 0;
    std::string count = {};  // a bracket worked as often as the count of this name; else empty

    bool isBracket() const { return word < 0; }
    bool operator==(const Phrase&) const = default;
};

using Phrases = std::vector<Phrase>;

// What the words of a run cost, by word number.
struct WordCosts {
    std::vector<int> weight;      // how much there is to read
    std::vector<bool> countable;  // takes a number: "k3", but not "k2tog 3"
};

inline constexpr int kBracketCost = 3;         // "[", "]" and how often
inline constexpr int kNestedCost = 3;          // more when a bracket holds another
inline constexpr std::size_t kExactRun = 256;  // longer runs are grouped in parts of so many

// The cheapest phrases for the run, found by dynamic programming over all of its intervals and
// their periods: O(n^3) for a run of n stitches, brackets at most two deep. Of equals the one whose
// first phrase reaches farthest. Requires: every word has its costs.
Phrases shortestPhrases(std::span<const WordIndex> run, const WordCosts& costs);

// Counts only, no brackets.
Phrases countedRuns(std::span<const WordIndex> run, const WordCosts& costs);

int costOf(const Phrases& phrases, const WordCosts& costs);

// Moves what the phrases stand for on by so many positions.
void shift(Phrases& phrases, std::size_t by);

// The words one by one, as the `size` (from 0) works them.
std::vector<WordIndex> spelledOut(const Phrases& phrases, std::size_t size = 0);

}  // namespace lacewright
