#include <algorithm>
#include <functional>
#include <iostream>
#include <optional>

#include "core/words/compare.h"
#include "core/words/writer.h"
#include "tests/core/words/reading.h"
#include "tests/support/random_rows.h"

// A knitter who works the rows loop by loop with a plain number of stitches on the needle, against
// the proof that holds for every number at once.
namespace lacewright {
namespace {

// Loops left on the left needle and laid on the right one; false when a stitch finds too few.
struct Needles {
    std::int64_t left = 0;
    std::int64_t right = 0;
};

class TextKnitter {
 public:
    // Readings where words are ambiguous: those the proof took.
    explicit TextKnitter(const ReadingsChosen& chosen) : chosen_(chosen) {}

    // The loops after the row when it uses up all of `loops`.
    std::optional<std::int64_t> knit(const WrittenRow& row, std::int64_t loops) {
        std::optional<std::int64_t> after;
        work(row.elements, 0, {loops, 0}, [&](const Needles& end) {
            if (end.left == 0 && !after) after = end.right;
            return after.has_value();
        });
        return after;
    }

 private:
    // Works elements from `at` on; whenever all are worked asks `done`, which ends the search when
    // it is content. An open stretch is tried with every number of times.
    template <class Done>
    bool work(const Elements& elements, std::size_t at, Needles needles, const Done& done) {
        if (needles.left < 0 || ++steps_ > 200'000) return false;
        if (at == elements.size()) return done(needles);
        const auto rest = [&](const Needles& now) { return work(elements, at + 1, now, done); };
        return workOne(elements[at], needles, std::function<bool(const Needles&)>(rest));
    }

    bool workOne(const Element& element, Needles needles,
                 const std::function<bool(const Needles&)>& rest) {
        if (const auto* working = std::get_if<Working>(&element.what)) {
            for (int i = 0; i < working->count.of(0); ++i) {
                needles.left -= working->takes;
                needles.right += working->makes;
            }
            return rest(needles);
        }
        if (const auto* group = std::get_if<Group>(&element.what))
            return times(group->body, chosenTimes(*group, 0, chosen_), needles, rest);
        if (const auto* one = std::get_if<IntoOne>(&element.what)) {
            const std::int64_t left = needles.left - one->takes;
            needles.left = 1'000'000;  // into stitches that are used up as a whole
            return work(one->body, 0, needles, [&](const Needles& now) {
                return rest({left, now.right});
            });
        }
        if (const auto* choice = std::get_if<Choice>(&element.what))
            return work(chosenReading(*choice, chosen_).elements, 0, needles, rest);
        if (const auto* stretch = std::get_if<Stretch>(&element.what)) {
            const auto close = [&](const Needles& now) {
                return work(stretch->lastTime, 0, now, [&](const Needles& end) {
                    const bool far = stretch->leaves && end.left != stretch->leaves->of(0);
                    return !far && rest(end);
                });
            };
            if (stretch->breaksAnywhere) {  // one into one
                for (std::int64_t i = 0; i <= needles.left; ++i) {
                    if (close({needles.left - i, needles.right + i})) return true;
                }
                return false;
            }
            return repeat(stretch->body, needles, close);
        }
        return rest(needles);
    }

    // As often as there are loops, fewest first.
    bool repeat(const Elements& body, const Needles& needles,
                const std::function<bool(const Needles&)>& rest) {
        if (rest(needles)) return true;
        return work(body, 0, needles, [&](const Needles& now) {
            return now.left < needles.left && repeat(body, now, rest);
        });
    }

    bool times(const Elements& body, std::int64_t count, Needles needles,
               const std::function<bool(const Needles&)>& rest) {
        if (count == 0) return rest(needles);
        return work(body, 0, needles,
                    [&](const Needles& now) { return times(body, count - 1, now, rest); });
    }

    const ReadingsChosen& chosen_;
    int steps_ = 0;
};

// Public-domain handbooks 1843-1918; title, author and year stand in each file.
TEST(TextKnitter, AgreesWithTheProofOnEveryHandbookPattern) {
    int rows = 0;
    int patterns = 0;
    for (const auto& [name, text] : handbookTexts()) {
        const WrittenPattern pattern = readWritten(text).pattern;
        const WrittenProof proof = proveWritten(pattern);
        if (!pattern.again.empty() || !proof.castOn) continue;
        ++patterns;
        std::int64_t least = 1;
        for (const WrittenRowProof& row : proof.rows) {
            for (const auto& [variable, smallest] : row.fit.raised)
                least = std::max(least, smallest);
        }
        // The proof says of all n that the row fits; a fault shows at its own example.
        const std::size_t until = proof.knittable ? pattern.rows.size() : proof.faulty.front() + 1;
        bool failed = false;
        for (std::int64_t n = least; n < least + 6 && !failed; ++n) {
            std::int64_t loops = proof.castOn->multiple * n + proof.castOn->plus;
            for (std::size_t r = 0; r < until && !failed; ++r) {
                ++rows;
                const auto after =
                    TextKnitter(proof.rows[r].counted.chosen).knit(pattern.rows[r], loops);
                const bool faulty = proof.rows[r].verdict != RowVerdict::Fits;
                if (faulty) {
                    failed = !after;
                    break;
                }
                ASSERT_TRUE(after) << name << " row " << r + 1 << ", n " << n;
                EXPECT_EQ(*after, proof.rows[r].after.at([n](Variable) { return n; }))
                    << name << " row " << r + 1 << ", n " << n;
                loops = *after;
            }
        }
        EXPECT_EQ(failed, !proof.knittable) << name;
    }
    std::cout << rows << " rows of " << patterns << " patterns knitted\n";
    EXPECT_GT(patterns, 60);
}

// Rows put together at random, whose counts are known from how they were made.
TEST(TextKnitter, RandomRowsCountAsTheyWereMade) {
    test::RandomRows random(1843);
    int rows = 0;
    for (int i = 0; i < 300; ++i) {
        const test::RandomText made = random.next();
        ASSERT_EQ(errorsOf(made.text), "") << made.text;
        const WrittenPattern pattern = readWritten(made.text).pattern;
        const WrittenProof proof = proveWritten(pattern);
        ASSERT_TRUE(proof.knittable) << made.text << "row " << proof.firstFault()->number;
        ASSERT_EQ(pattern.rows.size(), made.counts.size()) << made.text;
        std::int64_t loops = made.castOn;
        for (std::size_t r = 0; r < pattern.rows.size(); ++r) {
            ++rows;
            ASSERT_EQ(proof.rows[r].after, AffineForm(made.counts[r]))
                << made.text << "row " << r + 1;
            const auto after =
                TextKnitter(proof.rows[r].counted.chosen).knit(pattern.rows[r], loops);
            ASSERT_EQ(after, made.counts[r]) << made.text << "row " << r + 1;
            loops = *after;
        }
    }
    std::cout << rows << " random rows knitted\n";
}

// The same rows drawn, and the drawing held against them.
TEST(TextKnitter, RandomRowsAreDrawnAndWrittenAgain) {
    test::RandomRows random(1918);
    for (int i = 0; i < 60; ++i) {
        const test::RandomText made = random.next();
        const WrittenPattern pattern = readWritten(made.text).pattern;
        const auto drawn = chartFromRows(pattern);
        ASSERT_TRUE(drawn) << made.text << drawn.error().message;
        const auto against = compareRows(drawn->chart, pattern);
        ASSERT_TRUE(against);
        ASSERT_TRUE(against->same()) << made.text << "row " << against->differences.front().number;
        const auto written = writeRows(drawn->chart);
        ASSERT_TRUE(written) << made.text << written.error().message;
    }
}

}  // namespace
}  // namespace lacewright
