#include "core/plan/spread.h"

#include <algorithm>
#include <cstdint>
#include <cstdlib>

#include "core/base/text.h"
#include "core/chart/chart.h"

namespace lacewright {
namespace {

// Stitches of the needle that a change uses up.
int used(Change change) {
    switch (change) {
        case Change::MakeOne:
            return 0;
        case Change::FrontAndBack:
            return 1;
        case Change::Together:
            return 2;
    }
    return 0;
}

std::string wordFor(Change change) {
    switch (change) {
        case Change::MakeOne:
            return "m1";
        case Change::FrontAndBack:
            return "kfb";
        case Change::Together:
            return "k2tog";
    }
    return {};
}

// Plain stitches before each change and after the last.
std::vector<int> plainRuns(int plain, int changes, SpreadEnds ends) {
    if (ends == SpreadEnds::Whole) return sharedEvenly(plain, changes + 1);
    if (ends == SpreadEnds::Grouped) {
        std::vector<int> runs = sharedEvenly(plain, changes);
        runs.push_back(0);
        return runs;
    }
    std::vector<int> runs;
    std::int64_t done = 0;
    for (std::int64_t i = 0; i < changes; ++i) {
        const std::int64_t place = (2 * i + 1) * plain / (2 * std::int64_t{changes});
        runs.push_back(static_cast<int>(place - done));
        done = place;
    }
    runs.push_back(static_cast<int>(plain - done));
    return runs;
}

constexpr std::size_t kLongestPeriod = 8;  // units in one pair of brackets

// How often the `period` units from `first` on stand there one after the other.
std::size_t repeatsAt(const std::vector<std::string>& units, std::size_t first,
                      std::size_t period) {
    std::size_t end = first + period;
    while (end < units.size() && units[end] == units[end - period]) ++end;
    return (end - first) / period;
}

Error refused(std::string sentence) {
    return {ErrorCode::OutOfRange, std::move(sentence), {}};
}

}  // namespace

std::vector<int> sharedEvenly(int things, int shares) {
    std::vector<int> parts;
    parts.reserve(static_cast<std::size_t>(shares));
    for (std::int64_t i = 0; i < shares; ++i) {
        parts.push_back(
            static_cast<int>((i + 1) * things / shares - i * things / std::int64_t{shares}));
    }
    return parts;
}

std::string recipeText(const std::vector<std::string>& units) {
    std::vector<std::string> parts;
    for (std::size_t i = 0; i < units.size();) {
        std::size_t period = 1;
        std::size_t times = 1;
        for (std::size_t p = 1; p <= kLongestPeriod && i + 2 * p <= units.size(); ++p) {
            const std::size_t n = repeatsAt(units, i, p);
            if (n > 1 && n * p > times * period) {
                period = p;
                times = n;
            }
        }
        std::vector<std::string> once;
        for (std::size_t k = i; k < i + period; ++k) {
            if (!units[k].empty()) once.push_back(units[k]);
        }
        if (!once.empty()) {
            const std::string text = join(once, ", ");
            parts.push_back(times == 1 ? text
                                       : "[" + text + "] " + std::to_string(times) + " times");
        }
        i += period * times;
    }
    return join(parts, ", ");
}

Result<Spread> spreadChanges(int stitches, int changes, Change change, SpreadEnds ends) {
    if (stitches < 1 || stitches > kMaxNeedle || changes < 1 || changes > kMaxWidth) {
        return refused("Spreading needs stitches, and from 1 to " + std::to_string(kMaxWidth) +
                       " changes.");
    }
    // A made stitch stands between two others (in the round also after the last).
    const int most = change == Change::MakeOne ? stitches - (ends == SpreadEnds::Grouped ? 0 : 1)
                                               : stitches / used(change);
    if (changes > most) {
        return refused(counted(stitches, "stitch allows", "stitches allow") + " at most " +
                       std::to_string(most) + " of " + wordFor(change) + ", not " +
                       std::to_string(changes) + ".");
    }
    Spread spread;
    spread.before = stitches;
    spread.after = stitches + (change == Change::Together ? -changes : changes);
    spread.plain = plainRuns(stitches - used(change) * changes, changes, ends);
    if (change == Change::MakeOne && spread.plain.front() == 0) {
        // Closer than every second stitch: half a gap would be none, before the first stitch.
        spread.plain = plainRuns(stitches, changes, SpreadEnds::Whole);
    }
    std::vector<std::string> units;
    for (std::size_t i = 0; i < spread.plain.size(); ++i) {
        const int run = spread.plain[i];
        const std::string knit = run > 0 ? "k" + std::to_string(run) : "";
        if (i + 1 == spread.plain.size()) {
            units.push_back(knit);
        } else {
            units.push_back(knit + (run > 0 ? ", " : "") + wordFor(change));
        }
    }
    spread.recipe = recipeText(units);
    return spread;
}

Result<Spread> spreadTo(int before, int after, Change increase, SpreadEnds ends) {
    if (before == after) return refused("The two numbers are alike: there is nothing to spread.");
    if (std::min(before, after) < 1 || std::max(before, after) > kMaxNeedle) {
        return refused("A needle holds from 1 to " + std::to_string(kMaxNeedle) + " stitches.");
    }
    return spreadChanges(before, std::abs(after - before),
                         after < before ? Change::Together : increase, ends);
}

std::string spreadSentence(const Spread& spread) {
    return spread.recipe + " (" + std::to_string(spread.before) + " sts become " +
           std::to_string(spread.after) + " sts)";
}

}  // namespace lacewright
