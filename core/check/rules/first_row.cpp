#include "core/check/rules/first_row.h"

#include <algorithm>
#include <cstdlib>

#include "core/base/text.h"
#include "core/check/rules/speech.h"
#include "core/count/shares.h"

namespace lacewright {
namespace {

constexpr std::int64_t kMostTried = 200;  // times of one repeat, where two are changed together

bool isTimes(std::int64_t times) {
    return times >= 0 && times <= kMaxTimes;
}

}  // namespace

FirstRow::FirstRow(const Survey& survey, const SizeSurvey& size)
    : chart_(&survey.chart()), size_(&size), count_(size.counts[0].takes) {
    for (const Segment& segment : size.paths.path(0)) {
        if (!segment.isBox()) continue;
        const std::int64_t each = chart_->row(0).tally(segment.first, segment.last).takes;
        const auto index = static_cast<std::size_t>(segment.repeat);
        if (each > 0) boxes_.push_back({segment.repeat, each, size.times[index].value_or(1)});
    }
}

std::string FirstRow::words() const {
    return "Size " + size_->size.name + ": " + lowerAscii(rowName(*chart_, 0)) + " takes " +
           stitchCount(count_);
}

bool FirstRow::canTake(std::int64_t wanted) const {
    return std::any_of(boxes_.begin(), boxes_.end(), [&](const Box& box) {
        return (wanted - count_) % box.each == 0 && isTimes(timesFor(box, wanted));
    });
}

std::int64_t FirstRow::timesFor(const Box& box, std::int64_t wanted) const {
    return box.now + (wanted - count_) / box.each;
}

void FirstRow::addWay(std::int64_t wanted, const std::vector<std::pair<Box, std::int64_t>>& times,
                      Finding& finding) const {
    std::vector<std::string> parts;
    Mend mend;
    for (const auto& [box, often] : times) {
        const std::string& name = chart_->repeats[static_cast<std::size_t>(box.repeat)].name;
        parts.push_back(name + " " + timesText(often));
        mend.steps.emplace_back(ChangeTimes{size_->size.name, name, static_cast<int>(often)});
    }
    const std::string words = (parts.size() == 1 ? "repeat " : "repeats ") + listing(parts);
    if (finding.mends.empty())
        finding.message += "; working " + words + " gives " + std::to_string(wanted) + ".";
    mend.label = "Work " + words + " in size " + size_->size.name;
    mend.reason = "then " + lowerAscii(rowName(*chart_, 0)) + " takes " + stitchCount(wanted);
    finding.mends.push_back(std::move(mend));
}

bool FirstRow::changeOne(std::int64_t wanted, Finding& finding) const {
    for (const Box& box : boxes_) {
        const std::int64_t times = timesFor(box, wanted);
        if ((wanted - count_) % box.each == 0 && isTimes(times))
            addWay(wanted, {{box, times}}, finding);
    }
    return !finding.mends.empty();
}

// The two repeats and times that are nearest to what is worked now.
bool FirstRow::changeTwo(std::int64_t wanted, Finding& finding) const {
    std::vector<std::pair<Box, std::int64_t>> best;
    std::int64_t least = 0;
    for (std::size_t i = 0; i < boxes_.size(); ++i) {
        for (std::size_t j = i + 1; j < boxes_.size(); ++j) {
            const Box& a = boxes_[i];
            const Box& b = boxes_[j];
            for (std::int64_t by = -std::min(a.now, kMostTried); by <= kMostTried; ++by) {
                const std::int64_t rest = wanted - count_ - by * a.each;
                const std::int64_t other = rest / b.each;
                const std::int64_t far = std::abs(by) + std::abs(other);
                if (rest % b.each != 0 || !isTimes(a.now + by) || !isTimes(b.now + other) ||
                    (!best.empty() && far >= least))
                    continue;
                best = {{a, a.now + by}, {b, b.now + other}};
                least = far;
            }
        }
    }
    if (!best.empty()) addWay(wanted, best, finding);
    return !best.empty();
}

std::string FirstRow::nearest(std::int64_t wanted) const {
    std::vector<std::int64_t> parts;
    std::int64_t fewest = count_;
    for (const Box& box : boxes_) {
        parts.push_back(box.each);
        fewest -= box.each * box.now;
    }
    if (wanted < fewest) return "it cannot take fewer than " + std::to_string(fewest) + ".";
    const std::int64_t room = wanted - fewest;
    const std::int64_t below = largestShared(parts, room).value_or(0);
    const std::int64_t above = nextShared(parts, room);
    return "the nearest counts its " + std::string(parts.size() == 1 ? "repeat" : "repeats") +
           " can give are " + std::to_string(fewest + below) + " and " +
           std::to_string(fewest + above) + ".";
}

void FirstRow::explain(std::int64_t wanted, Finding& finding) const {
    if (changeOne(wanted, finding) || changeTwo(wanted, finding)) return;
    finding.message += boxes_.empty() ? "." : "; " + nearest(wanted);
}

}  // namespace lacewright
