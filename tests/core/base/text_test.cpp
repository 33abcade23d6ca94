#include "core/base/text.h"

#include <gtest/gtest.h>

namespace lacewright {
namespace {

using Words = std::vector<std::string_view>;

TEST(Trim, TakesBlanksFromBothEndsOnly) {
    EXPECT_EQ(trim(" \t k2tog yo\r\n"), "k2tog yo");
    EXPECT_EQ(trim("yo"), "yo");
    EXPECT_EQ(trim(" \n "), "");
    EXPECT_EQ(trim(""), "");
}

TEST(SplitWords, SplitsAtRunsOfBlanks) {
    EXPECT_EQ(splitWords("  k  yo\tk2tog\n"), (Words{"k", "yo", "k2tog"}));
    EXPECT_EQ(splitWords("k"), (Words{"k"}));
    EXPECT_TRUE(splitWords(" \t").empty());
}

TEST(SplitLines, KnowsBothLineEndings) {
    EXPECT_EQ(splitLines("a\r\nb\n\nc"), (Words{"a", "b", "", "c"}));
    EXPECT_EQ(splitLines("a\n"), (Words{"a"}));
    EXPECT_EQ(splitLines("a\rb"), (Words{"a\rb"}));
    EXPECT_TRUE(splitLines("").empty());
}

TEST(Join, PutsTheTextBetween) {
    EXPECT_EQ(join({"a", "b", "c"}, ", "), "a, b, c");
    EXPECT_EQ(join({"a"}, ", "), "a");
    EXPECT_EQ(join({}, ", "), "");
}

TEST(Listing, ReadsAsASentence) {
    EXPECT_EQ(listing({}), "");
    EXPECT_EQ(listing({"a"}), "a");
    EXPECT_EQ(listing({"a", "b"}), "a and b");
    EXPECT_EQ(listing({"a", "b", "c"}), "a, b and c");
}

TEST(LowerAscii, LeavesOtherLettersAlone) {
    EXPECT_EQ(lowerAscii("K2TOG \xC3\x84Z"), "k2tog \xC3\x84z");
}

TEST(Counted, ChoosesTheEnding) {
    EXPECT_EQ(counted(1, "stitch", "stitches"), "1 stitch");
    EXPECT_EQ(counted(0, "stitch", "stitches"), "0 stitches");
    EXPECT_EQ(counted(-1, "row", "rows"), "-1 rows");
    EXPECT_EQ(counted(5'000'000'000, "row", "rows"), "5000000000 rows");
}

TEST(EscapeXml, ReplacesMarkupAndDropsControlCharacters) {
    EXPECT_EQ(escapeXml("<a href=\"x\">T&'s</a>"),
              "&lt;a href=&quot;x&quot;&gt;T&amp;&#39;s&lt;/a&gt;");
    EXPECT_EQ(escapeXml(std::string("a\x01\x1F\tb\nc\0d", 9)), "a\tb\ncd");
    EXPECT_EQ(escapeXml("\xC3\xA4"), "\xC3\xA4");
}

// The borders between well-formed and ill-formed sequences, as listed in The Unicode Standard,
// table 3-7 (well-formed UTF-8 byte sequences).
TEST(IsUtf8, AcceptsTheFirstAndLastCharacterOfEveryLength) {
    for (const std::string_view text :
         {"", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
          "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF", "k\xC3\xA4yo"}) {
        EXPECT_TRUE(isUtf8(text)) << text;
    }
}

TEST(IsUtf8, RefusesOverlongSurrogateCutOffAndOutOfRange) {
    for (const std::string_view text :
         {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xC3", "\xC3k", "\xE0\x9F\xBF", "\xED\xA0\x80",
          "\xED\xBF\xBF", "\xE2\x82", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80",
          "\xF8\x88\x80\x80\x80", "\xFF"}) {
        EXPECT_FALSE(isUtf8(text));
    }
}

}  // namespace
}  // namespace lacewright
