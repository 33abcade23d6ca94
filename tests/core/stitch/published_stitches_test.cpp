// Facts about stitches as published, held against the catalogue.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "core/stitch/catalogue.h"

namespace lacewright {
namespace {

const Stitch* stitchOf(const std::string& id) {
    const auto index = builtInStitches()->find(id);
    return index ? &(*builtInStitches())[*index] : nullptr;
}

struct ChartSymbol {
    int entry;              // number in the published list
    const char* id;         // in our catalogue
    const char* rightSide;  // what it means on a right-side row
    const char* wrongSide;  // on a wrong-side row; empty where the list gives none
    int takes;
    int makes;
};

// Craft Yarn Council, "Knit Chart Symbols" (craftyarncouncil.com/standards/knit-chart-symbols), 36
// entries, as read in a copy that others made; names are given in our abbreviations, s2kp2
// as s2kp. Takes and makes follow from the meaning.
constexpr ChartSymbol kChartSymbols[] = {
    {1, "k", "k", "p", 1, 1},
    {2, "p", "p", "k", 1, 1},
    {3, "yo", "yo", "yo", 0, 1},
    {4, "k2tog", "k2tog", "p2tog", 2, 1},
    {5, "p2tog", "p2tog", "k2tog", 2, 1},
    {6, "ssk", "ssk", "ssp", 2, 1},
    {7, "ssp", "ssp", "ssk", 2, 1},
    {8, "kfb", "kfb", "pfb", 1, 2},
    {9, "m1", "M1", "M1P", 0, 1},
    {10, "m1p", "M1P", "M1", 0, 1},
    {11, "m1r", "M1R", "", 0, 1},
    {12, "m1l", "M1L", "", 0, 1},
    {13, "rli", "RLI", "", 0, 1},
    {14, "lli", "LLI", "", 0, 1},
    {15, "slwyb", "sl 1 wyib", "sl 1 wyif", 1, 1},
    {16, "slwyf", "sl 1 wyif", "sl 1 wyib", 1, 1},
    {17, "k3tog", "k3tog", "p3tog", 3, 1},
    {18, "p3tog", "p3tog", "k3tog", 3, 1},
    {19, "sk2p", "sk2p", "sssp", 3, 1},
    {19, "sssk", "sssk", "sssp", 3, 1},
    {20, "sssp", "sssp", "sssk", 3, 1},
    {21, "s2kp", "s2kp", "sspp2", 3, 1},
    {22, "ktbl", "k tbl", "p tbl", 1, 1},
    {23, "ptbl", "p tbl", "k tbl", 1, 1},
    {24, "bobble", "MB", "", 1, 1},
    {25, "no-stitch", "", "", 0, 0},
    {26, "kyok", "(k1, yo, k1) in next st", "", 1, 3},
    {27, "inc4", "(k1, p1, k1, p1) in next st", "", 1, 4},
    {28, "inc5", "(k1, yo, k1, yo, k1) in next st", "", 1, 5},
    {29, "k4tog", "k4tog", "", 4, 1},
    {30, "sk3p", "sk3p", "", 4, 1},
    {31, "dec4", "sl2, k2tog, p2sso", "", 4, 1},
    {32, "dec5", "sl3, k2tog, p3sso", "", 5, 1},
    {33, "kw2", "k1 wrapping twice", "", 1, 1},
    {34, "bo", "BO 1", "BO 1", 1, 0},
    {35, "bo-st", "1 st left from BO", "1 st left from BO", 1, 1},
    {36, "co", "CO 1", "CO 1", 0, 1},
};

TEST(PublishedStitches, FollowTheChartSymbolList) {
    int lastEntry = 0;
    for (const ChartSymbol& symbol : kChartSymbols) {
        SCOPED_TRACE(symbol.id);
        EXPECT_LE(symbol.entry, lastEntry + 1) << "an entry of the list is left out";
        lastEntry = symbol.entry;
        const Stitch* stitch = stitchOf(symbol.id);
        ASSERT_NE(stitch, nullptr);
        EXPECT_EQ(stitch->takes, symbol.takes);
        EXPECT_EQ(stitch->makes, symbol.makes);
        EXPECT_EQ(stitch->rightSide.abbreviation, symbol.rightSide);
        if (*symbol.wrongSide != '\0') {
            EXPECT_EQ(stitch->wrongSide.abbreviation, symbol.wrongSide);
        }
    }
    EXPECT_EQ(lastEntry, 36);
}

struct NeedleStitch {
    int number;        // of class 1 in the standard; class 2 repeats the order
    const char* name;  // as the standard writes it
    const char* id;
};

// JIS L 0201:1995, class 1, as read in the standard's text. The standard names a decrease by the
// loop that lies on top: the right one on top makes the stitch lean left.
constexpr NeedleStitch kNeedleStitches[] = {
    {1010, "表目", "k"},           {1020, "裏目", "p"},
    {1030, "かけ目", "yo"},        {1040, "右上2目一度", "ssk"},
    {1040, "右上2目一度", "skp"},  {1050, "左上2目一度", "k2tog"},
    {1060, "中上3目一度", "s2kp"}, {1070, "右上3目一度", "sssk"},
    {1070, "右上3目一度", "sk2p"}, {1080, "左上3目一度", "k3tog"},
};

Lean leanNamed(const std::string& name) {
    if (name.find("右上") == 0) return Lean::Left;
    if (name.find("左上") == 0) return Lean::Right;
    if (name.find("中上") == 0) return Lean::Centred;
    return Lean::None;
}

TEST(PublishedStitches, LeanAsTheLoopOnTopInTheJapaneseStandard) {
    for (const NeedleStitch& named : kNeedleStitches) {
        SCOPED_TRACE(named.id);
        const Stitch* stitch = stitchOf(named.id);
        ASSERT_NE(stitch, nullptr);
        EXPECT_EQ(stitch->lean, leanNamed(named.name));
        const std::string name = named.name;
        const std::size_t digit = name.find_first_of("0123456789");
        if (digit != std::string::npos) {
            EXPECT_EQ(stitch->takes, name[digit] - '0');
            EXPECT_EQ(stitch->makes, 1);
            const std::string number = "no. " + std::to_string(named.number);
            EXPECT_NE(stitch->source.find(number), std::string::npos);
        }
    }
}

struct Abbreviated {
    const char* id;
    int takes;
    int makes;
    Lean lean;
};

// Craft Yarn Council, knitting abbreviations (its classes "single/double" and "left/right-leaning,
// centered"), read in two copies that others made; sk3p, twists and crosses from memory.
constexpr Abbreviated kAbbreviated[] = {
    {"k2tog", 2, 1, Lean::Right},   {"p2tog", 2, 1, Lean::Right},   {"ssk", 2, 1, Lean::Left},
    {"ssp", 2, 1, Lean::Left},      {"skp", 2, 1, Lean::Left},      {"ksp", 2, 1, Lean::Right},
    {"k2togtbl", 2, 1, Lean::Left}, {"p2togtbl", 2, 1, Lean::Left}, {"k3tog", 3, 1, Lean::Right},
    {"p3tog", 3, 1, Lean::Right},   {"sssk", 3, 1, Lean::Left},     {"sssp", 3, 1, Lean::Left},
    {"sk2p", 3, 1, Lean::Left},     {"k3togtbl", 3, 1, Lean::Left}, {"s2kp", 3, 1, Lean::Centred},
    {"sspp2", 3, 1, Lean::Centred}, {"dsd", 3, 1, Lean::Right},     {"sk3p", 4, 1, Lean::Left},
    {"yo2", 0, 2, Lean::None},      {"kp", 1, 2, Lean::None},       {"kpk", 1, 3, Lean::None},
    {"pfb", 1, 2, Lean::None},      {"gather3", 3, 3, Lean::None},  {"pass2", 2, 2, Lean::None},
    {"m1lp", 0, 1, Lean::Left},     {"m1rp", 0, 1, Lean::Right},    {"rt", 2, 2, Lean::Right},
    {"lt", 2, 2, Lean::Left},       {"c21r", 3, 3, Lean::Right},    {"c33l", 6, 6, Lean::Left},
};

TEST(PublishedStitches, CountAndLeanAsAbbreviated) {
    for (const Abbreviated& known : kAbbreviated) {
        SCOPED_TRACE(known.id);
        const Stitch* stitch = stitchOf(known.id);
        ASSERT_NE(stitch, nullptr);
        EXPECT_EQ(stitch->takes, known.takes);
        EXPECT_EQ(stitch->makes, known.makes);
        EXPECT_EQ(stitch->lean, known.lean);
    }
}

struct Part {
    int takes;
    int makes;
};
constexpr Part kSlip{1, 1};
constexpr Part kKnit{1, 1};
constexpr Part kOver{0, 1};

constexpr Part pass(int loops) {
    return {0, -loops};
}
constexpr Part together(int loops) {
    return {loops, 1};
}

struct Sum {
    const char* id;
    std::vector<Part> parts;
};

// Passing a stitch over takes nothing and unmakes one loop, so the parts of a stitch add up.
TEST(PublishedStitches, AreTheSumsOfTheirParts) {
    const std::vector<Sum> sums = {
        {"skp", {kSlip, kKnit, pass(1)}},
        {"sk2p", {kSlip, together(2), pass(1)}},
        {"sk3p", {kSlip, together(3), pass(1)}},
        {"s2kp", {kSlip, kSlip, kKnit, pass(2)}},
        {"dec4", {kSlip, kSlip, together(2), pass(2)}},
        {"dec5", {kSlip, kSlip, kSlip, together(2), pass(3)}},
        {"sl1k2psso", {kSlip, kKnit, kKnit, pass(1)}},
        {"pass2", {kSlip, kKnit, kOver, pass(1)}},
        {"pass3", {kSlip, kKnit, kOver, kKnit, pass(1)}},
    };
    for (const Sum& sum : sums) {
        SCOPED_TRACE(sum.id);
        Part total{0, 0};
        for (const Part& part : sum.parts) {
            total = {total.takes + part.takes, total.makes + part.makes};
        }
        const Stitch* stitch = stitchOf(sum.id);
        ASSERT_NE(stitch, nullptr);
        EXPECT_EQ(stitch->takes, total.takes);
        EXPECT_EQ(stitch->makes, total.makes);
    }
}

}  // namespace
}  // namespace lacewright
