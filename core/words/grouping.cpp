#include "core/words/grouping.h"

#include <algorithm>
#include <cstdint>
#include <limits>

namespace lacewright {
namespace {

constexpr int kNever = std::numeric_limits<int>::max() / 4;

// C1[i][j], brackets without brackets in them, and C2[i][j], brackets two deep:
//   C[i][j] = min over k of A[i][k] + C[k][j],
// where A[i][k], one phrase for the whole interval, is a counted run or, for each period p of the
// interval, C of its first p stitches and the price of a bracket.
class IntervalTable {
 public:
    IntervalTable(std::span<const WordIndex> run, const WordCosts& costs)
        : run_(run), costs_(costs), n_(run.size()) {
        findRuns();
        findAgreement();
        for (Level& level : levels_) {
            level.atom.assign((n_ + 1) * (n_ + 1), kNever);
            level.ends.resize(n_ + 1);
            level.period.assign((n_ + 1) * (n_ + 1), 0);
            level.best.assign((n_ + 1) * (n_ + 1), 0);
            level.cut.assign((n_ + 1) * (n_ + 1), 0);
        }
        for (std::size_t length = 1; length <= n_; ++length) {
            std::vector<std::size_t> periods;
            for (std::size_t p = 1; p * 2 <= length; ++p) {
                if (length % p == 0) periods.push_back(p);
            }
            for (std::size_t i = 0; i + length <= n_; ++i) fill(i, i + length, periods);
        }
    }

    Phrases phrases() const { return between(0, n_, 1); }

 private:
    struct Level {
        std::vector<int> atom;                       // cost as one phrase
        std::vector<std::uint16_t> period;           // of that phrase; 0: a counted run
        std::vector<std::vector<std::size_t>> ends;  // by start: where one phrase may end so far
        std::vector<int> best;
        std::vector<std::uint16_t> cut;  // end of the first phrase
    };

    std::size_t at(std::size_t i, std::size_t j) const { return i * (n_ + 1) + j; }

    void findRuns() {
        runEnd_.assign(n_, n_);
        for (std::size_t i = n_; i-- > 0;) {
            const bool on = i + 1 < n_ && run_[i] == run_[i + 1] &&
                            costs_.countable[static_cast<std::size_t>(run_[i])];
            runEnd_[i] = on ? runEnd_[i + 1] : i + 1;
        }
    }

    // agree_[i, i + p]: how many stitches from i on are the same as those p later.
    void findAgreement() {
        agree_.assign((n_ + 1) * (n_ + 1), 0);
        for (std::size_t i = n_; i-- > 0;) {
            for (std::size_t k = n_; k-- > i + 1;) {
                agree_[at(i, k)] = static_cast<std::uint16_t>(
                    run_[i] == run_[k] ? agree_[at(i + 1, k + 1)] + 1 : 0);
            }
        }
    }

    // Counted runs only.
    int plain(std::size_t i, std::size_t j) const {
        int cost = 0;
        for (; i < j; i = runEnd_[i]) cost += costs_.weight[static_cast<std::size_t>(run_[i])];
        return cost;
    }

    void fill(std::size_t i, std::size_t j, const std::vector<std::size_t>& periods) {
        const std::size_t length = j - i;
        for (int depth = 0; depth < 2; ++depth) {
            Level& level = levels_[depth];
            int atom = runEnd_[i] >= j ? costs_.weight[static_cast<std::size_t>(run_[i])] : kNever;
            std::size_t period = 0;
            if (depth > 0 && levels_[0].atom[at(i, j)] < atom) {
                atom = levels_[0].atom[at(i, j)];
                period = levels_[0].period[at(i, j)];
            }
            for (const std::size_t p : periods) {
                if (agree_[at(i, i + p)] < length - p) continue;
                const int cost = depth == 0
                                     ? plain(i, i + p) + kBracketCost
                                     : levels_[0].best[at(i, i + p)] + kBracketCost + kNestedCost;
                if (cost < atom) {
                    atom = cost;
                    period = p;
                }
                break;  // other periods of the interval are multiples of the smallest
            }
            level.atom[at(i, j)] = atom;
            level.period[at(i, j)] = static_cast<std::uint16_t>(period);
            int best = atom;
            std::size_t cut = j;
            for (auto end = level.ends[i].rbegin(); end != level.ends[i].rend(); ++end) {
                const int cost = level.atom[at(i, *end)] + level.best[at(*end, j)];
                if (cost < best) {
                    best = cost;
                    cut = *end;
                }
            }
            if (atom < kNever) level.ends[i].push_back(j);
            level.best[at(i, j)] = best;
            level.cut[at(i, j)] = static_cast<std::uint16_t>(cut);
        }
    }

    Phrases between(std::size_t i, std::size_t j, int depth) const {
        Phrases phrases;
        while (i < j) {
            const std::size_t end = levels_[depth].cut[at(i, j)];
            phrases.push_back(phrase(i, end, depth));
            i = end;
        }
        return phrases;
    }

    Phrase phrase(std::size_t i, std::size_t j, int depth) const {
        const std::size_t period = levels_[depth].period[at(i, j)];
        Phrase phrase;
        phrase.first = i;
        phrase.length = j - i;
        if (period == 0) {
            phrase.word = run_[i];
            phrase.times = {static_cast<int>(j - i)};
            return phrase;
        }
        phrase.times = {static_cast<int>((j - i) / period)};
        const bool flat = depth == 0 || levels_[0].atom[at(i, j)] == levels_[1].atom[at(i, j)];
        phrase.body = flat ? parts(i, i + period) : between(i, i + period, 0);
        return phrase;
    }

    Phrases parts(std::size_t i, std::size_t j) const {
        Phrases phrases;
        while (i < j) {
            const std::size_t end = std::min(runEnd_[i], j);
            phrases.push_back({run_[i], {}, {static_cast<int>(end - i)}, i, end - i});
            i = end;
        }
        return phrases;
    }

    std::span<const WordIndex> run_;
    const WordCosts& costs_;
    std::size_t n_;
    std::vector<std::size_t> runEnd_;
    std::vector<std::uint16_t> agree_;
    Level levels_[2];
};

}  // namespace

void shift(Phrases& phrases, std::size_t by) {
    for (Phrase& phrase : phrases) {
        phrase.first += by;
        shift(phrase.body, by);
    }
}

Phrases shortestPhrases(std::span<const WordIndex> run, const WordCosts& costs) {
    Phrases phrases;
    for (std::size_t from = 0; from < run.size(); from += kExactRun) {
        const std::size_t length = std::min(kExactRun, run.size() - from);
        Phrases part = IntervalTable(run.subspan(from, length), costs).phrases();
        shift(part, from);
        // A run that the cut has parted is one again.
        if (!phrases.empty() && !phrases.back().isBracket() &&
            phrases.back().word == part.front().word &&
            costs.countable[static_cast<std::size_t>(part.front().word)]) {
            phrases.back().times.front() += part.front().times.front();
            phrases.back().length += part.front().length;
            part.erase(part.begin());
        }
        phrases.insert(phrases.end(), std::make_move_iterator(part.begin()),
                       std::make_move_iterator(part.end()));
    }
    return phrases;
}

Phrases countedRuns(std::span<const WordIndex> run, const WordCosts& costs) {
    Phrases phrases;
    for (std::size_t i = 0; i < run.size(); ++i) {
        if (!phrases.empty() && phrases.back().word == run[i] &&
            costs.countable[static_cast<std::size_t>(run[i])]) {
            ++phrases.back().times.front();
            ++phrases.back().length;
        } else {
            phrases.push_back({run[i], {}, {1}, i, 1});
        }
    }
    return phrases;
}

int costOf(const Phrases& phrases, const WordCosts& costs) {
    int cost = 0;
    for (const Phrase& phrase : phrases) {
        if (!phrase.isBracket()) {
            cost += costs.weight[static_cast<std::size_t>(phrase.word)];
            continue;
        }
        const bool nested = std::any_of(phrase.body.begin(), phrase.body.end(),
                                        [](const Phrase& part) { return part.isBracket(); });
        cost += costOf(phrase.body, costs) + kBracketCost + (nested ? kNestedCost : 0);
    }
    return cost;
}

std::vector<WordIndex> spelledOut(const Phrases& phrases, std::size_t size) {
    std::vector<WordIndex> words;
    for (const Phrase& phrase : phrases) {
        const int times = phrase.times[phrase.times.size() == 1 ? 0 : size];
        const std::vector<WordIndex> once = phrase.isBracket()
                                                ? spelledOut(phrase.body, size)
                                                : std::vector<WordIndex>{phrase.word};
        for (int i = 0; i < times; ++i) words.insert(words.end(), once.begin(), once.end());
    }
    return words;
}

}  // namespace lacewright
