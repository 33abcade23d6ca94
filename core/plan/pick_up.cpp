#include "core/plan/pick_up.h"

#include <cmath>
#include <numeric>

#include "core/base/text.h"
#include "core/chart/chart.h"
#include "core/plan/spread.h"

namespace lacewright {
namespace {

constexpr int kMostRatioRows = 10'000;
constexpr int kMostRecipeRows = 100'000;
constexpr double kSlack = 1e-12;  // what division may be out by

Ratio ratioWith(double value, int rows) {
    const int stitches = static_cast<int>(std::floor(value * rows + 0.5));
    const int common = std::max(1, std::gcd(stitches, rows));
    return {stitches / common, rows / common};
}

double errorOf(const Ratio& ratio, double value) {
    return std::abs(static_cast<double>(ratio.stitches) / ratio.rows - value);
}

// Skips are spread so that the edge begins and ends with about half a run of picked rows.
std::vector<bool> pickedRows(int rows, int stitches) {
    std::vector<bool> picked(static_cast<std::size_t>(rows), true);
    const std::int64_t skips = rows - stitches;
    for (std::int64_t i = 0; i < skips; ++i) {
        picked[static_cast<std::size_t>((2 * i + 1) * rows / (2 * skips))] = false;
    }
    return picked;
}

std::string recipeFor(const std::vector<bool>& picked) {
    std::vector<std::string> units;
    for (std::size_t i = 0; i < picked.size();) {
        std::size_t up = 0;
        while (i < picked.size() && picked[i]) ++up, ++i;
        std::size_t skip = 0;
        while (i < picked.size() && !picked[i]) ++skip, ++i;
        std::string unit = up > 0 ? "pick up " + std::to_string(up) : "";
        if (skip > 0) unit += std::string(up > 0 ? ", " : "") + "skip " + std::to_string(skip);
        units.push_back(std::move(unit));
    }
    return recipeText(units);
}

}  // namespace

Ratio nearestRatio(double value, int mostRows) {
    Ratio best = ratioWith(value, 1);
    for (int rows = 2; rows <= mostRows; ++rows) {
        const Ratio ratio = ratioWith(value, rows);
        if (errorOf(ratio, value) < errorOf(best, value) - kSlack) best = ratio;
    }
    return best;
}

Result<PickUp> planPickUp(double stitchesPerTenCm, double rowsPerTenCm, int rows) {
    const auto isGauge = [](double gauge) { return gauge > 0 && gauge <= kMaxGauge; };
    if (!isGauge(stitchesPerTenCm) || !isGauge(rowsPerTenCm)) {
        return Error{ErrorCode::OutOfRange,
                     "A gauge must be above 0 and at most " + std::to_string(kMaxGauge) + ".",
                     {}};
    }
    if (rows < 1 || rows > kMostRecipeRows) {
        return Error{ErrorCode::OutOfRange,
                     "An edge has from 1 to " + std::to_string(kMostRecipeRows) + " rows.",
                     {}};
    }
    PickUp plan;
    plan.exact = stitchesPerTenCm / rowsPerTenCm;
    plan.simple = nearestRatio(plan.exact, kSimpleRows);
    plan.ratio = ratioWith(plan.exact, 1);
    for (int q = 2; q <= kMostRatioRows && errorOf(plan.ratio, plan.exact) > 0.5 / rows + kSlack;
         ++q) {
        plan.ratio = ratioWith(plan.exact, q);
    }
    plan.rows = rows;
    plan.stitches = static_cast<int>(std::floor(plan.exact * rows + 0.5));
    if (plan.stitches <= rows) {
        plan.picked = pickedRows(rows, plan.stitches);
        plan.recipe = recipeFor(plan.picked);
    } else {
        std::vector<std::string> units;
        for (const int share : sharedEvenly(plan.stitches, rows))
            units.push_back("pick up " + std::to_string(share) + " in a row");
        plan.recipe = recipeText(units);
    }
    return plan;
}

std::string pickUpSentence(const PickUp& plan) {
    return counted(plan.stitches, "stitch", "stitches") + " along " +
           counted(plan.rows, "row", "rows") + ": " + plan.recipe;
}

std::string ratioWords(const Ratio& ratio) {
    return counted(ratio.stitches, "stitch", "stitches") + " for every " +
           (ratio.rows == 1 ? "row" : std::to_string(ratio.rows) + " rows");
}

}  // namespace lacewright
