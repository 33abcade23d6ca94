#include "core/file/chart_file.h"

#include <gtest/gtest.h>

#include <filesystem>

#include "tests/core/file/chart_sample.h"
#include "tests/support/source_tree.h"
#include "tests/support/temp_dir.h"

namespace lacewright {
namespace {

namespace fs = std::filesystem;

std::size_t filesIn(const std::string& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

TEST(ChartFile, SavesAndLoads) {
    const test::TempDir folder;
    const Chart chart = chartIn(everyMember());
    ASSERT_TRUE(saveChart(chart, folder / "a.lacewright"));
    const Result<Chart> back = loadChart(folder / "a.lacewright");
    ASSERT_TRUE(back);
    EXPECT_EQ(*back, chart);
    EXPECT_EQ(readFile(folder / "a.lacewright").value(), everyMember());
}

TEST(ChartFile, SavingReplacesTheFileAndLeavesNoOther) {
    const test::TempDir folder;
    ASSERT_TRUE(saveChart(blankChart(2, 2), folder / "a.lacewright"));
    ASSERT_TRUE(saveChart(blankChart(3, 3), folder / "a.lacewright"));
    EXPECT_EQ(loadChart(folder / "a.lacewright").value(), blankChart(3, 3));
    EXPECT_EQ(filesIn(folder.path()), 1U);
}

TEST(ChartFile, AFailedSaveLeavesTheTargetAndNoOtherFile) {
    const test::TempDir folder;
    fs::create_directories(folder / "taken/within");
    const Outcome onFolder = saveChart(blankChart(1, 1), folder / "taken");
    ASSERT_FALSE(onFolder);
    EXPECT_EQ(onFolder.error().code, ErrorCode::Unwritable);
    EXPECT_EQ(onFolder.error().place, folder / "taken");
    EXPECT_TRUE(fs::is_directory(folder / "taken/within"));
    EXPECT_EQ(filesIn(folder.path()), 1U);
}

TEST(ChartFile, SavingIntoAMissingFolderFails) {
    const test::TempDir folder;
    const Outcome saved = saveChart(blankChart(1, 1), folder / "missing/a.lacewright");
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::Unwritable);
    EXPECT_EQ(filesIn(folder.path()), 0U);
}

TEST(ChartFile, LoadingSaysWhichFileAndWhere) {
    const test::TempDir folder;
    EXPECT_EQ(loadChart(folder / "none.lacewright").error().code, ErrorCode::NotFound);
    EXPECT_EQ(loadChart(folder.path()).error().code, ErrorCode::Unreadable);
    ASSERT_TRUE(writeFile(folder / "bad.lacewright", "{\n  \"format\": 1\n}\n"));
    EXPECT_EQ(loadChart(folder / "bad.lacewright").error().text(),
              folder / "bad.lacewright:2: /format: Found 1; expected \"lacewright-chart\".");
}

TEST(ChartFile, EverySampleIsInCanonicalForm) {
    int samples = 0;
    for (const auto& entry : fs::directory_iterator(test::inSourceTree("samples"))) {
        if (entry.path().extension() != ".lacewright") continue;
        ++samples;
        const Result<Chart> chart = loadChart(entry.path());
        ASSERT_TRUE(chart) << chart.error().text();
        EXPECT_EQ(writeChart(*chart), readFile(entry.path()).value()) << entry.path();
    }
    EXPECT_GT(samples, 0);
}

}  // namespace
}  // namespace lacewright
