#include "core/plan/planner.h"

#include <cmath>
#include <tuple>

#include "core/check/check.h"
#include "core/check/companions.h"
#include "core/count/tally.h"
#include "core/file/chart_file.h"
#include "core/plan/gauge.h"
#include "tests/support/random_charts.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;

// The planner's aim, worked out stitch by stitch for one size.
struct Tried {
    bool misfit = false;
    int parted = 0;
    std::int64_t beyond = 0;  // of the tolerance
    bool lopsided = false;
    int offCentre = 0;
    std::int64_t off = 0;
    int stitches = 0;
    Reach reach;
    int times = 0;

    auto key() const {
        return std::tuple(misfit, parted, beyond, lopsided, offCentre, off, stitches, reach.start,
                          reach.end);
    }
};

std::vector<StitchIndex> workedBy(const Chart& chart, const Size& size, int row, int times) {
    const Path path = pathOn(chart, row, &size);
    std::vector<StitchIndex> stitches;
    for (const WorkedCell& cell : unrolled(path, std::vector<int>(chart.repeats.size(), times))) {
        const StitchIndex stitch = chart.row(row).at(cell.column);
        if (stitch != kCovered) stitches.push_back(stitch);
    }
    return stitches;
}

int partedBy(const Chart& chart, const Reach& reach) {
    int parted = 0;
    const Path across{{1, chart.width, Segment::Part::Plain, -1}};
    for (int row = 0; row < chart.height(); ++row) {
        for (const auto& pair : companionsOn(chart.row(row), across, *chart.stitches).pairs) {
            const int low = std::min(pair.increase, pair.decrease);
            const int high = std::max(pair.increase, pair.decrease);
            parted += low < reach.start && high >= reach.start ? 1 : 0;
            parted += low <= reach.end && high > reach.end ? 1 : 0;
        }
    }
    return parted;
}

int offCentreBy(const Chart& chart, const Size& size) {
    int right = 0;
    int left = 0;
    bool seenBox = false;
    for (const Segment& segment : pathOn(chart, 0, &size)) {
        if (segment.isBox()) {
            seenBox = true;
            left = 0;
        } else {
            (seenBox ? left : right) += segment.last - segment.first + 1;
        }
    }
    if (!seenBox) return std::abs(size.reach.start - 1 - (chart.width - size.reach.end));
    return std::abs(right - left);
}

// Every way of working the chart, whatever width is wanted: up to `most` times.
std::vector<Tried> everyWay(const Chart& chart, int most) {
    const auto& stitches = *chart.stitches;
    std::vector<Tried> ways;
    for (int start = 1; start <= chart.width; ++start) {
        for (int end = start; end <= chart.width; ++end) {
            Size size;
            size.reach = {start, end};
            const int parted = partedBy(chart, size.reach);
            const int offCentre = offCentreBy(chart, size);
            for (int times = chart.repeats.empty() ? 0 : 1; times <= most; ++times) {
                Tried tried;
                tried.reach = size.reach;
                tried.times = times;
                tried.parted = parted;
                tried.offCentre = offCentre;
                std::int64_t made = 0;
                for (int row = 0; row < chart.height(); ++row) {
                    const auto worked = workedBy(chart, size, row, times);
                    const Tally tally = tallyOf(worked, stitches);
                    if (row == 0) tried.stitches = static_cast<int>(tally.takes);
                    if (row > 0 && tally.takes != made) tried.misfit = true;
                    made = tally.makes;
                    for (std::size_t i = 0; i < worked.size() && !tried.lopsided; ++i) {
                        const Stitch& one = stitches[worked[i]];
                        const Stitch& other = stitches[worked[worked.size() - 1 - i]];
                        tried.lopsided = (one.mirror.empty() ? one.id : one.mirror) != other.id;
                    }
                }
                if (tried.stitches >= 1) ways.push_back(tried);
                if (chart.repeats.empty()) break;
            }
        }
    }
    return ways;
}

std::optional<Tried> bestOf(const std::vector<Tried>& ways, const PlanRequest& request, double cm) {
    std::optional<Tried> best;
    for (Tried tried : ways) {
        const int all = tried.stitches + 2 * request.edgeStitches;
        if (all % request.multiple != request.remainder) continue;
        tried.off = std::llround(std::abs(all * 10 / request.gauge.stitches - cm) * 1e4);
        tried.beyond =
            std::max<std::int64_t>(0, tried.off - std::llround(request.toleranceCm * 1e4));
        if (!best || tried.key() < best->key()) best = tried;
    }
    return best;
}

void expectBest(const Chart& chart, const std::vector<Tried>& ways, const PlanRequest& request) {
    const Result<Plan> plan = planSizes(chart, request);
    for (std::size_t i = 0; i < request.sizes.size(); ++i) {
        const auto best = bestOf(ways, request, request.sizes[i].cm);
        if (!plan) {
            EXPECT_TRUE(!best || request.sizes.size() > 1) << plan.error().text();
            continue;
        }
        ASSERT_TRUE(best);
        const EdgeChoice& chosen = plan->sizes[i].chosen;
        EXPECT_EQ(chosen.reach, best->reach)
            << chosen.reach.start << ".." << chosen.reach.end << " x" << chosen.times << " not "
            << best->reach.start << ".." << best->reach.end << " x" << best->times << "\n"
            << test::drawing(chart);
        EXPECT_EQ(chosen.times, best->times) << test::drawing(chart);
        EXPECT_EQ(chosen.stitches, best->stitches);
        EXPECT_EQ(chosen.parted, best->parted);
        EXPECT_EQ(chosen.fits, !best->misfit);
        EXPECT_EQ(chosen.mirrored, !best->lopsided);
        EXPECT_EQ(chosen.offCentre, best->offCentre);
    }
}

// Four columns at each side of a repeat of six.
Chart lanterns() {
    Chart chart = chartOf({"k k k yo ssk k k k2tog yo k k k k k", "k*14"});
    return withRepeat(chart, "A", 5, 10);
}

TEST(PlanSizes, IsTheBestOfAllColumnsAndTimesOnRandomCharts) {
    test::RandomCharts charts(1860);
    for (int i = 0; i < 20; ++i) {
        const Chart chart = charts.next();
        PlanRequest request;
        request.gauge = {20, 28, {}};
        request.edgeStitches = charts.between(0, 2);
        request.multiple = charts.oneIn(3) ? charts.between(2, 4) : 1;
        request.remainder = charts.between(0, request.multiple - 1);
        request.toleranceCm = charts.oneIn(2) ? 0 : charts.between(1, 30) / 10.0;
        request.sizes = {
            {"S", charts.between(3, 9) + 0.3}};  // up to 24 stitches with the tolerance
        SCOPED_TRACE(i);
        expectBest(chart, everyWay(chart, 26), request);
    }
}

TEST(PlanSizes, NineSizesOfOneChartAreEachTheBest) {
    PlanRequest request;
    request.gauge = {22, 30, {}};
    // Half of the middle bust measurements of the nine sizes of the Craft Yarn Council's table.
    const double busts[] = {29, 33, 37, 41, 45, 49, 53, 57, 61};
    for (const double bust : busts)
        request.sizes.push_back({std::to_string(request.sizes.size()), cmOf(bust / 2)});
    const std::vector<Tried> ways = everyWay(lanterns(), 32);
    expectBest(lanterns(), ways, request);
    request.toleranceCm = 1;
    request.multiple = 2;
    expectBest(lanterns(), ways, request);
}

TEST(PlanSizes, TellsWhatWasGivenUp) {
    PlanRequest request;
    request.gauge = {20, 28, {}};
    Chart chart = chartOf({"yo k k k k2tog"});  // any edge but the outermost parts the pair
    withRepeat(chart, "A", 1, 5);
    request.sizes = {{"S", 11}};  // 22 stitches; whole repeats give 20 or 25
    const Result<Plan> plan = planSizes(chart, request);
    ASSERT_TRUE(plan);
    const PlannedSize& size = plan->sizes[0];
    EXPECT_EQ(size.chosen.parted, 0);
    EXPECT_EQ(size.chosen.stitches % 5, 0);
    ASSERT_TRUE(size.nearer);
    EXPECT_GT(size.nearer->parted, 0);
    EXPECT_LT(std::abs(size.nearer->differenceCm), std::abs(size.chosen.differenceCm));
}

TEST(PlanSizes, PrefersMirroredEdgesWithinTheTolerance) {
    PlanRequest request;
    request.gauge = {20, 28, {}};
    request.sizes = {{"S", cmOf(40)}};
    request.toleranceCm = 0.6;
    const Result<Plan> plan = planSizes(lanterns(), request);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->sizes[0].chosen.offCentre, 0);
}

TEST(PlanSizes, RefusesDemandsThatMakeNoSense) {
    const Chart chart = lanterns();
    PlanRequest request;
    request.sizes = {{"S", 40}};
    EXPECT_FALSE(planSizes(chart, request));  // no gauge
    request.gauge = {20, 28, {}};
    EXPECT_TRUE(planSizes(chart, request));
    request.sizes = {{"S", 40}, {"S", 50}};
    EXPECT_FALSE(planSizes(chart, request));
    request.sizes = {{"S", std::nan("")}};
    EXPECT_FALSE(planSizes(chart, request));
    request.sizes = {};
    EXPECT_FALSE(planSizes(chart, request));
    request.sizes = {{"S", 40}};
    request.multiple = 2;
    request.remainder = 2;
    EXPECT_FALSE(planSizes(chart, request));
}

TEST(UsePlan, WritesSizesPointsAndGaugeThatProve) {
    PlanRequest request;
    request.gauge = {20, 28, {}};
    for (int i = 0; i < 9; ++i)
        request.sizes.push_back({"size " + std::to_string(i), 35.0 + 5 * i});
    const Chart chart = lanterns();
    const Result<Plan> plan = planSizes(chart, request);
    ASSERT_TRUE(plan);
    const Result<Chart> used = usePlan(chart, *plan);
    ASSERT_TRUE(used) << used.error().text();
    ASSERT_EQ(used->sizes.size(), 9U);
    EXPECT_FALSE(check(*used).hasFault());
    for (const Size& size : used->sizes) {
        EXPECT_NE(used->pointAt(size.reach.start), nullptr);
        EXPECT_NE(used->pointAt(size.reach.end), nullptr);
    }
    EXPECT_EQ(used->gauge.stitches, 20);
    const Result<Chart> again = usePlan(*used, *plan);
    ASSERT_TRUE(again);
    EXPECT_EQ(*again, *used);
}

// The sample's own sizes lie within half a repeat of what a plan finds for their widths.
TEST(PlanSizes, FindsTheMillpondTeesWidthsAgain) {
    const Result<Chart> chart = loadChart(test::inSourceTree("samples/millpond-tee.lacewright"));
    ASSERT_TRUE(chart);
    PlanRequest request;
    request.gauge = chart->gauge;
    for (const Size& size : chart->sizes)
        request.sizes.push_back({size.name, lengthOf(*size.stitches, request.gauge.stitches)});
    const Result<Plan> plan = planSizes(*chart, request);
    ASSERT_TRUE(plan);
    for (std::size_t i = 0; i < chart->sizes.size(); ++i) {
        EXPECT_EQ(plan->sizes[i].chosen.stitches, *chart->sizes[i].stitches);
        EXPECT_EQ(plan->sizes[i].chosen.parted, 0);
    }
}

}  // namespace
}  // namespace lacewright
