#include "core/chart/edit_steps.h"

#include <utility>

#include "core/chart/edits.h"

namespace lacewright {

Result<Chart> settled(Chart chart) {
    if (auto problem = frameProblem(chart)) return *std::move(problem);
    return chart;
}

void setCells(Chart& chart, int row, CellRun cells) {
    const Row& before = chart.row(row);
    if (cells == before.cells()) return;
    chart.rows.replace(static_cast<std::size_t>(row),
                       makeRow(std::move(cells), *chart.stitches, before));
    for (Size& size : chart.sizes) {
        std::erase_if(size.substitutions, [&](const Substitution& substitution) {
            return substitution.row == row && !fits(substitution, chart);
        });
    }
}

bool fits(const Substitution& substitution, const Chart& chart) {
    const StitchIndex replaced = chart.row(substitution.row).at(substitution.column);
    const auto stitch = chart.stitches->find(substitution.stitch);
    return stitch && replaced != kCovered &&
           chart.stitches->spans()[*stitch] == chart.stitches->spans()[replaced];
}

void dropUnfitSubstitutions(Chart& chart) {
    for (Size& size : chart.sizes) {
        std::erase_if(size.substitutions,
                      [&](const Substitution& substitution) { return !fits(substitution, chart); });
    }
}

}  // namespace lacewright
