#include "core/plan/planner.h"

#include <cmath>
#include <tuple>

#include "core/check/check.h"
#include "core/file/chart_file.h"
#include "core/plan/gauge.h"
#include "tests/support/random_charts.h"
#include "tests/support/size_knitter.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;

// The planner's aim, worked out stitch by stitch for one size.
struct Tried {
    bool narrow = false;  // less than half as wide as wanted
    bool misfit = false;
    int parted = 0;
    std::int64_t beyond = 0;  // of the tolerance
    bool lopsided = false;
    int offCentre = 0;
    std::int64_t off = 0;
    int stitches = 0;
    bool moves = false;  // away from where the chart's size of that name lies
    Reach reach;
    int times = 0;

    auto key() const {
        return std::tuple(narrow, misfit, parted, beyond, lopsided, offCentre, off, stitches, moves,
                          reach.start, reach.end);
    }
};

int partedBy(const Chart& chart, const Reach& reach) {
    int parted = 0;
    for (int row = 0; row < chart.height(); ++row) {
        if (reach.start > 1) parted += test::pairsCrossing(chart, row, reach.start - 1);
        if (reach.end < chart.width) parted += test::pairsCrossing(chart, row, reach.end);
    }
    return parted;
}

// Columns worked on row 1 before the first full repeat against those after the last one.
int offCentreBy(const Chart& chart, const Reach& reach) {
    const Repeat* first = nullptr;
    const Repeat* last = nullptr;
    for (const Repeat& repeat : chart.repeats) {
        const bool reached = repeat.left >= reach.start && repeat.right <= reach.end;
        if (repeat.firstRow > 0 || !reached) continue;
        if (first == nullptr || repeat.right < first->right) first = &repeat;
        if (last == nullptr || repeat.right > last->right) last = &repeat;
    }
    if (first == nullptr) return std::abs(reach.start - 1 - (chart.width - reach.end));
    const auto jogOn1 = [](const Repeat* repeat) {
        const auto jog = repeat->jogs.find(0);
        return jog == repeat->jogs.end() ? Jog{} : jog->second;
    };
    const Box right{first->right + jogOn1(first).right, first->left + jogOn1(first).left};
    const Box left{last->right + jogOn1(last).right, last->left + jogOn1(last).left};
    const int before =
        reach.start <= right.right ? right.right - reach.start : right.left - reach.start + 1;
    const int after = reach.end >= left.left ? reach.end - left.left : reach.end - left.right + 1;
    return std::abs(before - after);
}

// The planner's aim for charts of several repeats: all alike, but repeats that stand one above the
// other share by their widths.
using Passes = std::vector<int> (*)(const Chart& chart, int times);
std::vector<int> allAlike(const Chart& chart, int times) {
    return std::vector<int>(chart.repeats.size(), times);
}

// Every way of working the chart, whatever width is wanted: up to `most` times.
std::vector<Tried> everyWay(const Chart& chart, int most, Passes passesFor = allAlike) {
    const auto& stitches = *chart.stitches;
    std::vector<Tried> ways;
    for (int start = 1; start <= chart.width; ++start) {
        for (int end = start; end <= chart.width; ++end) {
            const Reach reach{start, end};
            const int parted = partedBy(chart, reach);
            const int offCentre = offCentreBy(chart, reach);
            for (int times = chart.repeats.empty() ? 0 : 1; times <= most; ++times) {
                Tried tried;
                tried.reach = reach;
                tried.times = times;
                tried.parted = parted;
                tried.offCentre = offCentre;
                std::int64_t made = 0;
                for (int row = 0; row < chart.height(); ++row) {
                    std::vector<StitchIndex> worked;
                    std::int64_t taken = 0;
                    std::int64_t left = 0;
                    for (const int column :
                         test::columnsWorked(chart, row, reach, passesFor(chart, times))) {
                        const StitchIndex stitch =
                            chart.row(row).cells()[static_cast<std::size_t>(column - 1)];
                        if (stitch == kCovered) continue;
                        worked.push_back(stitch);
                        taken += stitches[stitch].takes;
                        left += stitches[stitch].makes;
                    }
                    if (row == 0) tried.stitches = static_cast<int>(taken);
                    if (row > 0 && taken != made) tried.misfit = true;
                    made = left;
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

std::optional<Tried> bestOf(const Chart& chart, const std::vector<Tried>& ways,
                            const PlanRequest& request, const WantedWidth& wanted) {
    const double cm = wanted.cm;
    const Size* present = chart.findSize(wanted.name);
    std::optional<Tried> best;
    for (Tried tried : ways) {
        const int all = tried.stitches + 2 * request.edgeStitches;
        if (all % request.multiple != request.remainder) continue;
        tried.off = std::llround(std::abs(all * 10 / request.gauge.stitches - cm) * 1e4);
        tried.moves = present != nullptr && present->reach != tried.reach;
        tried.narrow = all * 20 / request.gauge.stitches < cm - 1e-9;
        tried.beyond =
            std::max<std::int64_t>(0, tried.off - std::llround(request.toleranceCm * 1e4));
        if (!best || tried.key() < best->key()) best = tried;
    }
    return best;
}

void expectBest(const Chart& chart, const std::vector<Tried>& ways, const PlanRequest& request) {
    const Result<Plan> plan = planSizes(chart, request);
    for (std::size_t i = 0; i < request.sizes.size(); ++i) {
        const auto best = bestOf(chart, ways, request, request.sizes[i]);
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

// The middle bust measurements in inches of the nine women's sizes XS to 5X. Source: Craft Yarn
// Council, Standards and Guidelines for Crochet and Knitting, women's sizes (28-30, 32-34 ...).
constexpr double kCouncilBusts[] = {29, 33, 37, 41, 45, 49, 53, 57, 61};
// The same as that table prints them in centimetres (71-76, 81-86, 91.5-96.5 ...).
constexpr double kCouncilBustsCm[] = {73.5, 83.5, 94, 104, 114.25, 124.5, 134.5, 144.5, 155};

// Four columns at each side of a repeat of six.
Chart lanterns() {
    Chart chart = chartOf({"k k k yo ssk k k k2tog yo k k k k k", "k*14"});
    return withRepeat(chart, "A", 5, 10);
}

// Stitches that a repeat takes on its first row.
int widthOf(const Chart& chart, const Repeat& repeat) {
    int width = 0;
    const auto jog = repeat.jogs.find(repeat.firstRow);
    const bool jogged = jog != repeat.jogs.end();
    const int left = repeat.left + (jogged ? jog->second.left : 0);
    for (int column = repeat.right + (jogged ? jog->second.right : 0); column <= left; ++column) {
        const StitchIndex cell =
            chart.row(repeat.firstRow).cells()[static_cast<std::size_t>(column - 1)];
        if (cell != kCovered) width += (*chart.stitches)[cell].takes;
    }
    return width;
}

// Two repeats one above the other, worked so that they are equally wide; others alike.
std::vector<int> sharedByWidth(const Chart& chart, int times) {
    if (chart.repeats.size() != 2 || chart.repeats[1].firstRow <= chart.repeats[0].lastRow)
        return allAlike(chart, times);
    const int lower = widthOf(chart, chart.repeats[0]);
    const int upper = widthOf(chart, chart.repeats[1]);
    if (lower < 1 || upper < 1) return allAlike(chart, times);
    for (int n = 1;; ++n) {
        if (n * lower % upper == 0) return {n * times, n * lower / upper * times};
    }
}

TEST(PlanSizes, IsTheBestOfAllColumnsAndTimesOnRandomCharts) {
    test::RandomCharts charts(1860);
    int parted = 0;
    int mirrored = 0;
    for (int i = 0; i < 40; ++i) {
        Chart chart = charts.next();
        // A size of the name that is planned, somewhere.
        const int start = charts.between(1, chart.width);
        chart.sizes.assign(1, {});
        chart.sizes[0].name = "S";
        chart.sizes[0].reach = {start, charts.between(start, chart.width)};
        PlanRequest request;
        request.gauge = {20, 28, {}};
        request.edgeStitches = charts.between(0, 2);
        request.multiple = charts.oneIn(3) ? charts.between(2, 4) : 1;
        request.remainder = charts.between(0, request.multiple - 1);
        request.toleranceCm = charts.oneIn(2) ? 0 : charts.between(1, 30) / 10.0;
        request.sizes = {
            {"S", charts.between(3, 9) + 0.3}};  // up to 24 stitches with the tolerance
        SCOPED_TRACE(i);
        const std::vector<Tried> ways = everyWay(chart, 26, sharedByWidth);
        expectBest(chart, ways, request);
        // The charts are hard enough to say something.
        const auto best = bestOf(chart, ways, request, request.sizes[0]);
        if (best) mirrored += best->lopsided ? 0 : 1;
        for (const Tried& tried : ways) parted += tried.parted > 0 ? 1 : 0;
    }
    EXPECT_GT(parted, 10'000);
    EXPECT_GT(mirrored, 10);
}

// Only the two columns beside the repeat fit: the repeat drifts by a stitch each time it is worked.
TEST(PlanSizes, DoesNotTakeAFewColumnsForAWideSize) {
    Chart chart = chartOf({"k*6", "k k k2tog k k k"});
    withRepeat(chart, "A", 2, 4);
    PlanRequest request;
    request.gauge = {10, 10, {}};
    request.sizes = {{"M", 60}};
    const Result<Plan> plan = planSizes(chart, request);
    ASSERT_TRUE(plan);
    EXPECT_FALSE(plan->sizes[0].chosen.fits);
    EXPECT_NEAR(plan->sizes[0].chosen.cm, 60, 2);
    request.sizes = {{"M", 2}};
    EXPECT_TRUE(planSizes(chart, request)->sizes[0].chosen.fits);
}

TEST(PlanSizes, HoldsTheRepeatsThatAreAlikeInEverySize) {
    // Ground, a motif that must stand once, ground.
    Chart chart = chartOf({"k k k yo s2kp yo k k k", "k*9"});
    withRepeat(chart, "A", 2, 2);
    withRepeat(chart, "M", 4, 6);
    withRepeat(chart, "B", 8, 8);
    PlanRequest request;
    request.gauge = {20, 28, {}};
    request.held = {{"M", 1}};
    request.sizes = {{"S", 15.5}, {"M", 20.5}};  // 31 and 41 stitches: 7 + 2 n
    const Result<Plan> plan = planSizes(chart, request);
    ASSERT_TRUE(plan) << plan.error().text();
    const Result<Chart> used = usePlan(chart, *plan);
    ASSERT_TRUE(used);
    for (const Size& size : used->sizes) EXPECT_EQ(size.times.at("M"), 1);
    EXPECT_EQ(used->sizes[0].times.at("A"), used->sizes[0].times.at("B"));
    EXPECT_EQ(plan->sizes[0].chosen.stitches, 31);
    EXPECT_EQ(plan->sizes[1].chosen.stitches, 41);
    EXPECT_TRUE(plan->sizes[1].chosen.mirrored);
    EXPECT_FALSE(check(*used).hasFault());
    request.held = {{"Z", 1}};
    EXPECT_FALSE(planSizes(chart, request));
}

TEST(PlanSizes, RepeatsOneAboveTheOtherShareByTheirWidths) {
    Chart chart = chartOf({"k*14", "k*14"});
    chart.repeats = {{"A", 2, 7, 0, 0, {}, {}}, {"B", 2, 13, 1, 1, {}, {}}};
    PlanRequest request;
    request.gauge = {10, 10, {}};
    request.sizes = {{"S", 50}};
    const Result<Plan> plan = planSizes(chart, request);
    ASSERT_TRUE(plan);
    EXPECT_TRUE(plan->sizes[0].chosen.fits);
    const Result<Chart> used = usePlan(chart, *plan);
    ASSERT_TRUE(used);
    EXPECT_EQ(used->sizes[0].times.at("A"), 2 * used->sizes[0].times.at("B"));
    const auto rows = test::knitSize(*used, used->sizes[0]);
    EXPECT_EQ(rows[0].makes, rows[1].takes);
}

TEST(PlanSizes, NineSizesOfOneChartAreEachTheBest) {
    PlanRequest request;
    request.gauge = {22, 30, {}};
    for (const double bust : kCouncilBusts)
        request.sizes.push_back({std::to_string(request.sizes.size()), cmOf(bust / 2)});
    const std::vector<Tried> ways = everyWay(lanterns(), 32);
    expectBest(lanterns(), ways, request);
    request.toleranceCm = 1;
    request.multiple = 2;
    expectBest(lanterns(), ways, request);
}

// Common practice: the finished width is body and ease, divided by the pieces; the count is that
// width times the gauge, moved to the nearest multiple of M plus P, so that it is off by at most
// M / 2 stitches. Gauge 5.5 stitches to the inch is within the Craft Yarn Council's range for yarn
// of category 3 (21 to 24 stitches over 4 in).
TEST(PlanSizes, CouncilSizesComeWithinHalfARepeatInInchesAndCentimetres) {
    const Chart chart = lanterns();                         // M is 6
    for (const double ease : {-4.0, 0.0, 2.0, 4.0, 6.0}) {  // inches: very close to oversized
        PlanRequest inches;
        inches.gauge = gaugeOverFourInches(22, 30);
        PlanRequest printed = inches;
        for (std::size_t i = 0; i < std::size(kCouncilBusts); ++i) {
            const std::string name = std::to_string(i);
            inches.sizes.push_back({name, cmOf((kCouncilBusts[i] + ease) / 2)});
            printed.sizes.push_back({name, (kCouncilBustsCm[i] + cmOf(ease)) / 2});
        }
        const Result<Plan> plan = planSizes(chart, inches);
        const Result<Plan> planCm = planSizes(chart, printed);
        ASSERT_TRUE(plan && planCm);
        for (std::size_t i = 0; i < std::size(kCouncilBusts); ++i) {
            const EdgeChoice& chosen = plan->sizes[i].chosen;
            const double wanted = (kCouncilBusts[i] + ease) / 2 * 5.5;  // stitches
            EXPECT_TRUE(chosen.fits);
            EXPECT_EQ(chosen.parted, 0);
            EXPECT_LE(std::abs(chosen.stitches - wanted), 3) << i;
            EXPECT_NEAR(inchesOf(chosen.cm), chosen.stitches / 5.5, 1e-9);
            EXPECT_NEAR(chosen.differenceCm / 2.54, (chosen.stitches - wanted) / 5.5, 1e-9);
            // The table's own rounding to half centimetres moves a size by 0.65 cm at most.
            EXPECT_NEAR(planCm->sizes[i].wanted.cm, plan->sizes[i].wanted.cm, 0.65);
            EXPECT_LE(std::abs(planCm->sizes[i].chosen.stitches - chosen.stitches), 6) << i;
        }
    }
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

TEST(UsePlan, KeepsWhatStillAppliesAndSaysWhatIsLost) {
    Chart chart = lanterns();
    test::withSize(chart, "stays", 5, 10, 4);
    test::withSize(chart, "moves", 2, 12, 4);
    test::withSize(chart, "goes", 1, 14, 4);
    for (Size& size : chart.sizes) {
        size.changes = {{1, 1, {3, 11}, {}}};
        size.substitutions = {{0, 6, Edge::Start, "k", {}}, {0, 9, Edge::End, "k", {}}};
        size.shoulder = 9;
        size.extras = {{"x", "1"}};
    }
    PlannedSize stays;
    stays.wanted = {"stays", 20};
    stays.wanted.body = 90;
    stays.chosen.reach = {5, 10};
    stays.chosen.times = 6;
    PlannedSize moves;
    moves.wanted = {"moves", 25};
    moves.chosen.reach = {2, 11};
    moves.chosen.times = 7;
    const Plan plan{{20, 28, {}}, 1, 2, {{0, 1}}, {stays, moves}};
    const Result<Chart> used = usePlan(chart, plan);
    ASSERT_TRUE(used) << used.error().text();
    ASSERT_EQ(used->sizes.size(), 2U);
    EXPECT_EQ(used->sizes[0].changes, chart.sizes[0].changes);
    EXPECT_EQ(used->sizes[0].substitutions, chart.sizes[0].substitutions);
    EXPECT_EQ(used->sizes[0].body, 90);
    EXPECT_EQ(used->sizes[0].shoulder, 9);
    EXPECT_EQ(used->sizes[0].extras, chart.sizes[0].extras);
    EXPECT_TRUE(used->sizes[1].changes.empty());
    ASSERT_EQ(used->sizes[1].substitutions.size(), 1U);  // its start stays, its end moves
    EXPECT_EQ(used->sizes[1].substitutions[0].edge, Edge::Start);
    EXPECT_EQ(used->grading.pieces, 2);
    EXPECT_EQ(used->grading.edgeStitches, 1);
    for (const Size& size : used->sizes)
        EXPECT_EQ(size.stitches, test::knitSize(*used, size)[0].takes) << size.name;
    EXPECT_EQ(
        lostByPlan(chart, plan),
        (std::vector<std::string>{
            "Size moves loses 1 span of rows of its own and 1 stitch that it works otherwise, "
            "made for columns 2 to 12.",
            "Size goes is not planned and goes."}));
}

// What is as good elsewhere stays where it is.
TEST(PlanSizes, FindsTheMillpondTeesSizesAgain) {
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
        EXPECT_EQ(plan->sizes[i].chosen.reach, chart->sizes[i].reach);
    }
}

}  // namespace
}  // namespace lacewright
