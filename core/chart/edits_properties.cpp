#include <utility>

#include "core/chart/edit_steps.h"
#include "core/chart/edits.h"

namespace lacewright {

ChartProperties propertiesOf(const Chart& chart) {
    return {chart.name,      chart.notes,     chart.source, chart.worked,
            chart.firstSide, chart.uncharted, chart.castOn, chart.gauge};
}

Result<Chart> setProperties(const Chart& chart, const ChartProperties& properties) {
    Chart changed = chart;
    changed.name = properties.name;
    changed.notes = properties.notes;
    changed.source = properties.source;
    changed.worked = properties.worked;
    // In the round the right side always faces.
    const bool round = properties.worked == Worked::InTheRound;
    changed.firstSide = round ? Side::Right : properties.firstSide;
    changed.uncharted = properties.uncharted;
    changed.castOn = properties.castOn;
    changed.gauge = properties.gauge;
    return settled(std::move(changed));
}

Result<Chart> setGrading(const Chart& chart, Grading grading) {
    Chart changed = chart;
    changed.grading = std::move(grading);
    return settled(std::move(changed));
}

Result<Chart> defineStitch(const Chart& chart, Stitch stitch) {
    const std::size_t own = chart.stitches->size() - builtInStitches()->size();
    if (own >= static_cast<std::size_t>(kMaxOwnStitches)) {
        return refusal("A chart defines at most " + std::to_string(kMaxOwnStitches) +
                       " stitches of its own.");
    }
    auto grown = chart.stitches->with(std::move(stitch));
    if (!grown) return grown.error();
    Chart changed = chart;
    changed.stitches = *std::move(grown);
    return changed;
}

}  // namespace lacewright
