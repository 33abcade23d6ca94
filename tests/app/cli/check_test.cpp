#include "core/check/check.h"

#include <nlohmann/json.hpp>

#include "core/base/disk.h"
#include "core/base/text.h"
#include "tests/app/cli/cli_run.h"

namespace lacewright::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;

class CheckVerb : public testing::Test {
 protected:
    std::string save(const Chart& chart, const std::string& name) const {
        const std::string path = folder_ / name;
        EXPECT_TRUE(saveChart(chart, path));
        return path;
    }
    test::TempDir folder_;
};

TEST_F(CheckVerb, ASoundChartIsProvenAndExitsWithNought) {
    const std::string file = save(soundChart(), "sound.lacewright");
    const Ran ran = run({"check", file});
    EXPECT_EQ(ran.code, kDone) << ran.out;
    EXPECT_THAT(ran.out, HasSubstr(file + ": Proven for every size and any number of repeats."));
    EXPECT_EQ(ran.err, "");
}

TEST_F(CheckVerb, AFaultIsToldByRowAndExitsWithOne) {
    const std::string file = save(faultyChart(), "faulty.lacewright");
    const Ran ran = run({"check", file});
    EXPECT_EQ(ran.code, kFound);
    EXPECT_THAT(ran.out, HasSubstr(file + ": fault: Row 2 takes "));
    EXPECT_THAT(ran.out, HasSubstr("Cannot be knitted as drawn: "));
}

TEST_F(CheckVerb, EveryFileIsCheckedAndTheWorstCodeWins) {
    const std::string sound = save(soundChart(), "sound.lacewright");
    const std::string faulty = save(faultyChart(), "faulty.lacewright");
    const Ran two = run({"check", faulty, sound});
    EXPECT_EQ(two.code, kFound);
    EXPECT_THAT(two.out, HasSubstr(sound + ": Proven"));
    const Ran three = run({"check", "missing.lacewright", faulty, sound});
    EXPECT_EQ(three.code, kMisuse);
    EXPECT_THAT(three.err, HasSubstr("missing.lacewright"));
    EXPECT_THAT(three.out, HasSubstr(sound + ": Proven"));
}

TEST_F(CheckVerb, AFileThatIsNoChartIsNamed) {
    const std::string path = folder_ / "broken.lacewright";
    ASSERT_TRUE(writeFile(path, "{\"format\": \"lacewright-chart\", "));
    expectMisuse(run({"check", path}), "broken.lacewright");
}

TEST_F(CheckVerb, JsonIsOneObjectALine) {
    const std::string sound = save(soundChart(), "sound.lacewright");
    const std::string faulty = save(faultyChart(), "faulty.lacewright");
    const Ran ran = run({"check", "--json", sound, faulty});
    EXPECT_EQ(ran.code, kFound);
    const auto lines = splitLines(ran.out);
    ASSERT_GE(lines.size(), 2U);
    const json first = json::parse(lines[0]);
    const json second = json::parse(lines[1]);
    EXPECT_EQ(first.at("file"), sound);
    EXPECT_EQ(first.at("knittable"), true);
    EXPECT_EQ(second.at("knittable"), false);
    EXPECT_TRUE(first.at("closes").is_boolean() || first.at("closes").is_null());
    EXPECT_EQ(second.at("closes"), nullptr);
    // Columns 1 and 6 once, four stitches in every box.
    const json form = {{"const", 2}, {"repeats", {{"A", 4}}}};
    ASSERT_EQ(first.at("rows").size(), 2U);
    EXPECT_EQ(first.at("rows")[0], (json{{"row", 1}, {"takes", form}, {"makes", form}}));
    const json more = {{"const", 2}, {"repeats", {{"A", 5}}}};
    EXPECT_EQ(second.at("rows")[1].at("takes"), more);
    bool fault = false;
    for (const json& finding : second.at("findings")) {
        for (const char* member :
             {"rule", "severity", "row", "columns", "sizes", "message", "mends"}) {
            EXPECT_TRUE(finding.contains(member)) << member;
        }
        fault = fault || finding.at("severity") == "fault";
    }
    EXPECT_TRUE(fault);
}

TEST_F(CheckVerb, ASizesRowsAreCountedInItsOwnTimes) {
    const std::string file = save(soundChart(), "sound.lacewright");
    const Ran ran = run({"check", "--json", "--size", "small", file});
    EXPECT_EQ(ran.code, kDone);
    const json rows = json::parse(ran.out).at("rows");
    EXPECT_EQ(rows[0].at("takes"), (json{{"const", 18}, {"repeats", json::object()}}));
    EXPECT_EQ(run({"check", "--size", "all", file}).code, kDone);
}

TEST_F(CheckVerb, AnUnknownSizeSuggestsTheNearest) {
    const std::string file = save(soundChart(), "sound.lacewright");
    expectMisuse(run({"check", "--size", "smal", file}), "did you mean \"small\"?");
}

}  // namespace
}  // namespace lacewright::cli
