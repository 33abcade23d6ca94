#include "core/words/reading_chooser.h"

#include <algorithm>

namespace lacewright {

namespace {

constexpr std::size_t kFewReadings = 3;  // to look further ahead with
constexpr std::size_t kRowsAhead = 3;    // that decide how a turn is meant

}  // namespace

std::vector<RowAttempt> ReadingChooser::attempts(const NeedleReach& reach, const WrittenRow& row,
                                                 Variable first) const {
    std::vector<RowAttempt> all;
    for (CountedRow& counted : readingsThere(row, size_, first, reach, pattern_.worked)) {
        all.push_back(rowAttempt(reach.needle, std::move(counted)));
    }
    return all;
}

// The row fits in some reading.
bool ReadingChooser::nextFits(const NeedleReach& reach, std::size_t index, Variable first) {
    const WrittenRow& row = pattern_.rows[index];
    if (reach.waiting != AffineForm() || !isWorkedThrough(row)) {
        const std::vector<RowAttempt> all = attempts(reach, row, first);
        return std::any_of(all.begin(), all.end(), [](const RowAttempt& a) { return a.fits(); });
    }
    const auto [known, fresh] = ahead_.try_emplace({index, first});
    if (fresh) known->second = countedReadings(row, size_, first);
    return std::any_of(known->second.begin(), known->second.end(), [&](const CountedRow& counted) {
        return counted.uncountable.empty() && !counted.wrongRest &&
               reach.needle.fit(counted.forms.takes, counted.demands).fits();
    });
}

// The next `rows` rows from `index` on fit in some reading.
bool ReadingChooser::goesOn(const NeedleReach& reach, std::size_t index, std::size_t rows,
                            Variable first) {
    if (rows == 0 || index >= pattern_.rows.size()) return true;
    if (rows == 1) return nextFits(reach, index, first);
    std::size_t followed = 0;
    for (const RowAttempt& next : attempts(reach, pattern_.rows[index], first)) {
        if (!next.fits()) continue;
        if (goesOn(after(reach, next), index + 1, rows - 1, first + kVariablesPerRow)) return true;
        if (++followed == kFewReadings) break;
    }
    return false;
}

// What is set aside at a turn shows only when the work has come back.
RowAttempt ReadingChooser::choose(std::size_t index, const WrittenRow& row,
                                  const NeedleReach& reach, Variable first) {
    ahead_.clear();
    std::vector<RowAttempt> all = attempts(reach, row, first);
    std::vector<std::size_t> good;
    bool turns = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!all[i].fits()) continue;
        good.push_back(i);
        turns = turns || all[i].counted.partial;
    }
    const auto keep = [&](auto test) {
        if (good.size() <= 1) return;
        std::vector<std::size_t> kept;
        std::copy_if(good.begin(), good.end(), std::back_inserter(kept),
                     [&](std::size_t i) { return test(after(reach, all[i])); });
        if (!kept.empty()) good = std::move(kept);
    };
    keep([&](const NeedleReach& then) {
        const auto& loops = then.needle.loops();
        return !row.statedCount || !loops || !loops->isConstant() ||
               loops->constant() == row.statedCount->of(size_);
    });
    for (std::size_t rows = 1; rows <= (turns ? kRowsAhead : 1); ++rows) {
        if (rows > 1 && good.size() > kFewReadings) break;
        keep([&](const NeedleReach& then) {
            return goesOn(then, index + 1, rows, first + kVariablesPerRow);
        });
    }
    return std::move(all[good.empty() ? 0 : good.front()]);
}

}  // namespace lacewright
