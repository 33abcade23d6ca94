#include "core/verdict/placed_row.h"

#include <gtest/gtest.h>

#include "core/words/reader.h"

namespace lacewright {
namespace {

PlacedRow placed(const std::string& text) {
    const ReadRows read = readWritten(text);
    EXPECT_FALSE(read.hasErrors()) << text;
    const auto row = placedRow(read.pattern, 0, proveWritten(read.pattern), 0);
    EXPECT_TRUE(row.has_value()) << text;
    return row.value_or(PlacedRow());
}

using Ids = std::vector<std::string>;
using Places = std::vector<std::size_t>;

TEST(PlacedRow, HoldsWhatRepeatsOnceAndWritesBracketsOut) {
    const PlacedRow row = placed(
        "Cast on: multiple of 4 plus 3\nRow 1: k2, *[yo, k2tog] twice; rep from * to "
        "last st, k1\n");
    EXPECT_EQ(row.ids(), (Ids{"k", "k", "yo", "k2tog", "yo", "k2tog", "k"}));
    EXPECT_EQ(row.placeInWords(0), "stitch 1 before the repeat");
    EXPECT_EQ(row.placeInWords(4), "stitch 3 of the repeat");
    EXPECT_EQ(row.placeInWords(6), "stitch 1 after the repeat");
}

TEST(PlacedRow, AStretchOfAFixedNumberIsWrittenOut) {
    EXPECT_EQ(placed("Cast on: 5\nRow 1: k1, p to last 2 sts, k2\n").ids(),
              (Ids{"k", "p", "p", "k", "k"}));
}

TEST(PlacedRow, UnfoldsItsRepeatToTheLengthAsked) {
    const PlacedRow row =
        placed("Cast on: multiple of 2 plus 2\nRow 1: k1, *yo, k2tog; rep from * to last st, k1\n");
    EXPECT_EQ(row.unfolded(4), (Places{0, 1, 2, 3}));
    EXPECT_EQ(row.unfolded(8), (Places{0, 1, 2, 1, 2, 1, 2, 3}));
    EXPECT_EQ(row.unfolded(5), std::nullopt);
    EXPECT_EQ(row.unfolded(3), std::nullopt);
}

TEST(PlacedRow, NamedRepeatsAreCalledByTheirNames) {
    const PlacedRow row = placed(
        "Cast on: 2 for each A plus 3 for each B plus 2\nRepeats: A, B\n"
        "Row 1: k1, [yo, k2tog] A times, k1, [k3] B times\n");
    EXPECT_EQ(row.placeInWords(2), "stitch 2 of repeat A");
    EXPECT_EQ(row.placeInWords(3), "stitch 1 after repeat A");
    EXPECT_EQ(row.placeInWords(4), "stitch 1 of repeat B");
}

}  // namespace
}  // namespace lacewright
