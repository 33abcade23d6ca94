#include "app/canvas/stitch_picture.h"

#include <gtest/gtest.h>

#include <map>
#include <set>
#include <string>

#include "app/canvas/mnemonics.h"
#include "app/canvas/number_steps.h"
#include "app/canvas/tile_cache.h"
#include "core/stitch/catalogue.h"

namespace lacewright::app {
namespace {

int pixelsOtherThan(const QImage& image, QRgb ground) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) != ground ? 1 : 0;
    }
    return count;
}

PictureStyle blackOnWhite(int cell) {
    return {cell, Qt::white, Qt::black, Qt::gray};
}

TEST(StitchPicture, ShowsInkForEveryStitchThatHasAGlyphAtEverySize) {
    const StitchCatalogue& stitches = *builtInStitches();
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        for (const int cell : {6, 13, 24}) {
            const QImage image = stitchImage(stitch, blackOnWhite(cell));
            ASSERT_EQ(image.size(), QSize(cell * stitch.span, cell));
            const bool hasInk = !stitch.glyph.empty() || stitch.shaded;
            EXPECT_EQ(pixelsOtherThan(image, QColor(Qt::white).rgb()) > 0, hasInk) << stitch.id;
        }
    }
}

TEST(StitchPicture, DrawsNoTwoStitchesOfTheCatalogueAlike) {
    const StitchCatalogue& stitches = *builtInStitches();
    std::map<QByteArray, std::string> seen;
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& stitch = stitches[static_cast<StitchIndex>(i)];
        const QImage image = stitchImage(stitch, blackOnWhite(20));
        const QByteArray bits(reinterpret_cast<const char*>(image.constBits()),
                              image.sizeInBytes());
        const auto [other, isNew] = seen.emplace(bits, stitch.id);
        EXPECT_TRUE(isNew) << stitch.id << " looks like " << other->second;
    }
}

TEST(TileCache, BakesTheGridLineIntoTheUpperAndLeftEdge) {
    TileCache tiles;
    const ChartColours colours = lightColours();
    tiles.setStyle(builtInStitches(), 16, colours);
    const QImage& knit = tiles.tile(*builtInStitches()->find("k"), TileState::Plain);
    EXPECT_EQ(knit.pixelColor(0, 9), colours.gridFine);
    EXPECT_EQ(knit.pixelColor(9, 0), colours.gridFine);
    EXPECT_EQ(knit.pixelColor(1, 1), colours.ground);
    EXPECT_EQ(knit.pixelColor(15, 15), colours.ground);
}

TEST(TileCache, ShowsEachStateOnItsGround) {
    TileCache tiles;
    const ChartColours colours = lightColours();
    tiles.setStyle(builtInStitches(), 16, colours);
    const StitchIndex knit = *builtInStitches()->find("k");
    for (int i = 0; i < kTileStates; ++i) {
        const auto state = static_cast<TileState>(i);
        EXPECT_EQ(tiles.tile(knit, state).pixelColor(8, 8), groundOf(colours, state)) << i;
    }
}

TEST(TileCache, MakesNewPicturesForAnotherStyleOnly) {
    TileCache tiles;
    const StitchIndex yarnOver = *builtInStitches()->find("yo");
    tiles.setStyle(builtInStitches(), 16, lightColours());
    const qint64 first = tiles.tile(yarnOver, TileState::Plain).cacheKey();
    tiles.setStyle(builtInStitches(), 16, lightColours());
    EXPECT_EQ(tiles.tile(yarnOver, TileState::Plain).cacheKey(), first);
    tiles.setStyle(builtInStitches(), 17, lightColours());
    EXPECT_EQ(tiles.tile(yarnOver, TileState::Plain).width(), 17);
    tiles.setStyle(builtInStitches(), 17, darkColours());
    EXPECT_EQ(tiles.tile(yarnOver, TileState::Plain).pixelColor(2, 2), darkColours().ground);
}

TEST(Mnemonics, NameStitchesOfTheCatalogueOnceEach) {
    std::set<char> keys;
    std::set<std::string> ids;
    for (const Mnemonic& mnemonic : mnemonics()) {
        EXPECT_TRUE(builtInStitches()->find(mnemonic.stitch)) << mnemonic.stitch;
        EXPECT_TRUE(keys.insert(mnemonic.key).second) << mnemonic.key;
        EXPECT_TRUE(ids.insert(mnemonic.stitch).second) << mnemonic.stitch;
        const QChar key = QChar::fromLatin1(mnemonic.key);
        EXPECT_EQ(stitchOfKey(key), QLatin1String(mnemonic.stitch));
        EXPECT_EQ(keyOfStitch(QLatin1String(mnemonic.stitch)), QString(key));
    }
    EXPECT_TRUE(stitchOfKey(QChar(0x03BA)).isEmpty());
    EXPECT_TRUE(keyOfStitch(QStringLiteral("c33r")).isEmpty());
}

TEST(NumberStep, IsTheSmallestThatLeavesNumbersApart) {
    EXPECT_EQ(numberStep(24, 20), 1);
    EXPECT_EQ(numberStep(19, 20), 5);
    EXPECT_EQ(numberStep(4, 20), 5);
    EXPECT_EQ(numberStep(3, 20), 10);
    EXPECT_EQ(numberStep(1, 20), 20);
    EXPECT_EQ(numberStep(1, 60), 100);
}

}  // namespace
}  // namespace lacewright::app
