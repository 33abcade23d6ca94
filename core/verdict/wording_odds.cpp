#include "core/verdict/wording_odds.h"

#include <algorithm>
#include <cmath>

namespace lacewright {
namespace {

constexpr double kByChance = 0.05;       // that a wrong mend words the row like another
constexpr double kRepeatAlike = 1.8;     // log odds of a repeat that another row has as well
constexpr std::size_t kFewestAlike = 4;  // elements of such a repeat
constexpr double kStepByChance = 0.3;    // and that its numbers are then those foreseen

// Writes elements down without the numbers of plain stitches, times and what stretches leave.
class Speller {
 public:
    Speller(std::string& words, std::vector<int>& numbers) : words_(words), numbers_(numbers) {}

    void spell(const Elements& elements) {
        std::string before;
        for (const Element& element : elements) {
            if (const auto* working = std::get_if<Working>(&element.what)) {
                spell(*working, before);
                continue;
            }
            before.clear();
            if (const auto* group = std::get_if<Group>(&element.what)) {
                within('[', group->body);
                numbers_.push_back(group->times.of(0));
            } else if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
                within(stretch->starred ? '*' : '-', stretch->body);
                within('+', stretch->lastTime);
                numbers_.push_back(stretch->leaves ? stretch->leaves->of(0) : -1);
                numbers_.push_back(stretch->before.of(0));
            } else if (const auto* one = std::get_if<IntoOne>(&element.what)) {
                within('{', one->body);
            }
        }
    }

 private:
    void spell(const Working& working, std::string& before) {
        const bool plain = working.takes == 1 && working.makes == 1;
        std::string name = working.term + " ";
        if (!plain && working.count != Figure(1)) name += std::to_string(working.count.of(0)) + " ";
        if (plain && name == before) {
            numbers_.back() += working.count.of(0);
            return;
        }
        words_ += name;
        if (plain) numbers_.push_back(working.count.of(0));
        before = std::move(name);
    }

    void within(char mark, const Elements& elements) {
        words_ += mark;
        spell(elements);
        words_ += ')';
    }

    std::string& words_;
    std::vector<int>& numbers_;
};

// What the row stars, each with its numbers.
std::vector<std::string> repeatsOf(const Elements& elements) {
    std::vector<std::string> all;
    for (const Element& element : elements) {
        const auto* group = std::get_if<Group>(&element.what);
        const auto* stretch = std::get_if<Stretch>(&element.what);
        const Elements* body = group != nullptr && group->starred       ? &group->body
                               : stretch != nullptr && stretch->starred ? &stretch->body
                                                                        : nullptr;
        if (body == nullptr || body->size() < kFewestAlike) continue;
        std::vector<int> numbers;
        std::string& words = all.emplace_back();
        Speller(words, numbers).spell(*body);
        for (const int number : numbers) words += std::to_string(number) + " ";
    }
    return all;
}

}  // namespace

WordingOdds::Wording WordingOdds::wordingOf(const Elements& elements) {
    const bool one = std::all_of(elements.begin(), elements.end(), [](const Element& element) {
        const auto* stretch = std::get_if<Stretch>(&element.what);
        return (stretch != nullptr && !stretch->starred) ||
               std::holds_alternative<Aside>(element.what);
    });
    Wording wording;
    if (!one) Speller(wording.words, wording.numbers).spell(elements);
    return wording;
}

WordingOdds::WordingOdds(const SlipTrial& trial) {
    const auto& rows = trial.said().rows;
    for (std::size_t row = 0; row < rows.size(); ++row) {
        textOf_.push_back(trial.textOf(row));
        rowNumbers_.push_back(rows[row].number);
        wordings_.push_back(wordingOf(rows[row].elements));
        if (wordings_.back().words.empty() || textOf_.back() != row) continue;
        for (std::string& words : repeatsOf(rows[row].elements)) repeats_.emplace(words, row);
        rows_[wordings_.back().words].push_back(row);
        ++texts_;
    }
}

// The numbers that the row has if it follows the two nearest that say the same words, of which
// `without` is none.
std::optional<std::vector<int>> WordingOdds::foreseen(std::size_t row, const std::string& words,
                                                      std::size_t without) const {
    const auto alike = rows_.find(words);
    if (alike == rows_.end()) return std::nullopt;
    std::vector<std::size_t> near;
    for (const std::size_t other : alike->second) {
        if (other != row && other != without) near.push_back(other);
    }
    if (near.size() < 2) return std::nullopt;
    const auto distance = [&](std::size_t other) {
        return std::abs(rowNumbers_[other] - rowNumbers_[row]);
    };
    std::stable_sort(near.begin(), near.end(),
                     [&](std::size_t a, std::size_t b) { return distance(a) < distance(b); });
    const std::vector<int>& a = wordings_[near[0]].numbers;
    const std::vector<int>& b = wordings_[near[1]].numbers;
    if (a.size() != b.size()) return std::nullopt;
    const int rows = rowNumbers_[near[1]] - rowNumbers_[near[0]];
    std::vector<int> numbers;
    for (std::size_t i = 0; i < a.size(); ++i) {
        const int grown = (b[i] - a[i]) * (rowNumbers_[row] - rowNumbers_[near[0]]);
        if (grown % rows != 0) return std::nullopt;
        numbers.push_back(a[i] + grown / rows);
    }
    return numbers;
}

// That numbers are those foreseen, as often as those of the others are.
double WordingOdds::stepOdds(std::size_t row, const Wording& wording) const {
    const auto numbers = foreseen(row, wording.words, row);
    if (!numbers) return 0;
    double right = 1;
    double seen = 2;
    for (const auto& [words, rows] : rows_) {
        for (const std::size_t other : rows) {
            const auto others = other == row ? std::nullopt : foreseen(other, words, row);
            if (!others) continue;
            ++seen;
            right += *others == wordings_[other].numbers ? 1 : 0;
        }
    }
    const double share = right / seen;
    return *numbers == wording.numbers ? std::log(share / kStepByChance)
                                       : std::log((1 - share) / (1 - kStepByChance));
}

bool WordingOdds::repeatsLikeAnother(std::size_t row, const Elements& elements) const {
    const std::vector<std::string> own = repeatsOf(elements);
    return std::any_of(own.begin(), own.end(), [&](const std::string& words) {
        const auto [first, last] = repeats_.equal_range(words);
        return std::any_of(first, last, [&](const auto& other) { return other.second != row; });
    });
}

double WordingOdds::of(std::size_t row, const Elements& elements) const {
    const Wording wording = wordingOf(elements);
    const std::size_t own = textOf_[row];
    const auto others = [&](const std::string& words) {
        const auto at = rows_.find(words);
        if (at == rows_.end()) return std::size_t{0};
        return at->second.size() - (wordings_[own].words == words ? 1 : 0);
    };
    // Texts worded like another one, this row left aside.
    std::size_t alike = 0;
    for (const auto& [words, same] : rows_) {
        const std::size_t count = others(words);
        alike += count > 1 ? count : 0;
    }
    const std::size_t seen = texts_ - (wordings_[own].words.empty() ? 0 : 1);
    const double share = (static_cast<double>(alike) + 1) / (static_cast<double>(seen) + 2);
    if (others(wording.words) == 0) {
        return std::log((1 - share) / (1 - kByChance)) +
               (repeatsLikeAnother(own, elements) ? kRepeatAlike : 0);
    }
    return std::log(share / kByChance) + stepOdds(own, wording);
}

}  // namespace lacewright
