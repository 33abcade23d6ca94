#include "core/words/prove.h"

#include "tests/core/words/reading.h"

namespace lacewright {
namespace {

WrittenProof proofOf(const std::string& text) {
    return proveWritten(readWritten(text).pattern);
}

TEST(WrittenProofs, HoldForEveryNumberOfRepeats) {
    EXPECT_EQ(verdictOf("Cast on: multiple of 6 plus 2\nRow 1: k1, *yo, k2tog, k4; rep from * to "
                        "last st, k1\nRow 2: purl"),
              "yes");
    EXPECT_EQ(verdictOf("Cast on: multiple of 6 plus 2\nRow 1: k1, *yo, k2tog, k3; rep from * to "
                        "last st, k1\n"),
              "row 1");
    EXPECT_EQ(verdictOf("Cast on: multiple of 3 plus 0\nRow 1: *yo, k2tog; rep from * to end"),
              "row 1");
    EXPECT_EQ(verdictOf("Cast on: multiple of 4 plus 0\nRow 1: *yo, k2tog; rep from * to end"),
              "yes");
}

// Without a cast-on the first starred repeat says what the count must be.
TEST(WrittenProofs, TheFirstStarredRowSaysTheCount) {
    EXPECT_EQ(verdictOf("Row 1: purl\nRow 2: *yo, sk2p, k1; rep from * to end\nRow 3: purl"),
              "yes");
    EXPECT_EQ(
        verdictOf(
            "Row 1: purl\nRow 2: *yo, sk2p, k1; rep from * to end\nRow 3: p\nRow 4: as row 2"),
        "row 4");
    const WrittenProof proof = proofOf(
        "Row 1: k2, p to last 2 sts, k2\nRow 2: k3, *yo, k2tog, k3; rep from * to last st, k1");
    ASSERT_TRUE(proof.castOn);
    EXPECT_EQ(*proof.castOn, (CastOn{5, 4}));
}

// Row 1 works 6 stitches where the others work 7; the rows between purl whatever there is.
TEST(WrittenProofs, OneWrongRowIsOneFaultThoughPlainRowsFollow) {
    const std::string others =
        "Row 2: p to end\nRow 3: k1, *k2, yo, sk2p, yo, k2; rep from * to last st, k1\n"
        "Row 4: p to end\nRow 5: k1, *yo, k2, sk2p, k2, yo; rep from * to last st, k1\n";
    const WrittenProof first = proofOf(
        "Cast on: multiple of 7 plus 2\n"
        "Row 1: k1, *k1, yo, k2tog, k1, skp, yo; rep from * to last st, k1\n" +
        others);
    EXPECT_EQ(first.faulty, (std::vector<std::size_t>{0}));
    // A second wrong row is told as well.
    const WrittenProof both = proofOf(
        "Cast on: multiple of 7 plus 2\n"
        "Row 1: k1, *k1, yo, k2tog, k1, skp, yo; rep from * to last st, k1\n" +
        others + "Row 6: p\nRow 7: k1, *yo, ssk, k3; rep from * to last st, k1\n");
    EXPECT_EQ(both.faulty, (std::vector<std::size_t>{0, 6}));
}

TEST(WrittenProofs, ToLastMustAgreeWithWhatFollows) {
    const WrittenProof proof = proofOf("Cast on: 20\nRow 1: k to last 3 sts, k2");
    ASSERT_TRUE(proof.firstFault());
    EXPECT_EQ(proof.firstFault()->verdict, RowVerdict::WrongRest);
    EXPECT_EQ(proof.firstFault()->counted.wrongRest->said, 3);
    EXPECT_EQ(proof.firstFault()->counted.wrongRest->follows, 2);
    EXPECT_EQ(
        verdictOf("Cast on: 21\nRow 1: *yo, k2tog; rep from * to last 5 sts, k to last 2 sts, p2"),
        "yes");
    EXPECT_EQ(
        verdictOf("Cast on: 20\nRow 1: *yo, k2tog; rep from * to last 5 sts, k to last 2 sts, p2"),
        "row 1");
}

TEST(WrittenProofs, RepeatedRowsAreWorkedAgain) {
    EXPECT_EQ(verdictOf("Cast on: 4\nRow 1: k1, yo, k to end\nRow 2: p\nRep rows 1 and 2 five more "
                        "times\nRow 13: k10"),
              "yes");
    EXPECT_EQ(
        verdictOf(
            "Cast on: 4\nRow 1: k1, yo, k to end\nRow 2: p\nRep last 2 rows 5 times\nRow 13: k9"),
        "row 13");
    const WrittenProof grown =
        proofOf("Cast on: 4\nRow 1: k1, *yo, k1; rep from * to end\nRep row 1 twice");
    EXPECT_EQ(grown.rows.front().after, AffineForm(7));
    EXPECT_TRUE(grown.knittable);
}

TEST(WrittenProofs, ClosingIsTold) {
    EXPECT_EQ(proofOf("Cast on: 8\nRow 1: *yo, k2tog; rep from * to end").closes, true);
    EXPECT_EQ(proofOf("Cast on: 8\nRow 1: *yo, k2; rep from * to end\nRow 2: p").closes, false);
    EXPECT_EQ(proofOf("Cast on: 8\nRow 1: *yo, k2; rep from * to end\nRow 2: p\nRep from row 2")
                  .closesFrom,
              true);
    EXPECT_EQ(proofOf("Cast on: 8\nRow 1: *yo, k2; rep from * to end\nRow 2: p").growth,
              AffineForm(4));
    EXPECT_FALSE(proofOf("Cast on: 9\nRow 1: *yo, k2; rep from * to end").closes.has_value());
}

TEST(Readings, AreSettledByTheBalance) {
    // "rep from * 3 times": three more by custom, three in all when only that fits.
    const auto reading = [](const std::string& text) {
        const WrittenProof proof = proofOf(text);
        EXPECT_TRUE(proof.knittable) << text;
        const auto& readings = proof.rows.front().counted.readings;
        return readings.empty() ? std::string() : readings.front().meaning;
    };
    EXPECT_EQ(reading("Cast on: 16\nRow 1: *k2, p2; rep from * 3 times"), "4 times in all");
    EXPECT_EQ(reading("Cast on: 12\nRow 1: *k2, p2; rep from * 3 times"), "3 times in all");
    EXPECT_EQ(reading("Cast on: 5\nRow 1: k1, yo, k2tog twice"), "twice over the last stitch");
    EXPECT_EQ(reading("Cast on: 4\nRow 1: yo, k2tog twice"), "twice over the last stitch");
    EXPECT_EQ(reading("Cast on: 7\nRow 1: k1, yo, k2tog twice, k1 (7 sts)"),
              "twice over the last 3 stitches");
}

TEST(Readings, TheRowAboveSettlesAnOver) {
    // Two loops when the next row works both; one long loop where some row lets loops fall.
    const std::string first = "Cast on: 10\nRow 1: k4, k2tog, yo2, k4\n";
    const auto after = [&](const std::string& next) { return proofOf(first + next).rows[0].after; };
    EXPECT_EQ(after("Row 2: k11"), AffineForm(11));
    EXPECT_EQ(after("Row 2: k10"), AffineForm(11));
    EXPECT_EQ(after("Row 2: k10\nNotes: drop the second wrap of each double over."),
              AffineForm(10));
    // Yarn forward before a slipped stitch only moves the yarn, unless the count needs an over.
    const std::string yarn = "Cast on: 4\nRow 1: k2, yfwd, sl 1, k1\n";
    EXPECT_EQ(proofOf(yarn + "Row 2: p4").rows[0].after, AffineForm(4));
    EXPECT_EQ(proofOf(yarn + "Row 2: p5").rows[0].after, AffineForm(5));
}

TEST(Readings, AFaultKeepsTheUsualReading) {
    const WrittenProof proof = proofOf("Cast on: 13\nRow 1: *k2, p2; rep from * 3 times");
    ASSERT_TRUE(proof.firstFault());
    EXPECT_EQ(proof.firstFault()->counted.forms.takes, AffineForm(16));
}

TEST(WrittenProofs, RefuseWhatCannotBeCounted) {
    const auto why = [](const std::string& text) {
        const WrittenProof proof = proofOf(text);
        EXPECT_FALSE(proof.knittable);
        return proof.firstFault() ? proof.firstFault()->counted.uncountable : std::string();
    };
    EXPECT_NE(why("Row 1: *yo; rep from * to end").find("uses up no stitches"), std::string::npos);
    EXPECT_NE(why("Row 1: *k1, p to last 2 sts; rep from * to end").find("inside one"),
              std::string::npos);
    EXPECT_NE(why("Row 1: [[[[k99999] 99999 times] 99999 times] 99999 times] 99999 times")
                  .find("more than"),
              std::string::npos);
}

// Copies of stretches within stretches would multiply without end.
TEST(WrittenProofs, NestedRepeatsStaySmall) {
    std::string row = "Row 1: k1";
    for (int i = 0; i < 60; ++i) row += ", rep 2 times";
    EXPECT_EQ(verdictOf(row), "row 1");
    std::string stars;
    for (int i = 1; i < 30; ++i) stars += std::string(static_cast<std::size_t>(i), '*') + "k1 ";
    for (int i = 29; i > 0; --i) {
        const std::string mark(static_cast<std::size_t>(i), '*');
        stars += mark + " k1, rep from " + mark + " once more, ";
    }
    EXPECT_NE(errorsOf("Row 1: " + stars).find("too many stitches"), std::string::npos);
}

TEST(WrittenProofs, EverySizeIsProvedOnItsOwn) {
    const std::string text =
        "Sizes: S (M)\nCast on: 8 (11)\nRow 1: k1 (2), *yo, k2tog; rep from * to last 1 (2) sts, "
        "k1 (2)";
    EXPECT_EQ(verdictOf(text, 0), "yes");
    EXPECT_EQ(verdictOf(text, 1), "row 1");
}

}  // namespace
}  // namespace lacewright
