#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <sstream>
#include <string>
#include <vector>

#include "app/cli/cli.h"
#include "core/file/chart_file.h"
#include "tests/support/drawn_rows.h"
#include "tests/support/temp_dir.h"

// The command line run inside the test.
namespace lacewright::cli {

struct Ran {
    int code = 0;
    std::string out;
    std::string err;
};

inline Ran run(const std::vector<std::string>& args, const SheetPainters& painters = {}) {
    std::ostringstream out;
    std::ostringstream err;
    const int code = runCli(args, out, err, painters);
    return {code, out.str(), err.str()};
}

// A misuse says one sentence on the error stream and nothing else.
inline void expectMisuse(const Ran& ran, const std::string& part) {
    EXPECT_EQ(ran.code, kMisuse);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, testing::StartsWith("lacewright: "));
    EXPECT_THAT(ran.err, testing::HasSubstr(part));
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
}

// Diamonds over any number of repeats and two sizes: fits on every row.
inline Chart soundChart() {
    Chart chart = test::chartOf({"k yo ssk k2tog yo k", "k k k k k k"});
    chart.name = "Lanterns";
    Repeat repeat;
    repeat.name = "A";
    repeat.right = 2;
    repeat.left = 5;
    repeat.lastRow = 1;
    chart.repeats = {repeat};
    Size small;
    small.name = "small";
    small.reach = {1, 6};
    small.times["A"] = 4;
    Size large = small;
    large.name = "large";
    large.times["A"] = 6;
    chart.sizes = {small, large};
    chart.points = {{"A", 1, {}}, {"B", 6, {}}};
    return chart;
}

// The second row takes one stitch more in every repeat than the first one leaves.
inline Chart faultyChart() {
    Chart chart = soundChart();
    chart.rows.replace(1, makeRow(test::cellsOf("k yo ssk k2tog k k"), *chart.stitches));
    return chart;
}

}  // namespace lacewright::cli
