#include "app/canvas/row_states.h"

#include <algorithm>

namespace lacewright::app {
namespace {

// Whether the finding is about what is looked at.
bool concerns(const Finding& finding, const Size* chosen) {
    return chosen == nullptr || finding.sizes.empty() ||
           std::ranges::find(finding.sizes, chosen->name) != finding.sizes.end();
}

}  // namespace

void fillStates(const ViewScene& scene, int row, int right, int left,
                std::vector<TileState>& states) {
    states.assign(static_cast<std::size_t>(left - right + 1), TileState::Plain);
    const auto at = [&](int column) -> TileState& {
        return states[static_cast<std::size_t>(column - right)];
    };
    if (scene.chosen != nullptr) {
        const Reach reach = scene.chosen->on(row);
        for (int column = right; column <= left; ++column) {
            const bool inside = column >= reach.start && column <= reach.end;
            at(column) = inside ? TileState::Inside : TileState::Outside;
        }
    }
    for (const Finding& finding : findingsOfRow(scene.report, scene.chart.rowNumber(row))) {
        if (finding.severity == Severity::Note || !concerns(finding, scene.chosen)) continue;
        const TileState state =
            finding.severity == Severity::Fault ? TileState::Guilty : TileState::Warned;
        for (const int column : finding.columns) {
            if (column < right || column > left || at(column) == TileState::Outside) continue;
            at(column) = std::max(at(column), state);
        }
    }
}

}  // namespace lacewright::app
