// Written rows through the command line.

#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/base/disk.h"
#include "tests/app/cli/cli_run.h"
#include "tests/support/source_tree.h"

namespace lacewright::cli {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::Not;

class WrittenRowsVerb : public testing::Test {
 protected:
    std::string save(const std::string& text, const std::string& name = "rows.txt") const {
        const std::string path = folder_ / name;
        EXPECT_TRUE(writeFile(path, text));
        return path;
    }
    test::TempDir folder_;
};

std::string verdictWord(const std::string& text, const std::string& key) {
    const auto at = text.find(" " + key + "=");
    if (at == std::string::npos) return "-";
    std::istringstream rest(text.substr(at + key.size() + 2));
    std::string word;
    rest >> word;
    return word;
}

// The patterns of public-domain handbooks in tests/data/handbook, whose verdicts two checkers
// outside this project worked out; title, author and year stand in each file.
TEST_F(WrittenRowsVerb, GivesTheVerdictsOnPublishedPatternsAsJson) {
    int sturdy = 0;
    for (const auto& entry :
         std::filesystem::directory_iterator(test::inSourceTree("tests/data/handbook"))) {
        const std::string path = entry.path().string();
        const std::string text = readFile(path).value();
        const Ran ran = run({"check", "--json", path});
        ASSERT_EQ(ran.err, "") << path;
        const json report = json::parse(ran.out);
        EXPECT_EQ(ran.code, report.at("knittable") ? kDone : kFound) << path;
        if (verdictWord(text, "sturdy") != "yes") continue;
        ++sturdy;
        if (ran.code == kDone) {
            EXPECT_THAT(ran.out, Not(HasSubstr("out of place"))) << path;
        }
        EXPECT_EQ(report.at("knittable"), verdictWord(text, "knittable") == "yes") << path;
        const std::string closes = verdictWord(text, "closes");
        if (closes != "-") {
            EXPECT_EQ(report.at("closes"), closes == "yes") << path;
        }
        if (const std::string fault = verdictWord(text, "first_fault"); fault != "-") {
            const auto& findings = report.at("findings");
            const auto first = std::find_if(findings.begin(), findings.end(), [](const json& f) {
                return f.at("severity") == "fault";
            });
            ASSERT_NE(first, findings.end()) << path;
            EXPECT_EQ(first->at("row"), std::stoi(fault)) << path;
        }
    }
    EXPECT_GT(sturdy, 60);
}

TEST_F(WrittenRowsVerb, TellsAMisfitInPlainNumbers) {
    const std::string file = save(
        "Cast on: multiple of 6 plus 2\n\nRow 1 (RS): k1, *k4, k2tog; rep from * to last st, k1\n"
        "Row 2: k1, *k6; rep from * to last st, k1\n");
    const Ran ran = run({"check", file});
    EXPECT_EQ(ran.code, kFound);
    EXPECT_THAT(ran.out, HasSubstr("Cannot be knitted as written: "));
    EXPECT_THAT(ran.out,
                HasSubstr(": fault: Row 2 works a repeat of 6 stitches, but row 1 leaves 5n + 2"));
}

TEST_F(WrittenRowsVerb, TellsEveryReadingErrorWithItsPlace) {
    const std::string file = save("Row 1: k2, yi, k2tog\nRow 2: p4, kk2\n");
    const Ran ran = run({"check", file});
    EXPECT_EQ(ran.code, kMisuse);
    EXPECT_EQ(ran.out, "");
    EXPECT_THAT(ran.err, HasSubstr(file + ":1:12:"));
    EXPECT_THAT(ran.err, HasSubstr(file + ":2:12:"));
}

TEST_F(WrittenRowsVerb, WarnsOfACountThatIsStatedWrong) {
    const std::string file = save("Cast on: 10\nRow 1: k2, yo, k8 (12 sts)\n");
    const Ran ran = run({"check", file});
    EXPECT_EQ(ran.code, kDone);
    EXPECT_THAT(ran.out, HasSubstr("Row 1 says that 12 stitches remain, but it leaves 11."));
}

TEST_F(WrittenRowsVerb, NamesTheSizesThatFail) {
    const std::string file = save("Sizes: S (M, L)\nCast on: 20 (24, 28)\nRow 1: k20 (24, 27)\n");
    const json report = json::parse(run({"check", "--json", file}).out);
    EXPECT_EQ(report.at("knittable"), false);
    EXPECT_EQ(report.at("findings").at(0).at("sizes"), json::array({"L"}));
    EXPECT_EQ(run({"check", "--size", "M", file}).code, kDone);
    EXPECT_EQ(run({"check", "--size", "XXL", file}).code, kMisuse);
}

}  // namespace
}  // namespace lacewright::cli
