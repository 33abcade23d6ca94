#include "core/words/named_repeats.h"

#include <algorithm>
#include <set>

#include "core/base/text.h"
#include "core/chart/letter_names.h"
#include "core/count/path.h"
#include "core/words/row_proof.h"

namespace lacewright {

namespace {

std::int64_t takesOf(const Chart& chart, const WorkedStretch& stretch) {
    std::int64_t takes = 0;
    for (const StitchIndex stitch : stretch.stitches) takes += (*chart.stitches)[stitch].takes;
    return takes;
}

}  // namespace

std::vector<int> openRepeats(const Chart& chart, int rowIndex) {
    std::vector<int> repeats;
    for (const Segment& segment : pathOn(chart, rowIndex, nullptr)) {
        if (segment.isBox()) repeats.push_back(segment.repeat);
    }
    return repeats;
}

bool namesRepeats(const Chart& chart, int rowIndex) {
    int worked = 0;
    for (const WorkedStretch& stretch : workedStretches(chart, rowIndex, nullptr)) {
        if (!stretch.open || stretch.stitches.empty()) continue;
        if (++worked > 1 || takesOf(chart, stretch) == 0) return true;
    }
    return false;
}

std::optional<Error> tooManyOpenRepeats(const Chart& chart) {
    for (int row = 0; row < chart.height(); ++row) {
        if (openRepeats(chart, row).size() <= kMostNamedRepeats) continue;
        return Error{ErrorCode::Refused,
                     "Without a size, row " + std::to_string(chart.rowNumber(row)) +
                         " has more than " + std::to_string(kMostNamedRepeats) +
                         " repeats side by side whose counts are free; choose a size.",
                     {}};
    }
    return {};
}

std::vector<std::string> repeatNames(const Chart& chart) {
    std::vector<std::string> names;
    std::set<std::string> known;
    for (const Repeat& repeat : chart.repeats) {
        const bool letter =
            repeat.name.size() == 1 && repeat.name.front() >= 'A' && repeat.name.front() <= 'Z';
        if (!letter || !known.insert(repeat.name).second) break;
        names.push_back(repeat.name);
    }
    if (names.size() == chart.repeats.size()) return names;
    names.clear();
    for (std::size_t i = 0; i < chart.repeats.size(); ++i)
        names.push_back(letterName(static_cast<int>(i)));
    return names;
}

std::string repeatsLine(const Chart& chart) {
    bool named = false;
    for (int row = 0; row < chart.height(); ++row) named = named || namesRepeats(chart, row);
    if (!named) return {};
    return "Repeats: " + join(repeatNames(chart), ", ") +
           " (each any number of times, the same on every row)";
}

std::vector<OpenTimes> triedTimes(const Chart& chart, int rowIndex) {
    const std::vector<int> repeats = openRepeats(chart, rowIndex);
    std::vector<OpenTimes> tried;
    if (repeats.size() < 2) {
        for (int times = 1; times <= kTriedRepeats; ++times) tried.push_back({{}, times});
        return tried;
    }
    if (repeats.size() > kMostNamedRepeats) return tried;
    const int most = repeats.size() == 2 ? kTriedRepeats : repeats.size() == 3 ? 3 : 2;
    OpenTimes now{std::vector<int>(chart.repeats.size(), 1), 1};
    for (;;) {
        tried.push_back(now);
        // The next combination, as on a counting wheel.
        auto wheel = repeats.begin();
        while (wheel != repeats.end() && ++now.byRepeat[static_cast<std::size_t>(*wheel)] > most) {
            now.byRepeat[static_cast<std::size_t>(*wheel)] = 1;
            ++wheel;
        }
        if (wheel == repeats.end()) return tried;
    }
}

OpenCounts namedTimes(const Chart& chart, const WrittenPattern& pattern, const OpenTimes& open) {
    OpenCounts counts;
    const std::vector<std::string> names = repeatNames(chart);
    for (std::size_t i = 0; i < pattern.counts.size(); ++i) {
        const auto found = std::find(names.begin(), names.end(), pattern.counts[i]);
        const auto repeat =
            found == names.end() ? static_cast<std::ptrdiff_t>(i) : found - names.begin();
        counts[namedCount(i)] = open.of(static_cast<int>(repeat));
    }
    return counts;
}

}  // namespace lacewright
