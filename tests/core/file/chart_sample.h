#pragma once

#include <gtest/gtest.h>

#include <string>
#include <string_view>

#include "core/base/disk.h"
#include "core/file/chart_text.h"
#include "tests/support/source_tree.h"

namespace lacewright {

// A hand-written chart in canonical form that uses every member of the format.
inline std::string everyMember() {
    const Result<std::string> text =
        readFile(test::inSourceTree("tests/core/file/data/every_member.lacewright"));
    EXPECT_TRUE(text) << (text ? "" : text.error().text());
    return text ? *text : std::string();
}

// A chart file with these members after format and version.
inline std::string fileWith(std::string_view members) {
    return R"({"format": "lacewright-chart", "version": 1, )" + std::string(members) + "}";
}

// The chart; fails the test, and gives an empty chart, when the text is refused.
inline Chart chartIn(std::string_view text) {
    Result<Chart> chart = readChart(text, "test");
    EXPECT_TRUE(chart) << (chart ? "" : chart.error().text());
    return chart ? *chart : blankChart(1, 1);
}

}  // namespace lacewright
