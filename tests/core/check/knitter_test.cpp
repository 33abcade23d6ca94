// An oracle of another kind: a knitter who works loop by loop on a list and knows nothing of forms.

#include <gtest/gtest.h>

#include <vector>

#include "core/check/check.h"
#include "core/count/path.h"
#include "tests/support/charts.h"
#include "tests/support/findings.h"
#include "tests/support/random_charts.h"

namespace lacewright {
namespace {

using namespace lacewright::test;

// The loops on a needle, nearest the tip first.
struct Needle {
    std::vector<int> loops;
    std::size_t tip = 0;

    bool slipOff() { return tip < loops.size() && ++tip > 0; }
    bool empty() const { return tip == loops.size(); }
};

// Works one row; false when the loops run out or some are left.
bool knitRow(const Chart& chart, int row, const std::vector<int>& times, Needle& needle) {
    Needle right;
    for (const WorkedCell& cell : unrolled(pathOn(chart, row, nullptr), times)) {
        const StitchIndex index = chart.row(row).at(cell.column);
        if (index == kCovered) continue;
        const Stitch& stitch = (*chart.stitches)[index];
        for (int i = 0; i < stitch.takes; ++i) {
            if (!needle.slipOff()) return false;
        }
        for (int i = 0; i < stitch.makes; ++i) right.loops.push_back(cell.column);
    }
    const bool usedUp = needle.empty();
    needle = std::move(right);
    return usedUp;
}

std::size_t needed(const Chart& chart, const std::vector<int>& times) {
    std::size_t sum = 0;
    for (const WorkedCell& cell : unrolled(pathOn(chart, 0, nullptr), times)) {
        const StitchIndex index = chart.row(0).at(cell.column);
        if (index != kCovered) sum += static_cast<std::size_t>((*chart.stitches)[index].takes);
    }
    return sum;
}

// Rows from..to with the given times, starting with what `needle` holds; which row fails, or -1.
int firstFailure(const Chart& chart, int from, int to, const std::vector<int>& times,
                 Needle& needle) {
    for (int row = from; row <= to; ++row) {
        if (!knitRow(chart, row, times, needle)) return row;
    }
    return -1;
}

// Repeats that begin later than row 1 are worked as often as the stitches allow.
bool knitsWith(const Chart& chart, std::vector<int> times) {
    Needle needle{std::vector<int>(needed(chart, times))};
    const int top = chart.height() - 1;
    int seam = top + 1;
    for (const Repeat& repeat : chart.repeats) {
        if (repeat.firstRow > 0) seam = repeat.firstRow;
    }
    if (firstFailure(chart, 0, seam - 1, times, needle) >= 0) return false;
    if (seam > top) return true;
    for (int m = 0; m <= 80; ++m) {
        for (std::size_t i = 0; i < times.size(); ++i) {
            if (chart.repeats[i].firstRow == seam) times[i] = m;
        }
        Needle copy = needle;
        if (firstFailure(chart, seam, top, times, copy) < 0) return true;
    }
    return false;
}

bool knitsForOneToSix(const Chart& chart, const Report& report, std::string& failing) {
    // A stacked repeat may ask for a few repeats below it before it fits at all.
    int least = 1;
    for (const Finding& f : report.findings) {
        const auto at = f.message.find("to be at least ");
        if (f.severity == Severity::Note && at != std::string::npos)
            least = std::stoi(f.message.substr(at + 15));
    }
    for (int a = least; a < least + 6; ++a) {
        for (int b = 1; b <= (chart.repeats.size() > 1 && chart.repeats[1].firstRow == 0 ? 3 : 1);
             ++b) {
            if (!knitsWith(chart, {a, b})) {
                failing = std::to_string(a) + ", " + std::to_string(b);
                return false;
            }
        }
    }
    return true;
}

TEST(Knitter, AgreesWithTheFormsOnThousandsOfCharts) {
    RandomCharts charts(20260207);
    int proven = 0;
    int broken = 0;
    for (int i = 0; i < 3000; ++i) {
        const Chart chart = charts.next();
        const Report report = check(chart);
        std::string failing;
        const bool knits = knitsForOneToSix(chart, report, failing);
        ASSERT_EQ(report.knittable, knits)
            << "chart " << i << ", repeats worked " << failing << "\n"
            << drawing(chart) << describe(report);
        ++(knits ? proven : broken);
    }
    // Both kinds are there in numbers, so the agreement says something.
    EXPECT_GT(proven, 800);
    EXPECT_GT(broken, 800);
}

}  // namespace
}  // namespace lacewright
