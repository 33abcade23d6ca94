#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "core/chart/edits.h"

namespace lacewright {
namespace {

// Edits chosen by a seeded generator, with arguments that reach a little beyond the chart.
class RandomEdits {
 public:
    explicit RandomEdits(unsigned seed) : random_(seed) {}

    Result<Chart> next(const Chart& chart) {
        switch (pick(0, 19)) {
            case 0:
                return insertRows(chart, row(chart), pick(-1, 3));
            case 1:
                return removeRows(chart, row(chart), pick(-1, 3));
            case 2:
                return insertColumns(chart, column(chart), pick(-1, 3));
            case 3:
                return removeColumns(chart, column(chart), pick(-1, 4));
            case 4:
                return addRepeat(chart, repeat(chart));
            case 5:
                return changeRepeat(chart, name(chart.repeats), repeat(chart));
            case 6:
                return removeRepeat(chart, pick(0, 2) == 0 ? name(chart.repeats) : "none");
            case 7:
                return setRowRepeat(chart, RowRepeat{row(chart), row(chart), 0, {}});
            case 8:
                return addSize(chart, size(chart));
            case 9:
                return changeSize(chart, name(chart.sizes), size(chart));
            case 10:
                return removeSize(chart, pick(0, 2) == 0 ? name(chart.sizes) : "none");
            case 11:
                return moveSize(chart, name(chart.sizes), pick(-3, 3));
            case 12:
                return renamePoint(chart, name(chart.points), pick(0, 1) == 0 ? "" : word());
            case 13:
                return fillCells(chart, area(chart), stitch(chart));
            case 14:
                return pasteCells(chart, row(chart), column(chart), block(chart));
            default:
                return drawStitch(chart, row(chart), column(chart), stitch(chart));
        }
    }

 private:
    int pick(int low, int high) {
        // Not std::uniform_int_distribution, whose numbers differ between libraries.
        return low + static_cast<int>(random_() % static_cast<unsigned>(high - low + 1));
    }
    int row(const Chart& chart) { return pick(-1, chart.height()); }
    int column(const Chart& chart) { return pick(0, chart.width + 1); }
    std::string word() { return std::string(1, static_cast<char>('A' + pick(0, 9))); }
    StitchIndex stitch(const Chart& chart) {
        static constexpr const char* kIds[] = {"k", "yo", "k2tog", "c11r", "c21l", "c22r"};
        return chart.stitches->find(kIds[pick(0, 5)]).value();
    }
    CellArea area(const Chart& chart) {
        return {row(chart), row(chart), column(chart), column(chart)};
    }
    CellBlock block(const Chart& chart) {
        return mirrored(copyCells(chart, area(chart)), *chart.stitches);
    }
    template <class T>
    std::string name(const std::vector<T>& items) {
        return items.empty() ? "none" : items[random_() % items.size()].name;
    }
    Repeat repeat(const Chart& chart) {
        Repeat repeat{pick(0, 1) == 0 ? "" : word(),
                      column(chart),
                      column(chart),
                      row(chart),
                      row(chart),
                      {},
                      {}};
        if (repeat.right > repeat.left) std::swap(repeat.right, repeat.left);
        if (repeat.firstRow > repeat.lastRow) std::swap(repeat.firstRow, repeat.lastRow);
        if (pick(0, 2) == 0) repeat.jogs[repeat.firstRow] = {pick(-1, 1), pick(-1, 1), {}};
        return repeat;
    }
    Reach reach(const Chart& chart) {
        const int a = column(chart);
        const int b = column(chart);
        return {std::min(a, b), std::max(a, b)};
    }
    Size size(const Chart& chart) {
        Size size;
        size.name = word();
        size.reach = reach(chart);
        if (pick(0, 2) == 0) size.changes = {{row(chart), row(chart), reach(chart), {}}};
        for (const Repeat& repeat : chart.repeats) size.times[repeat.name] = pick(0, 9);
        if (pick(0, 2) == 0) {
            size.substitutions = {{row(chart), column(chart), Edge::End, "p", {}}};
        }
        return size;
    }

    std::mt19937 random_;
};

void expectWhole(const Chart& chart) {
    const auto problem = frameProblem(chart);
    ASSERT_FALSE(problem) << problem->message;
    for (int row = 0; row < chart.height(); ++row) {
        ASSERT_EQ(chart.row(row).width(), chart.width);
        ASSERT_FALSE(chart.row(row).traits().hasBroken);
    }
    for (const Repeat& repeat : chart.repeats) {
        // Its own box, unchanged, is refused when it overlaps another.
        ASSERT_TRUE(changeRepeat(chart, repeat.name, repeat));
    }
    for (const Size& size : chart.sizes) {
        for (const auto& [name, times] : size.times) ASSERT_NE(chart.findRepeat(name), nullptr);
        ASSERT_NE(chart.pointAt(size.reach.start), nullptr);
        ASSERT_NE(chart.pointAt(size.reach.end), nullptr);
    }
}

// Another object for every row and value, to see whether the first is touched.
Chart deepCopy(const Chart& chart) {
    Chart copy = chart;
    std::vector<RowPtr> rows;
    for (const RowPtr& row : chart.rows.toVector()) {
        rows.push_back(makeRow(row->cells(), *chart.stitches));
    }
    copy.rows = RowList(rows);
    return copy;
}

TEST(RandomEdits, LeaveTheChartWholeAndTheOldOneUntouched) {
    int done = 0;
    int refused = 0;
    for (unsigned seed = 1; seed <= 5; ++seed) {
        RandomEdits edits(seed);
        Chart chart = blankChart(14, 9);
        for (int step = 0; step < 1000; ++step) {
            SCOPED_TRACE("seed " + std::to_string(seed) + ", step " + std::to_string(step));
            const Chart before = deepCopy(chart);
            auto edited = edits.next(chart);
            ASSERT_EQ(chart, before);
            if (!edited) {
                ASSERT_EQ(edited.error().message.back(), '.');
                ++refused;
                continue;
            }
            ++done;
            ASSERT_NO_FATAL_FAILURE(expectWhole(*edited));
            if (*edited == chart) {
                edited->rows.forEachDifference(
                    chart.rows, [](std::size_t row) { ADD_FAILURE() << "row " << row; });
            }
            chart = *std::move(edited);
        }
    }
    // The generator must exercise both outcomes for this test to mean anything.
    EXPECT_GT(done, 2000);
    EXPECT_GT(refused, 500);
}

}  // namespace
}  // namespace lacewright
