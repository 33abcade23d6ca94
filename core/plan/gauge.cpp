#include "core/plan/gauge.h"

#include <algorithm>
#include <cmath>

namespace lacewright {

Gauge gaugeOverFourInches(double stitches, double rows) {
    constexpr double kFourInches = 4 * kCmPerInch;
    return {stitches * 10 / kFourInches, rows * 10 / kFourInches, {}};
}

int countNearest(double cm, double perTenCm) {
    return static_cast<int>(std::floor(cm * perTenCm / 10 + 0.5));
}

LengthPlan planLength(const Chart& chart, double rowsPerTenCm, double wantedCm) {
    const int each = chart.uncharted == Uncharted::None ? 1 : 2;
    const int all = chart.height() * each;
    const int again =
        chart.rowRepeat ? (chart.rowRepeat->lastRow - chart.rowRepeat->firstRow + 1) * each : all;
    const int once = all - again;
    const double passes = (wantedCm * rowsPerTenCm / 10 - once) / again;
    LengthPlan plan;
    plan.repeats = std::max(1, static_cast<int>(std::floor(passes + 0.5)));
    plan.rows = once + plan.repeats * again;
    plan.cm = lengthOf(plan.rows, rowsPerTenCm);
    plan.differenceCm = plan.cm - wantedCm;
    return plan;
}

}  // namespace lacewright
