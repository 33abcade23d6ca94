#include <gtest/gtest.h>

#include "core/base/disk.h"
#include "core/file/file_limits.h"
#include "core/file/json_value.h"
#include "core/file/version_steps.h"
#include "tests/support/source_tree.h"

// The schema is written by hand; it must not state other limits than the reader keeps.
namespace lacewright {
namespace {

class SchemaLimits : public testing::Test {
 protected:
    // The number at the end of a path of member names.
    std::int64_t at(std::initializer_list<std::string_view> path) const {
        const JsonValue* value = &schema_;
        for (const std::string_view step : path) {
            value = value->find(step);
            if (value == nullptr) break;
        }
        EXPECT_TRUE(value != nullptr && value->whole() != nullptr) << *(path.end() - 1);
        return value != nullptr && value->whole() != nullptr ? *value->whole() : -1;
    }

 private:
    JsonValue schema_ =
        parseJson(readFile(test::inSourceTree("resources/chart.schema.json")).value());
};

TEST_F(SchemaLimits, OfTheChartAreThoseOfTheReader) {
    EXPECT_EQ(at({"properties", "version", "const"}), kChartVersion);
    EXPECT_EQ(at({"properties", "width", "maximum"}), kMaxWidth);
    EXPECT_EQ(at({"properties", "rows", "maxItems"}), kMaxRows);
    EXPECT_EQ(at({"properties", "repeats", "maxItems"}), kMaxRepeats);
    EXPECT_EQ(at({"properties", "points", "maxItems"}), kMaxPoints);
    EXPECT_EQ(at({"properties", "sizes", "maxItems"}), kMaxSizes);
    EXPECT_EQ(at({"properties", "stitches", "maxItems"}), static_cast<int>(kMaxOwnStitches));
    EXPECT_EQ(at({"properties", "notes", "maxLength"}), kMaxTextLength);
    EXPECT_EQ(at({"maxProperties"}), static_cast<int>(kMaxMembers));
}

TEST_F(SchemaLimits, OfItsPartsAreThoseOfTheReader) {
    EXPECT_EQ(at({"$defs", "row", "maxLength"}), static_cast<int>(kMaxRowText));
    EXPECT_EQ(at({"$defs", "stitchId", "maxLength"}), kMaxIdLength);
    EXPECT_EQ(at({"$defs", "rowNumber", "maximum"}), 2 * kMaxRows - 1);
    EXPECT_EQ(at({"$defs", "column", "maximum"}), kMaxWidth);
    EXPECT_EQ(at({"$defs", "castOn", "properties", "stitches", "maximum"}), kMaxCount);
    EXPECT_EQ(at({"$defs", "gauge", "properties", "rows", "maximum"}), kMaxGauge);
    EXPECT_EQ(at({"$defs", "stitch", "properties", "takes", "maximum"}), kMaxLoops);
    EXPECT_EQ(at({"$defs", "stitch", "properties", "span", "maximum"}), kMaxSpan);
    EXPECT_EQ(at({"$defs", "stitch", "properties", "glyph", "maxItems"}),
              static_cast<int>(kMaxStrokes));
    EXPECT_EQ(at({"$defs", "size", "properties", "times", "maxProperties"}), kMaxRepeats);
    EXPECT_EQ(at({"$defs", "size", "properties", "times", "additionalProperties", "maximum"}),
              kMaxTimes);
    EXPECT_EQ(at({"$defs", "size", "properties", "substitutions", "maxItems"}),
              static_cast<int>(kMaxSubstitutions));
    EXPECT_EQ(at({"$defs", "size", "properties", "body", "maximum"}), kMaxBody);
    EXPECT_EQ(at({"$defs", "size", "properties", "shoulder", "maximum"}), kMaxNeedle);
    EXPECT_EQ(at({"$defs", "grading", "properties", "pieces", "maximum"}), kMaxPieces);
    EXPECT_EQ(at({"$defs", "grading", "properties", "edgeStitches", "maximum"}), kMaxWidth);
    EXPECT_EQ(at({"$defs", "grading", "properties", "leastEase", "minimum"}), -kMaxEase);
    EXPECT_EQ(at({"$defs", "grading", "properties", "mostEase", "maximum"}), kMaxEase);
    EXPECT_EQ(at({"$defs", "grading", "properties", "shoulders", "maxItems"}), kMaxShoulders);
}

}  // namespace
}  // namespace lacewright
