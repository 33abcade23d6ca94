// Charts with nine sizes cut at awkward columns through the whole command line, against a knitter
// who works each size cell by cell.

#include "tests/app/cli/cli_run.h"

#include <nlohmann/json.hpp>
#include <set>

#include "core/base/disk.h"
#include "core/check/advice.h"
#include "core/check/mend.h"
#include "tests/support/findings.h"
#include "tests/support/nine_sizes.h"
#include "tests/support/size_knitter.h"

namespace lacewright::cli {
namespace {

using nlohmann::json;
using test::HardChart;
using test::KnittedRow;

class NineSizes : public testing::Test {
 protected:
    void save(const Chart& chart) { ASSERT_TRUE(saveChart(chart, file_)); }
    json asked(std::vector<std::string> args) {
        args.push_back(file_);
        ran_ = run(args);
        return ran_.out.empty() ? json() : json::parse(ran_.out);
    }
    test::TempDir folder_;
    std::string file_ = folder_ / "chart.lacewright";
    Ran ran_;
};

// Numbers of the rows at which a knitter of this size is stopped.
std::set<int> stops(const Chart& chart, const Size& size) {
    const std::vector<KnittedRow> rows = test::knitSize(chart, size);
    std::set<int> numbers;
    for (std::size_t r = 0; r < rows.size(); ++r) {
        const bool off = r == 0 ? size.stitches && *size.stitches != rows[0].takes
                                : rows[r].takes != rows[r - 1].makes;
        if (off) numbers.insert(chart.rowNumber(static_cast<int>(r)));
    }
    return numbers;
}

bool isCut(const Chart& chart, const Size& size) {
    const auto rows = test::knitSize(chart, size);
    return std::any_of(rows.begin(), rows.end(), [](const KnittedRow& row) { return row.cut; });
}

// Rows of faults about one size, and about all of them.
void collectFaults(const json& findings, const std::string& size, std::set<int>& own,
                   std::set<int>& general) {
    for (const json& finding : findings) {
        if (finding["severity"] == "fault") {
            const json& sizes = finding["sizes"];
            if (sizes.empty()) general.insert(finding["row"].get<int>());
            if (std::find(sizes.begin(), sizes.end(), size) != sizes.end())
                own.insert(finding["row"].get<int>());
        }
        if (finding.contains("folded")) collectFaults(finding["folded"], size, own, general);
    }
}

TEST_F(NineSizes, AreJudgedAsTheyKnit) {
    int fit = 0;
    int stopped = 0;
    int cut = 0;
    for (const HardChart& hard : test::hardNineSizes()) {
        SCOPED_TRACE(hard.name + "\n" + test::drawing(hard.chart));
        save(hard.chart);
        const json report = asked({"check", "--json"});
        EXPECT_EQ(ran_.code == kDone, report["knittable"].get<bool>());
        for (const Size& size : hard.chart.sizes) {
            SCOPED_TRACE(size.name);
            std::set<int> own;
            std::set<int> general;
            collectFaults(report["findings"], size.name, own, general);
            const bool broken = isCut(hard.chart, size);
            const std::set<int> expected = stops(hard.chart, size);
            ++(broken ? cut : expected.empty() ? fit : stopped);
            if (broken) {
                EXPECT_FALSE(own.empty() && general.empty());
            } else if (general.empty()) {
                EXPECT_EQ(own, expected);
            } else {
                own.insert(general.begin(), general.end());
                EXPECT_TRUE(
                    std::includes(own.begin(), own.end(), expected.begin(), expected.end()));
            }
        }
    }
    // Every kind is there in numbers, so the agreement says something.
    EXPECT_GT(fit, 50);
    EXPECT_GT(stopped, 80);
    EXPECT_GT(cut, 15);
}

TEST_F(NineSizes, AreCountedAndTheirPartedPairsNamed) {
    int pairs = 0;
    for (const HardChart& hard : test::hardNineSizes()) {
        SCOPED_TRACE(hard.name + "\n" + test::drawing(hard.chart));
        save(hard.chart);
        const json told = asked({"sizes", "--json"});
        EXPECT_EQ(ran_.code, kDone);
        for (std::size_t i = 0; i < hard.chart.sizes.size(); ++i) {
            const Size& size = hard.chart.sizes[i];
            SCOPED_TRACE(size.name);
            const json& one = told["sizes"][i];
            const auto rows = test::knitSize(hard.chart, size);
            if (!rows.front().cut) {
                EXPECT_EQ(one["firstRow"], rows.front().takes);
            }
            if (!rows.back().cut) {
                EXPECT_EQ(one["lastRow"], rows.back().makes);
            }
            if (!size.substitutions.empty()) continue;
            std::size_t parted = 0;
            for (int row = 0; row < hard.chart.height(); ++row) {
                const Reach reach = test::reachOn(size, row);
                if (reach.start > 1)
                    parted += static_cast<std::size_t>(
                        test::pairsCrossing(hard.chart, row, reach.start - 1));
                if (reach.end < hard.chart.width)
                    parted +=
                        static_cast<std::size_t>(test::pairsCrossing(hard.chart, row, reach.end));
            }
            EXPECT_EQ(one["parted"].size(), parted);
            pairs += static_cast<int>(parted);
        }
    }
    EXPECT_GT(pairs, 200);
}

TEST_F(NineSizes, AreCheckedWrittenAndDrawnOneByOne) {
    int written = 0;
    std::size_t turn = 0;
    for (const HardChart& hard : test::hardNineSizes()) {
        SCOPED_TRACE(hard.name + "\n" + test::drawing(hard.chart));
        save(hard.chart);
        const Ran all = run({"write", "--size", "all", file_});
        EXPECT_TRUE(all.code == kDone || all.err.find("no stitches to write") != std::string::npos)
            << all.err;
        const Size& size = hard.chart.sizes[turn++ % hard.chart.sizes.size()];
        SCOPED_TRACE(size.name);
        const json report = asked({"check", "--json", "--size", size.name});
        const auto rows = test::knitSize(hard.chart, size);
        std::set<int> own;
        std::set<int> general;
        collectFaults(report["findings"], size.name, own, general);
        const bool broken = isCut(hard.chart, size);
        const bool fits = !broken && stops(hard.chart, size).empty();
        EXPECT_EQ(report["knittable"].get<bool>(), fits && general.empty());
        EXPECT_EQ(ran_.code == kDone, report["knittable"].get<bool>());
        bool empty = false;
        for (std::size_t r = 0; r < rows.size() && !broken; ++r) {
            EXPECT_EQ(report["rows"][r]["takes"]["const"], rows[r].takes) << r;
            EXPECT_EQ(report["rows"][r]["makes"]["const"], rows[r].makes) << r;
            empty = empty || rows[r].takes + rows[r].makes == 0;
        }
        if (fits && !empty) {
            const Ran text = run({"write", "--size", size.name, file_});
            EXPECT_EQ(text.code, kDone) << text.err;
            EXPECT_THAT(text.out,
                        testing::HasSubstr("Cast on: " + std::to_string(rows[0].takes) + "\n"));
            ++written;
        }
        const std::string picture = folder_ / "chart.svg";
        EXPECT_EQ(run({"draw", file_, "--size", size.name, "-o", picture}).code, kDone);
        const bool outlined =
            readFile(picture)->find("class=\"swap-outline\"") != std::string::npos;
        EXPECT_EQ(outlined, !size.substitutions.empty());
    }
    EXPECT_GT(written, 5);
}

std::ptrdiff_t edgesAtFault(const Report& report, int row, const std::string& size) {
    return std::count_if(report.findings.begin(), report.findings.end(),
                         [&](const Finding& finding) {
                             return finding.rule == "size-edge" && finding.row == row &&
                                    std::find(finding.sizes.begin(), finding.sizes.end(), size) !=
                                        finding.sizes.end();
                         });
}

// What is offered takes the fault away, as the knitter finds, and is one edit.
TEST_F(NineSizes, MendsOfTheirEdgesHold) {
    int substitutions = 0;
    int moves = 0;
    int without = 0;
    for (const HardChart& hard : test::hardNineSizes()) {
        SCOPED_TRACE(hard.name + "\n" + test::drawing(hard.chart));
        Report report = check(hard.chart);
        advise(hard.chart, report);
        for (const Finding& finding : report.findings) {
            if (finding.rule != "size-edge") continue;
            SCOPED_TRACE(finding.message);
            without += finding.mends.empty() ? 1 : 0;
            for (const Mend& mend : finding.mends) {
                const bool moved = std::holds_alternative<MoveEdge>(mend.steps.front());
                ++(moved ? moves : substitutions);
                const Result<Chart> mended = applyMend(hard.chart, mend);
                ASSERT_TRUE(mended) << mend.label;
                for (const std::string& name : finding.sizes) {
                    const auto before = stops(hard.chart, *hard.chart.findSize(name));
                    const auto after = stops(*mended, *mended->findSize(name));
                    // Where both edges are at fault each has a mend of its own.
                    if (finding.severity == Severity::Fault &&
                        edgesAtFault(report, finding.row, name) < 2) {
                        EXPECT_FALSE(after.contains(finding.row)) << mend.label;
                    }
                    EXPECT_TRUE(
                        std::includes(before.begin(), before.end(), after.begin(), after.end()))
                        << mend.label;
                }
            }
        }
    }
    EXPECT_GT(substitutions, 40);
    EXPECT_GT(moves, 40);
    EXPECT_LT(without, substitutions);
}

}  // namespace
}  // namespace lacewright::cli
