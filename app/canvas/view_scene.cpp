#include "app/canvas/view_scene.h"

#include <algorithm>

namespace lacewright::app {

std::span<const Finding> findingsOfRow(const Report& report, int number) {
    const auto first = std::ranges::lower_bound(report.findings, number, {}, &Finding::row);
    const auto last = std::ranges::upper_bound(report.findings, number, {}, &Finding::row);
    return {first, last};
}

std::optional<Severity> gravest(std::span<const Finding> findings) {
    const auto found = std::ranges::max_element(findings, {}, &Finding::severity);
    if (found == findings.end()) return std::nullopt;
    return found->severity;
}

}  // namespace lacewright::app
