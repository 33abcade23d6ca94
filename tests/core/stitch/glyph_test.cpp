#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "core/stitch/catalogue.h"
#include "tests/core/stitch/glyph_pen.h"

namespace lacewright {
namespace {

// The pen is 1.6 units wide, so a line may come this close to the border of the cells.
constexpr double kMargin = 2.5;
// Tails are written with one decimal, which may shift a rounded circle by this much.
constexpr double kTolerance = 0.06;

struct Line {
    std::vector<PenPoint> points;
    bool filled = false;
};

const Stitch& stitchAt(std::size_t index) {
    return (*builtInStitches())[static_cast<StitchIndex>(index)];
}

const Stitch& stitchOf(const std::string& id) {
    return (*builtInStitches())[builtInStitches()->find(id).value()];
}

std::vector<Line> linesOf(const Stitch& stitch) {
    std::vector<Line> lines;
    for (const GlyphStroke& stroke : stitch.glyph) {
        if (auto line = pointsAlong(stroke)) lines.push_back({std::move(*line), stroke.filled});
    }
    return lines;
}

std::vector<Line> mirrored(std::vector<Line> lines, int span) {
    for (Line& line : lines) {
        for (PenPoint& point : line.points) point.x = span * kCellUnits - point.x;
    }
    return lines;
}

bool alike(const Line& a, const Line& b) {
    return a.filled == b.filled && std::equal(a.points.begin(), a.points.end(), b.points.begin(),
                                              b.points.end(), [](PenPoint p, PenPoint q) {
                                                  return std::abs(p.x - q.x) < kTolerance &&
                                                         std::abs(p.y - q.y) < kTolerance;
                                              });
}

Line backwards(Line line) {
    std::reverse(line.points.begin(), line.points.end());
    return line;
}

// Every line of one drawing is a line of the other, whichever way and order they are drawn in.
bool sameDrawing(const std::vector<Line>& a, const std::vector<Line>& b) {
    return a.size() == b.size() && std::all_of(a.begin(), a.end(), [&b](const Line& line) {
               return std::any_of(b.begin(), b.end(), [&](const Line& other) {
                   return alike(line, other) || alike(backwards(line), other);
               });
           });
}

TEST(GlyphPen, RefusesWhatTheFormatDoesNotAllow) {
    const auto drawable = [](const char* tail) { return pointsAlong({0, 0, tail}).has_value(); };
    EXPECT_TRUE(drawable("l12-12h.5v-3c1 2 3 4 5 6q1 2 3 4a5 5 0 1 0 .1 0z"));
    EXPECT_FALSE(drawable(""));
    EXPECT_FALSE(drawable("L12 12"));
    EXPECT_FALSE(drawable("m2 2l1 1"));
    EXPECT_FALSE(drawable("l12"));
    EXPECT_FALSE(drawable("c1 2 3 4 5"));
    EXPECT_FALSE(drawable("l1e3 2"));
    EXPECT_FALSE(drawable("a5 4 0 1 0 1 0"));
}

TEST(Glyph, StaysWithinItsCells) {
    for (std::size_t i = 1; i <= builtInStitches()->size(); ++i) {
        const Stitch& stitch = stitchAt(i);
        SCOPED_TRACE(stitch.id);
        const std::vector<Line> lines = linesOf(stitch);
        ASSERT_EQ(lines.size(), stitch.glyph.size()) << "a stroke leaves the allowed commands";
        for (const Line& line : lines) {
            for (const PenPoint& point : line.points) {
                EXPECT_GE(point.x, kMargin);
                EXPECT_LE(point.x, stitch.span * kCellUnits - kMargin);
                EXPECT_GE(point.y, kMargin);
                EXPECT_LE(point.y, kCellUnits - kMargin);
            }
        }
    }
}

TEST(Glyph, OfAMirroredStitchIsTheMirrorImage) {
    int pairs = 0;
    for (std::size_t i = 1; i <= builtInStitches()->size(); ++i) {
        const Stitch& stitch = stitchAt(i);
        if (stitch.mirror.empty()) continue;
        const std::vector<Line> image = mirrored(linesOf(stitch), stitch.span);
        EXPECT_TRUE(sameDrawing(image, linesOf(stitchOf(stitch.mirror)))) << stitch.id;
        EXPECT_FALSE(sameDrawing(image, linesOf(stitch))) << stitch.id << " looks like its mirror";
        ++pairs;
    }
    EXPECT_GE(pairs, 40);
}

// A stitch that is its own mirror looks the same both ways, unless it holds a figure to be read or
// the sloping loops of a wrapped stitch.
TEST(Glyph, OfAStitchWithoutMirrorIsSymmetric) {
    for (const char* id :
         {"p",     "ktbl", "ptbl",   "k1b",   "sel",   "yo",   "yo2", "yo3",     "s2kp",    "sspp2",
          "m1",    "m1p",  "kfb",    "pfb",   "kfbf",  "kyok", "kpk", "gather3", "gather5", "pass2",
          "wrap3", "m1bl", "bobble", "slwyb", "slwyf", "drop", "bo",  "co"}) {
        const Stitch& stitch = stitchOf(id);
        EXPECT_TRUE(stitch.mirror.empty()) << id;
        std::vector<PenPoint> ours;
        for (const Line& line : linesOf(stitch)) {
            ours.insert(ours.end(), line.points.begin(), line.points.end());
        }
        for (const Line& line : mirrored(linesOf(stitch), stitch.span)) {
            for (const PenPoint& p : line.points) {
                EXPECT_TRUE(
                    std::any_of(ours.begin(), ours.end(),
                                [p](PenPoint q) { return std::hypot(p.x - q.x, p.y - q.y) < 0.5; }))
                    << id << " at " << p.x << " " << p.y;
            }
        }
    }
}

TEST(Glyph, IsNeverUsedTwice) {
    std::vector<std::vector<Line>> drawings(1);
    for (std::size_t i = 1; i <= builtInStitches()->size(); ++i) {
        drawings.push_back(linesOf(stitchAt(i)));
        for (std::size_t j = 1; j < i; ++j) {
            const Stitch& a = stitchAt(i);
            const Stitch& b = stitchAt(j);
            const bool same =
                a.span == b.span && a.shaded == b.shaded && sameDrawing(drawings[i], drawings[j]);
            EXPECT_FALSE(same) << a.id << " and " << b.id;
        }
    }
}

// The drawing of a purl decrease is marked by a bar below.
TEST(Glyph, OfAPurlDecreaseHasABarBelow) {
    const GlyphStroke bar{6, 17, "h8"};
    for (const char* id : {"p2tog", "ssp", "p2togtbl", "p2togtw", "p3tog", "sssp", "p3togtbl",
                           "p3togtw", "sspp2", "p5tog"}) {
        const std::vector<GlyphStroke>& glyph = stitchOf(id).glyph;
        EXPECT_NE(std::find(glyph.begin(), glyph.end(), bar), glyph.end()) << id;
    }
}

// Common lace is mostly these: every byte here comes back for every cell of an exported picture.
TEST(Glyph, OfTheCommonestStitchesIsShort) {
    EXPECT_TRUE(stitchOf("k").glyph.empty());
    EXPECT_LE(stitchOf("yo").glyph.at(0).tail.size(), 20U);
    EXPECT_LE(stitchOf("k2tog").glyph.at(0).tail.size(), 8U);
    EXPECT_LE(stitchOf("ssk").glyph.at(0).tail.size(), 8U);
}

}  // namespace
}  // namespace lacewright
