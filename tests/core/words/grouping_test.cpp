#include "core/words/grouping.h"

#include <gtest/gtest.h>

#include <chrono>
#include <map>
#include <random>
#include <string>

namespace lacewright {
namespace {

// Letters as words; k and p take numbers.
struct Alphabet {
    WordCosts costs{std::vector<int>(26, 1), std::vector<bool>(26, false)};
    Alphabet() {
        for (const char c : {'k', 'p'}) costs.countable[static_cast<std::size_t>(c - 'a')] = true;
    }
};

std::vector<WordIndex> runOf(const std::string& letters) {
    std::vector<WordIndex> run;
    for (const char c : letters) run.push_back(c - 'a');
    return run;
}

std::string spelled(const Phrases& phrases) {
    std::string text;
    for (const Phrase& phrase : phrases) {
        if (!text.empty()) text += ' ';
        text += phrase.isBracket() ? "[" + spelled(phrase.body) + "]"
                                   : std::string(1, static_cast<char>('a' + phrase.word));
        if (phrase.times[0] > 1 || phrase.isBracket()) text += std::to_string(phrase.times[0]);
    }
    return text;
}

std::string shortest(const std::string& letters) {
    static const Alphabet alphabet;
    return spelled(shortestPhrases(runOf(letters), alphabet.costs));
}

TEST(ShortestPhrases, CountsPlainStitches) {
    EXPECT_EQ(shortest("kkkoppt"), "k3 o p2 t");
    EXPECT_EQ(shortest(""), "");
}

// Worth a bracket only where it saves words: "yo, k2tog" twice is as short written out.
TEST(ShortestPhrases, BracketsWhatRepeats) {
    EXPECT_EQ(shortest("otot"), "o t o t");
    EXPECT_EQ(shortest("ototot"), "[o t]3");
    EXPECT_EQ(shortest("kkotototkk"), "k2 [o t]3 k2");
    EXPECT_EQ(shortest("oototoototoototk"), "[o o t o t]3 k");
}

// Three ways to cut the repeat; only one leaves nothing over at the end.
TEST(ShortestPhrases, CutsTheRepeatWhereLeastIsLeftOver) {
    EXPECT_EQ(shortest("kkkotkotkotkotk"), "k3 [o t k]4");
    EXPECT_EQ(shortest("kkkotkotkotkot"), "k2 [k o t]4");
}

TEST(ShortestPhrases, NestsWhereThatSavesMore) {
    EXPECT_EQ(shortest("otototototsk"
                       "otototototsk"
                       "otototototsk"),
              "[[o t]5 s k]3");
}

// Everything the recursion could choose from, tried one by one.
class Exhaustive {
 public:
    explicit Exhaustive(const WordCosts& costs) : costs_(costs) {}
    int cost(const std::string& run, int depth) {
        if (run.empty()) return 0;
        int& known = known_[depth][run];
        if (known > 0) return known;
        int best = 1 << 20;
        for (std::size_t end = 1; end <= run.size(); ++end) {
            const std::string head = run.substr(0, end);
            int one = 1 << 20;
            const bool same = head.find_first_not_of(head[0]) == std::string::npos;
            if (same && (end == 1 || costs_.countable[static_cast<std::size_t>(head[0] - 'a')]))
                one = 1;
            for (std::size_t p = 1; depth > 0 && p * 2 <= end; ++p) {
                if (end % p != 0) continue;
                std::string again;
                while (again.size() < end) again += head.substr(0, p);
                if (again != head) continue;
                const int flat = cost(head.substr(0, p), 0) + kBracketCost;
                one = std::min(one, flat);
                if (depth > 1)
                    one = std::min(one, cost(head.substr(0, p), 1) + kBracketCost + kNestedCost);
            }
            best = std::min(best, one + cost(run.substr(end), depth));
        }
        return known = best;
    }

 private:
    const WordCosts& costs_;
    std::map<std::string, int> known_[3];
};

TEST(ShortestPhrases, AreTheShortestOfAll) {
    const Alphabet alphabet;
    Exhaustive all(alphabet.costs);
    std::mt19937 random(20260101);
    for (int i = 0; i < 400; ++i) {
        std::string letters;
        const int length = std::uniform_int_distribution<int>(1, 16)(random);
        while (static_cast<int>(letters.size()) < length)
            letters += "kot"[std::uniform_int_distribution<int>(0, 2)(random)];
        if (i % 2 == 0) letters += letters;
        const Phrases phrases = shortestPhrases(runOf(letters), alphabet.costs);
        ASSERT_EQ(spelledOut(phrases), runOf(letters)) << letters;
        EXPECT_EQ(costOf(phrases, alphabet.costs), all.cost(letters, 2))
            << letters << ": " << spelled(phrases);
        EXPECT_LE(costOf(phrases, alphabet.costs),
                  costOf(countedRuns(runOf(letters), alphabet.costs), alphabet.costs));
    }
}

TEST(ShortestPhrases, SayWhichStitchesTheyStandFor) {
    const Alphabet alphabet;
    const Phrases phrases = shortestPhrases(runOf("kkotototp"), alphabet.costs);
    ASSERT_EQ(phrases.size(), 3u);
    EXPECT_EQ(phrases[1].first, 2u);
    EXPECT_EQ(phrases[1].length, 6u);
    EXPECT_EQ(phrases[1].body[1].first, 3u);
    EXPECT_EQ(phrases[2].first, 8u);
}

TEST(ShortestPhrases, LongRowsStayWhole) {
    const Alphabet alphabet;
    std::string letters;
    for (int i = 0; i < 1000; ++i) letters += "kkkkkot"[i % 7];
    EXPECT_EQ(spelledOut(shortestPhrases(runOf(letters), alphabet.costs)), runOf(letters));
    EXPECT_EQ(shortest(std::string(1000, 'k')), "k1000");
}

// Typing must stay fluent: a row of 200 different stitches takes milliseconds.
TEST(ShortestPhrases, AWideRowIsQuick) {
    const Alphabet alphabet;
    std::mt19937 random(7);
    std::string letters;
    for (int i = 0; i < 200; ++i)
        letters += "kkpots"[std::uniform_int_distribution<int>(0, 5)(random)];
    const auto start = std::chrono::steady_clock::now();
    const Phrases phrases = shortestPhrases(runOf(letters), alphabet.costs);
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
    EXPECT_EQ(spelledOut(phrases), runOf(letters));
    EXPECT_LT(took.count(), 1000.0);  // far above what it takes, for slow and busy machines
    RecordProperty("milliseconds", std::to_string(took.count()));
}

}  // namespace
}  // namespace lacewright
