// The writer and the comparison held against rows that were printed: charts of handbook patterns
// and the shorthand those handbooks' rows were taken down in (tests/data/handbook, the source of
// each is named in its file).
#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "core/base/disk.h"
#include "core/file/chart_file.h"
#include "core/words/compare.h"
#include "core/words/reader.h"
#include "core/words/writer.h"
#include "tests/support/source_tree.h"

namespace lacewright {
namespace {

struct Published {
    const char* chart;
    const char* rows;
};

constexpr Published kPublished[] = {
    {"beeton-1870-peacocks-tail", "beeton-01-297-peacocks-tail"},
    {"corbould-1874-rain-pattern", "corbould-02-rain-pattern"},
    {"dillmont-1886-lace-fig-397", "dillmont-18-fig397-lace"},
    {"lambert-1843-shetland-shawl", "lambert1-51-shetland-shawl"},
};

Chart chartNamed(const std::string& name) {
    auto chart = loadChart(test::inSourceTree("samples/") + name + ".lacewright");
    EXPECT_TRUE(chart) << name;
    return chart ? *chart : Chart();
}

std::string rowsNamed(const std::string& name) {
    auto text = readFile(test::inSourceTree("tests/data/handbook/") + name + ".txt");
    EXPECT_TRUE(text) << name;
    return text ? *text : std::string();
}

// By row number, what stands after the heading of every row.
std::map<int, std::string> rowTexts(const std::string& text) {
    std::map<int, std::string> rows;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        const std::string line = text.substr(at, end - at);
        const std::size_t colon = line.find("): ");
        if (line.starts_with("Row ") && colon != std::string::npos)
            rows[std::stoi(line.substr(4))] = line.substr(colon + 3);
        at = end + 1;
    }
    return rows;
}

TEST(PublishedRows, AreTheSameKnittingAsTheirCharts) {
    for (const Published& published : kPublished) {
        const ReadRows read = readWritten(rowsNamed(published.rows));
        ASSERT_FALSE(read.hasErrors());
        const Result<Comparison> comparison =
            compareRows(chartNamed(published.chart), read.pattern);
        ASSERT_TRUE(comparison);
        EXPECT_TRUE(comparison->same())
            << published.rows << " row " << comparison->differences.front().number;
    }
}

// The same row needs no more words than in print. Words are told apart by commas; what is said of
// how far the star goes counts nothing on either side.
TEST(PublishedRows, AreWrittenNoLonger) {
    const auto words = [](const std::string& row) {
        return std::count(row.begin(), row.end(), ',') + std::count(row.begin(), row.end(), '[');
    };
    int compared = 0;
    for (const Published& published : kPublished) {
        const auto printed = rowTexts(rowsNamed(published.rows));
        const WrittenChart written = writeRows(chartNamed(published.chart)).value();
        for (const WrittenLine& line : written.lines) {
            const int number = std::stoi(line.label.substr(line.label.find(' ')));
            const auto print = printed.find(number);
            if (print == printed.end()) continue;
            EXPECT_LE(words(textOf(line.pieces)), words(print->second))
                << textOf(line.pieces) << "\n"
                << print->second;
            ++compared;
        }
    }
    EXPECT_GE(compared, 15);
}

// Craft Yarn Council, knitting abbreviations (craftyarncouncil.com), the entries that lace needs;
// written down from memory, to be held against the list when it can be opened.
TEST(PublishedRows, UseTheAbbreviationsOfThePublishedList) {
    const std::map<std::string, std::string> listed = {
        {"k", "k"},         {"p", "p"},         {"yo", "yo"},       {"k2tog", "k2tog"},
        {"p2tog", "p2tog"}, {"ssk", "ssk"},     {"ssp", "ssp"},     {"skp", "skp"},
        {"sk2p", "sk2p"},   {"k3tog", "k3tog"}, {"p3tog", "p3tog"}, {"sssk", "sssk"},
        {"kfb", "kfb"},     {"pfb", "pfb"},     {"m1", "M1"},       {"m1l", "M1L"},
        {"m1r", "M1R"},     {"bo", "BO 1"},     {"co", "CO 1"},     {"bobble", "MB"},
        {"rt", "RT"},       {"lt", "LT"},       {"ktbl", "k1 tbl"}, {"slwyib", "sl 1 wyib"}};
    Chart chart;
    StitchWords words(chart, Terms::Us);
    for (const auto& [id, abbreviation] : listed) {
        const auto stitch = builtInStitches()->find(id == "slwyib" ? "slwyb" : id);
        ASSERT_TRUE(stitch) << id;
        const WorkWord& word = words[words.of(*stitch, Side::Right)];
        EXPECT_EQ(word.verb.empty() ? word.one : word.verb, abbreviation);
    }
}

}  // namespace
}  // namespace lacewright
