#include "core/stitch/catalogue.h"

#include <gtest/gtest.h>

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace lacewright {
namespace {

Stitch named(const std::string& id) {
    Stitch stitch;
    stitch.id = id;
    stitch.name = id;
    return stitch;
}

TEST(BuiltInStitches, AreManyAndSound) {
    const StitchCatalogue& all = *builtInStitches();
    EXPECT_GE(all.size(), 45U);
    std::set<std::string> ids;
    for (std::size_t i = 1; i <= all.size(); ++i) {
        const Stitch& stitch = all[static_cast<StitchIndex>(i)];
        SCOPED_TRACE(stitch.id);
        EXPECT_TRUE(ids.insert(stitch.id).second);
        EXPECT_FALSE(stitchProblem(stitch)) << stitchProblem(stitch)->message;
        EXPECT_LE(stitch.id.size(), 9U) << "ids are short abbreviations";
        EXPECT_EQ(all.find(stitch.id), static_cast<StitchIndex>(i));
        if (stitch.span > 1) {
            EXPECT_EQ(stitch.makes, stitch.span) << "a wide stitch makes one loop a cell";
        }
    }
}

TEST(BuiltInStitches, HaveMutualMirrors) {
    const StitchCatalogue& all = *builtInStitches();
    for (std::size_t i = 1; i <= all.size(); ++i) {
        const Stitch& stitch = all[static_cast<StitchIndex>(i)];
        SCOPED_TRACE(stitch.id);
        if (stitch.mirror.empty()) {
            EXPECT_TRUE(stitch.lean == Lean::None || stitch.lean == Lean::Centred)
                << "a leaning stitch looks different in a mirror";
            continue;
        }
        const auto mirror = all.find(stitch.mirror);
        ASSERT_TRUE(mirror);
        const Stitch& other = all[*mirror];
        EXPECT_EQ(other.mirror, stitch.id);
        EXPECT_NE(other.id, stitch.id);
        EXPECT_EQ(other.takes, stitch.takes);
        EXPECT_EQ(other.makes, stitch.makes);
        EXPECT_EQ(other.span, stitch.span);
        EXPECT_EQ(other.kind, stitch.kind);
        if (stitch.lean == Lean::Right) {
            EXPECT_EQ(other.lean, Lean::Left);
        }
        if (stitch.lean == Lean::Left) {
            EXPECT_EQ(other.lean, Lean::Right);
        }
    }
}

// The kind is what the numbers say it is.
TEST(BuiltInStitches, HaveTheKindOfTheirCounts) {
    const StitchCatalogue& all = *builtInStitches();
    for (std::size_t i = 1; i <= all.size(); ++i) {
        const Stitch& s = all[static_cast<StitchIndex>(i)];
        SCOPED_TRACE(s.id);
        switch (s.kind) {
            case StitchKind::YarnOver:
                EXPECT_TRUE(s.takes == 0 && s.makes > 0);
                break;
            case StitchKind::Increase:
                EXPECT_GT(s.net(), 0);
                break;
            case StitchKind::Decrease:
                EXPECT_LT(s.net(), 0);
                break;
            case StitchKind::BindOff:
                EXPECT_TRUE(s.takes == 1 && s.makes <= 1);
                break;
            case StitchKind::CastOn:
                EXPECT_TRUE(s.takes == 0 && s.makes > 0);
                break;
            case StitchKind::NoStitch:
                EXPECT_TRUE(s.takes == 0 && s.makes == 0 && s.shaded);
                break;
            case StitchKind::Unknown:
                ADD_FAILURE() << "a built-in stitch is known";
                break;
            default:
                EXPECT_EQ(s.net(), 0);
                break;
        }
    }
}

TEST(StitchCatalogue, FindsOnlyWhatItHolds) {
    EXPECT_TRUE(builtInStitches()->find("k2tog"));
    EXPECT_FALSE(builtInStitches()->find(""));
    EXPECT_FALSE(builtInStitches()->find("K2TOG"));
    EXPECT_FALSE(builtInStitches()->find("wave"));
}

TEST(StitchCatalogue, PacksCountsAndSpansByIndex) {
    const StitchCatalogue& all = *builtInStitches();
    EXPECT_EQ(all.packedCounts()[kCovered], 0U);
    EXPECT_EQ(all.spans()[kCovered], 0U);
    const StitchIndex cross = all.find("c33r").value();
    EXPECT_EQ(all.packedCounts()[cross], 6U | (6U << 16U));
    EXPECT_EQ(all.spans()[cross], 6U);
    const StitchIndex twice = all.find("yo2").value();
    EXPECT_EQ(all.packedCounts()[twice], 2U << 16U);
}

TEST(StitchCatalogue, GrowsWithoutMovingItsStitches) {
    Stitch wave = named("wave");
    wave.takes = 3;
    wave.makes = 2;
    const auto grown = builtInStitches()->with(wave);
    ASSERT_TRUE(grown.has_value());
    const StitchCatalogue& more = *grown.value();
    EXPECT_EQ(more.size(), builtInStitches()->size() + 1);
    EXPECT_EQ(more[more.find("wave").value()], wave);
    EXPECT_EQ(more.find("ssk"), builtInStitches()->find("ssk"));
    EXPECT_FALSE(builtInStitches()->find("wave"));
}

TEST(StitchCatalogue, RefusesAnIdTwice) {
    const auto again = builtInStitches()->with(named("k2tog"));
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, ErrorCode::Refused);
    EXPECT_NE(again.error().message.find("k2tog"), std::string::npos);
}

TEST(StitchCatalogue, RefusesNumbersOutOfRange) {
    const auto code = [](int takes, int makes, int span) -> std::optional<ErrorCode> {
        Stitch stitch = named("wave");
        stitch.takes = takes;
        stitch.makes = makes;
        stitch.span = span;
        const auto grown = builtInStitches()->with(stitch);
        if (grown) return std::nullopt;
        return grown.error().code;
    };
    EXPECT_EQ(code(0, 0, 1), std::nullopt);
    EXPECT_EQ(code(kMaxLoops, kMaxLoops, kMaxSpan), std::nullopt);
    EXPECT_EQ(code(-1, 1, 1), ErrorCode::OutOfRange);
    EXPECT_EQ(code(kMaxLoops + 1, 1, 1), ErrorCode::OutOfRange);
    EXPECT_EQ(code(1, -1, 1), ErrorCode::OutOfRange);
    EXPECT_EQ(code(1, kMaxLoops + 1, 1), ErrorCode::OutOfRange);
    EXPECT_EQ(code(1, 1, 0), ErrorCode::OutOfRange);
    EXPECT_EQ(code(1, 1, kMaxSpan + 1), ErrorCode::OutOfRange);
}

TEST(StitchCatalogue, RefusesIdsThatAFileCannotHold) {
    for (const char* id : {"", "two words", "tab\t", "new\nline", "star*", "quote\""}) {
        EXPECT_FALSE(builtInStitches()->with(named(id)).has_value()) << '"' << id << '"';
    }
    EXPECT_TRUE(builtInStitches()->with(named(std::string(kMaxIdLength, 'x'))).has_value());
    EXPECT_FALSE(builtInStitches()->with(named(std::string(kMaxIdLength + 1, 'x'))).has_value());
}

TEST(StitchCatalogue, RefusesMoreStitchesThanAnIndexCanName) {
    std::vector<Stitch> many;
    for (int i = 0; i < 65533; ++i) many.push_back(named("s" + std::to_string(i)));
    const auto full = StitchCatalogue(std::move(many)).with(named("last"));
    ASSERT_TRUE(full.has_value());
    EXPECT_EQ(full.value()->find("last"), StitchIndex{65534});
    const auto beyond = full.value()->with(named("beyond"));
    ASSERT_FALSE(beyond.has_value());
    EXPECT_EQ(beyond.error().code, ErrorCode::OutOfRange);
}

}  // namespace
}  // namespace lacewright
