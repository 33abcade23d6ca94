#include "app/canvas/view_scene.h"

#include <algorithm>

namespace lacewright::app {

std::span<const Finding> findingsOfRow(const Report& report, int number) {
    const auto range = std::ranges::equal_range(report.findings, number, {}, &Finding::row);
    return {range.begin(), range.end()};
}

std::optional<Severity> gravest(std::span<const Finding> findings) {
    const auto found = std::ranges::max_element(findings, {}, &Finding::severity);
    if (found == findings.end()) return std::nullopt;
    return found->severity;
}

}  // namespace lacewright::app
