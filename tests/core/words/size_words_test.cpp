#include "core/words/size_words.h"

#include <gmock/gmock.h>

#include "core/count/tally.h"
#include "core/file/chart_file.h"
#include "tests/support/random_charts.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

using test::chartOf;
using test::withRepeat;
using test::withSize;
using testing::ElementsAre;

// Follows an instruction over one row as a knitter would: the columns worked, one after the other.
class Follower {
 public:
    Follower(const Chart& chart, int row) : chart_(chart), row_(row) {}

    std::vector<int> follow(std::string text) {
        text = text.substr(0, text.find(": "));
        for (std::size_t from = 0; from < text.size();) {
            const std::size_t comma = std::min(text.find(", ", from), text.size());
            step(text.substr(from, comma - from));
            from = comma + 2;
        }
        return columns_;
    }

 private:
    static bool takeOff(std::string& text, const std::string& start) {
        if (!text.starts_with(start)) return false;
        text = text.substr(start.size());
        return true;
    }
    Box boxOf(const std::string& repeat) const { return chart_.findRepeat(repeat)->on(row_); }
    int columnOf(std::string place) const {
        if (takeOff(place, "the start of repeat ")) return boxOf(place).right;
        if (takeOff(place, "the end of repeat ")) return boxOf(place).left;
        if (takeOff(place, "column ")) return std::stoi(place);
        takeOff(place, "point ");
        const Point* point = chart_.findPoint(place);
        EXPECT_NE(point, nullptr) << place;
        return point != nullptr ? point->column : 0;
    }
    void workTo(int last) {
        EXPECT_LE(next_, last + 1);
        for (; next_ <= last; ++next_) columns_.push_back(next_);
    }
    void step(std::string words) {
        if (takeOff(words, "begin at ") || takeOff(words, "go on from ")) {
            next_ = columnOf(words);
        } else if (takeOff(words, "work up to ")) {
            workTo(columnOf(words) - 1);
        } else if (takeOff(words, "work to ") || takeOff(words, "end at ")) {
            workTo(columnOf(words));
        } else if (takeOff(words, "then work ")) {
            again(words);
        } else {
            EXPECT_TRUE(words.starts_with("leave out ") || words == "end there") << words;
        }
    }
    void again(std::string words) {
        if (words.ends_with(" more")) words += " times";  // "once more"
        const std::size_t more = words.find(" more times");
        if (more != std::string::npos) words = words.substr(0, more) + " times";
        int times = 1;
        if (words.ends_with(" times")) {
            words = words.substr(0, words.size() - 6);
            const std::size_t blank = words.rfind(' ');
            const std::string number = words.substr(blank + 1);
            times = number == "once" ? 1 : std::stoi(number);
            words = words.substr(0, blank);
        } else {
            ASSERT_TRUE(words.ends_with(" once")) << words;
            words = words.substr(0, words.size() - 5);
        }
        Box box;
        if (takeOff(words, "repeat ")) {
            box = boxOf(words);
        } else {
            const std::size_t to = words.find(" to ");
            box = {columnOf(words.substr(0, to)), columnOf(words.substr(to + 4))};
        }
        for (int i = 0; i < times; ++i) {
            next_ = box.right;
            workTo(box.left);
        }
    }

    const Chart& chart_;
    int row_;
    int next_ = 0;
    std::vector<int> columns_;
};

void expectFollowed(const Chart& chart, const Size& size) {
    std::vector<bool> told(static_cast<std::size_t>(chart.height()));
    std::vector<int> passes;
    for (const auto& times : timesOf(chart, size)) passes.push_back(times.value_or(1));
    for (const SizeInstruction& instruction : sizeInstructions(chart, size)) {
        for (const InstructedRows& rows : instruction.rows) {
            for (int row = rows.firstRow; row <= rows.lastRow; ++row) {
                EXPECT_FALSE(told[static_cast<std::size_t>(row)]);
                told[static_cast<std::size_t>(row)] = true;
                std::vector<int> columns;
                for (const WorkedCell& cell : unrolled(pathOn(chart, row, &size), passes))
                    columns.push_back(cell.column);
                EXPECT_EQ(Follower(chart, row).follow(instruction.text), columns)
                    << instruction.text << "\n"
                    << test::drawing(chart);
            }
        }
    }
    EXPECT_THAT(told, testing::Each(true));
}

TEST(SizeInstructions, FollowedStitchByStitchWorkWhatTheSizeWorks) {
    test::RandomCharts charts(1886);
    for (int i = 0; i < 300; ++i) {
        Chart chart = charts.next();
        const int points = charts.between(0, 8);
        for (int p = 0; p < points; ++p)
            chart.points.push_back({"P" + std::to_string(p), charts.between(1, chart.width), {}});
        Size size;
        size.name = "M";
        size.reach.start = charts.between(1, chart.width);
        size.reach.end = charts.between(size.reach.start, chart.width);
        for (const Repeat& repeat : chart.repeats) {
            if (!charts.oneIn(6)) size.times[repeat.name] = charts.between(0, 4);
        }
        if (charts.oneIn(2)) {
            const int first = charts.between(0, chart.height() - 1);
            const int start = charts.between(1, chart.width);
            size.changes.push_back({first,
                                    charts.between(first, chart.height() - 1),
                                    {start, charts.between(start, chart.width)},
                                    {}});
        }
        chart.sizes = {size};
        SCOPED_TRACE(i);
        expectFollowed(chart, chart.sizes[0]);
    }
}

TEST(SizeInstructions, SpeakOfPointsWhereThereAreSome) {
    Chart chart = chartOf({"k*12"});
    withRepeat(chart, "A", 4, 9);
    chart.points = {{"A", 1, {}}, {"B", 2, {}}, {"C", 4, {}}, {"E", 9, {}}, {"F", 11, {}}};
    withSize(chart, "M", 2, 11, 8);
    EXPECT_THAT(sizeInstructionSentences(chart, chart.sizes[0]),
                ElementsAre("Size M: begin at B, work to E, then work C to E 7 more times, end at "
                            "F: 52 sts."));
    chart.points.clear();
    EXPECT_THAT(sizeInstructionSentences(chart, chart.sizes[0]),
                ElementsAre("Size M: begin at column 2, work to the end of repeat A, then work "
                            "repeat A 7 more times, end at column 11: 52 sts."));
}

TEST(SizeInstructions, TellPartsOfARepeatAndRowsThatDiffer) {
    Chart chart = chartOf({"k*12", "k*12", "k*12"});
    withRepeat(chart, "A", 4, 9);
    Size& size = withSize(chart, "S", 6, 5, 2);
    size.reach = {6, 12};
    size.changes = {{1, 1, {4, 9}, {}}};
    EXPECT_THAT(
        sizeInstructionSentences(chart, size),
        ElementsAre("Size S: on rows 1 and 3 begin at column 6, work to the end of repeat A, then "
                    "work repeat A 2 times, end at column 12: 19 sts.",
                    "On row 2 begin at column 4, work to the end of repeat A, then work repeat A "
                    "once more, end at column 9: 12 sts."));
}

TEST(SizeInstructions, OfTheMillpondTeeAreOneLineEach) {
    const auto chart = loadChart(test::inSourceTree("samples/millpond-tee.lacewright"));
    ASSERT_TRUE(chart);
    for (const Size& size : chart->sizes) {
        expectFollowed(*chart, size);
        EXPECT_EQ(sizeInstructionSentences(*chart, size).size(), 1U) << size.name;
    }
}

}  // namespace
}  // namespace lacewright
