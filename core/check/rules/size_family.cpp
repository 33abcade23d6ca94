#include "core/check/rules/size_family.h"

#include <algorithm>

#include "core/base/length.h"

namespace lacewright {

std::int64_t firstCount(const SizeSurvey& size) {
    return size.counts.front().takes;
}

std::int64_t lastCount(const SizeSurvey& size) {
    return size.counts.back().makes;
}

std::optional<double> finishedWidth(const Chart& chart, std::int64_t stitches) {
    if (chart.gauge.stitches <= 0) return std::nullopt;
    const std::int64_t all = stitches + 2 * std::int64_t{chart.grading.edgeStitches};
    return static_cast<double>(all) * 10 / chart.gauge.stitches;
}

std::optional<int> rankOfLetterCode(const std::string& name) {
    if (name == "M") return 0;
    std::size_t at = 0;
    int extra = 0;
    constexpr int kMost = 20;
    while (at < name.size() && name[at] >= '0' && name[at] <= '9' && extra <= kMost)
        extra = 10 * extra + (name[at++] - '0');
    if (extra > kMost || (at > 0 && extra == 0)) return std::nullopt;
    if (at > 0) {
        if (at == name.size() || name[at++] != 'X') return std::nullopt;
        // "2X" stands for 2XL.
        if (at == name.size()) return 1 + extra;
    } else {
        while (at < name.size() && name[at] == 'X') ++at, ++extra;
    }
    if (extra > kMost || at + 1 != name.size()) return std::nullopt;
    if (name[at] == 'S') return -1 - extra;
    if (name[at] == 'L') return 1 + extra;
    return std::nullopt;
}

Finding familyFinding(const Survey& survey, const char* rule, int row,
                      const std::vector<const SizeSurvey*>& sizes, std::string message) {
    Finding finding;
    finding.rule = rule;
    finding.severity = Severity::Warning;
    finding.row = survey.chart().rowNumber(row);
    finding.message = std::move(message);
    for (const SizeSurvey* s : sizes) {
        finding.sizes.push_back(s->size.name);
        const Reach& reach = s->paths.reach(row);
        finding.columns.push_back(reach.start);
        finding.columns.push_back(reach.end);
    }
    std::sort(finding.columns.begin(), finding.columns.end());
    finding.columns.erase(std::unique(finding.columns.begin(), finding.columns.end()),
                          finding.columns.end());
    return finding;
}

}  // namespace lacewright
