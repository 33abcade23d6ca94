#include "core/words/vocabulary.h"

#include <gtest/gtest.h>

#include "core/stitch/catalogue.h"
#include "core/words/edit_distance.h"

namespace lacewright {
namespace {

// A term and the stitch it stands for must count alike, or a chart made from rows would differ.
TEST(Vocabulary, TermsCountLikeTheStitchesTheyStandFor) {
    const StitchCatalogue& stitches = *builtInStitches();
    int checked = 0;
    for (const Term& term : builtInTerms()) {
        for (const std::string& id : {term.rightId, term.wrongId}) {
            const bool numbered = id.find('#') != std::string::npos;
            for (const int number : numbered ? std::vector<int>{2, 3} : std::vector<int>{0}) {
                std::string full = id;
                if (numbered) full.replace(full.find('#'), 1, std::to_string(number));
                if (full.empty()) continue;
                const auto index = stitches.find(full);
                EXPECT_TRUE(index) << term.spellings.front() << " stands for " << full;
                if (!index) continue;
                EXPECT_EQ(stitches[*index].takes, term.takes.with(number)) << full;
                EXPECT_EQ(stitches[*index].makes, term.makes.with(number)) << full;
                ++checked;
            }
        }
    }
    EXPECT_GT(checked, 100);
}

TEST(Vocabulary, TheLongestSpellingWins) {
    const Vocabulary words;
    const auto match = words.match(tokenize("k2tog tbl"), 0);
    ASSERT_TRUE(match);
    EXPECT_EQ(match->tokens, 4u);
    EXPECT_EQ(match->term->takes.with(match->number), 2);
}

TEST(Vocabulary, APatternsOwnStitchWins) {
    Vocabulary words;
    words.define("C2", 2, 2);
    const auto match = words.match(tokenize("c2, k1"), 0);
    ASSERT_TRUE(match);
    EXPECT_EQ(match->term->meaning, "the pattern's own stitch");
}

TEST(Vocabulary, NamesTheNearestTerm) {
    const Vocabulary words;
    EXPECT_EQ(words.nearest("sskk"), "ssk");
    EXPECT_EQ(words.nearest("purll"), "purl");
    EXPECT_FALSE(words.nearest("xylophone"));
}

TEST(EditDistance, CountsSlips) {
    EXPECT_EQ(editDistance("k2tog", "k2tog", 9), 0u);
    EXPECT_EQ(editDistance("k2tgo", "k2tog", 9), 1u);
    EXPECT_EQ(editDistance("k2tg", "k2tog", 9), 1u);
    EXPECT_EQ(editDistance("purl", "knit", 9), 4u);
    EXPECT_EQ(editDistance("purl", "knit", 3), 3u);
}

}  // namespace
}  // namespace lacewright
