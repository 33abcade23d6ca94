#include "core/words/definition_line.h"

#include "tests/core/words/reading.h"

// Counts follow from the stitches that a definition names; the texts are invented.
namespace lacewright {
namespace {

// What a pattern's own list of abbreviations defines, and what it leaves as it is known.
TEST(Definitions, GiveTheirCounts) {
    const auto defined = [](const std::string& lines) {
        std::string out;
        for (const OwnStitch& own : readWritten(lines + "\nRow 1: k1\n").pattern.ownStitches) {
            out +=
                own.name + " " + std::to_string(own.takes) + "-" + std::to_string(own.makes) + ";";
        }
        return out;
    };
    EXPECT_EQ(defined("Abbreviations:\nCluster 3 = sl 3, yo, pass 3 sts over\nk = knit"),
              "");  // passes over more than it can
    EXPECT_EQ(defined("Dip = (k1, yo, k1) in next st, k2tog"), "dip 3-4;");
    EXPECT_EQ(defined("Special stitches:\nFan: [k1, yo] twice, k1\nBOR: beginning of round"),
              "fan 3-5;");
    EXPECT_EQ(defined("Abbreviations: Dec = sk2p; RS = right side; W4 = p4tog, yo"),
              "dec 3-1;w4 4-2;");
    EXPECT_EQ(defined("Abbreviations: k: Knit the next stitch; yo: lay the yarn over"), "");
    EXPECT_EQ(defined("Z. means purl two together; Q. means thread over the needle, and V stands "
                      "for k3tog. W. denotes a narrowed stitch"),
              "z 2-1;q 0-1;v 3-1;");
    EXPECT_EQ(
        defined("Nupp: (k1, yo, k1, yo, k1) in same st; on next row purl these 5 sts together."),
        "nupp 1-5;");
    EXPECT_EQ(countsOf("Dip = (k1, yo, k1) in next st\nCast on 5\nRow 1: k2, dip, k2"), "7");
}

}  // namespace
}  // namespace lacewright
