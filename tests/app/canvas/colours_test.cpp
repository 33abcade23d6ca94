#include "app/canvas/colours.h"

#include <gtest/gtest.h>

#include <QPalette>
#include <string>

namespace lacewright::app {
namespace {

// WCAG 2.2, 1.4.3 (text) and 1.4.11 (lines and signs that are needed to understand).
constexpr double kText = 4.5;
constexpr double kLines = 3.0;

struct Theme {
    std::string name;
    ChartColours colours;
};

class ColoursOf : public testing::TestWithParam<Theme> {};

TEST_P(ColoursOf, KeepsTextReadable) {
    const ChartColours& colours = GetParam().colours;
    EXPECT_GE(contrast(colours.text, colours.margin), kText);
    EXPECT_GE(contrast(colours.textQuiet, colours.margin), kText);
    EXPECT_GE(contrast(colours.ground, colours.repeat), kText) << "names of repeats";
}

TEST_P(ColoursOf, KeepsGlyphsReadableOnEveryGround) {
    const ChartColours& colours = GetParam().colours;
    for (const QColor& ground : {colours.ground, colours.groundInside, colours.groundGuilty,
                                 colours.groundWarned, colours.groundNoStitch}) {
        EXPECT_GE(contrast(colours.glyph, ground), 7.0) << ground.name().toStdString();
    }
}

TEST_P(ColoursOf, KeepsLinesVisibleOnTheGroundsTheyCross) {
    const ChartColours& colours = GetParam().colours;
    for (const QColor& ground : {colours.ground, colours.groundInside, colours.groundOutside}) {
        for (const QColor& line :
             {colours.repeat, colours.fault, colours.companion, colours.frame, colours.text}) {
            EXPECT_GE(contrast(line, ground), kLines)
                << line.name().toStdString() << " on " << ground.name().toStdString();
        }
    }
    EXPECT_GE(contrast(colours.fault, colours.groundGuilty), kLines);
    EXPECT_GE(contrast(colours.text, colours.groundWarned), kLines);
    EXPECT_GE(contrast(colours.size, colours.ground), kLines);
    EXPECT_GE(contrast(colours.size, colours.groundOutside), kLines);
    EXPECT_GE(contrast(colours.hole, colours.ground), kLines);
    EXPECT_GE(contrast(colours.shaping, colours.ground), kLines);
}

TEST_P(ColoursOf, KeepsSignsVisibleInTheMargin) {
    const ChartColours& colours = GetParam().colours;
    for (const QColor& sign : {colours.fault, colours.note, colours.size}) {
        EXPECT_GE(contrast(sign, colours.margin), kLines) << sign.name().toStdString();
    }
    EXPECT_GE(contrast(QColor(Qt::black), colours.warning), kLines);
}

INSTANTIATE_TEST_SUITE_P(Themes, ColoursOf,
                         testing::Values(Theme{"light", lightColours()},
                                         Theme{"dark", darkColours()}),
                         [](const auto& test) { return test.param.name; });

// Contrast of colours on white to two digits, worked out by hand from the WCAG formula: black 21,
// #767676 the lightest grey that text may have, and the blue of Okabe and Ito.
TEST(Contrast, AgreesWithKnownFigures) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrast(QColor(0x767676), Qt::white), 4.54, 0.005);
    EXPECT_NEAR(contrast(QColor(0x0072B2), Qt::white), 5.19, 0.005);
    EXPECT_NEAR(contrast(Qt::white, QColor(0xD55E00)), 3.87, 0.005);
    EXPECT_DOUBLE_EQ(contrast(Qt::red, Qt::red), 1.0);
}

TEST(Colours, FollowTheWidgetPalette) {
    QPalette palette;
    palette.setColor(QPalette::Base, Qt::white);
    EXPECT_EQ(coloursFor(palette), lightColours());
    palette.setColor(QPalette::Base, QColor(0x222222));
    EXPECT_EQ(coloursFor(palette), darkColours());
}

}  // namespace
}  // namespace lacewright::app
