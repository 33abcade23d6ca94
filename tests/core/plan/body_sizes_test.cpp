#include "core/plan/body_sizes.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/plan/gauge.h"

namespace lacewright {
namespace {

const BodyMeasurement& women(const std::string& id) {
    for (const BodyMeasurement& m : bodySizeTables().at(0).measurements) {
        if (m.id == id) return m;
    }
    ADD_FAILURE() << id;
    return bodySizeTables().at(0).measurements.at(0);
}

// Craft Yarn Council, Standards and Guidelines for Crochet and Knitting: women's sizes.
TEST(BodySizes, AreThePublishedOnes) {
    EXPECT_EQ(bodySizeTables().at(0).sizes.size(), 9U);
    EXPECT_EQ(women("bust").inches[2], (BodySpan{36, 38}));
    EXPECT_EQ(women("bust").cm[2], (BodySpan{91.5, 96.5}));
    EXPECT_EQ(women("upper-arm").inches[8], (BodySpan{19.5, 19.5}));
    EXPECT_EQ(women("hips").cm[8].middle(), 156);
}

// Both units as printed: within 0.65 cm of each other but for one figure, which is misprinted in
// the source (26.5 in beside 68.5 cm).
TEST(BodySizes, AgreeInBothUnits) {
    int misprints = 0;
    for (const BodyMeasurement& m : bodySizeTables().at(0).measurements) {
        ASSERT_EQ(m.inches.size(), m.cm.size()) << m.id;
        for (std::size_t i = 0; i < m.cm.size(); ++i) {
            misprints += std::abs(cmOf(m.inches[i].low) - m.cm[i].low) > 0.65 ? 1 : 0;
            misprints += std::abs(cmOf(m.inches[i].high) - m.cm[i].high) > 0.65 ? 1 : 0;
        }
    }
    EXPECT_EQ(misprints, 1);
}

TEST(BodySizes, NameTheirSources) {
    for (const BodySizeTable& table : bodySizeTables()) {
        EXPECT_FALSE(table.source.empty());
        for (const BodyMeasurement& m : table.measurements)
            EXPECT_EQ(m.cm.size(), table.sizes.size()) << m.id;
    }
    EXPECT_NE(bodySizeTables().at(1).source.find("from memory"), std::string::npos);
}

}  // namespace
}  // namespace lacewright
