#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QStandardPaths>
#include <QSvgRenderer>

#include "app/print/write_sheet.h"
#include "core/base/disk.h"
#include "core/sheet/svg.h"
#include "tests/core/sheet/sheet_probe.h"
#include "tests/support/temp_dir.h"

// The SVG as renderers draw it: ink is where it belongs.
namespace lacewright::app {
namespace {

using test::Rectangle;

constexpr int kDots = 2;  // a unit

Chart lace() {
    Chart chart = test::chartOf({"k yo k2tog k k ssk yo k", "k k k k p k k k"});
    chart.name = "Ink";
    return chart;
}

QImage bySvgRenderer(const std::string& svg, const Page& page) {
    QSvgRenderer renderer(QByteArray::fromStdString(svg));
    EXPECT_TRUE(renderer.isValid());
    QImage image(page.width * kDots, page.height * kDots, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderer.render(&painter);
    return image;
}

QImage byRsvg(const std::string& svg, const Page& page) {
    const test::TempDir folder;
    EXPECT_TRUE(writeFile(folder / "a.svg", svg));
    QProcess process;
    process.start(
        QStringLiteral("rsvg-convert"),
        {QStringLiteral("-w"), QString::number(page.width * kDots), QStringLiteral("-o"),
         QString::fromStdString(folder / "a.png"), QString::fromStdString(folder / "a.svg")});
    EXPECT_TRUE(process.waitForFinished());
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return QImage(QString::fromStdString(folder / "a.png")).convertToFormat(QImage::Format_RGB32);
}

class Ink {
 public:
    Ink(QImage image, const Page& page) : image_(std::move(image)), frame_(test::frameOf(page)) {}

    // Black at a place of a cell, in units from its upper left corner.
    bool at(int column, int row, int x, int y) const {
        const int left = frame_.right - column * kCellUnits + x;
        const int top = frame_.bottom - (row + 1) * kCellUnits + y;
        return qGray(image_.pixel(left * kDots, top * kDots)) < 128;
    }
    // Anywhere inside a cell, its edges left out.
    bool anywhere(int column, int row) const {
        for (int y = 3; y < kCellUnits - 2; ++y) {
            for (int x = 3; x < kCellUnits - 2; ++x) {
                if (at(column, row, x, y)) return true;
            }
        }
        return false;
    }

 private:
    QImage image_;
    Rectangle frame_;
};

void expectLaceInk(const Ink& ink) {
    EXPECT_FALSE(ink.anywhere(1, 0)) << "a knit cell is empty";
    EXPECT_FALSE(ink.anywhere(4, 0));
    EXPECT_TRUE(ink.anywhere(2, 0)) << "a yarn over is a ring";
    EXPECT_TRUE(ink.at(2, 0, 10, 5));
    EXPECT_FALSE(ink.at(2, 0, 10, 10));
    // k2tog leans to the right, ssk to the left.
    EXPECT_TRUE(ink.at(6, 0, 13, 7));
    EXPECT_FALSE(ink.at(6, 0, 7, 7));
    EXPECT_TRUE(ink.at(3, 0, 7, 7));
    EXPECT_FALSE(ink.at(3, 0, 13, 7));
    EXPECT_TRUE(ink.at(4, 1, 10, 10)) << "a purl is a bar";
    EXPECT_FALSE(ink.at(4, 1, 10, 6));
}

TEST(SvgPicture, QtDrawsTheStitchesWhereTheyBelong) {
    const Sheet sheet = layOut(lace(), {});
    expectLaceInk(Ink(bySvgRenderer(svgText(sheet), sheet.pages[0]), sheet.pages[0]));
}

TEST(SvgPicture, SoDoesThePainterOfPdfAndPng) {
    const Sheet sheet = layOut(lace(), {});
    const int dotsPerInch = qRound(kDots / sheet.unitMm * 25.4);
    QImage image = imageOf(sheet, 0, dotsPerInch);
    image = image.scaled(sheet.pages[0].width * kDots, sheet.pages[0].height * kDots,
                         Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    expectLaceInk(Ink(image, sheet.pages[0]));
}

TEST(SvgPicture, SoDoesLibrsvgAndThePicturesAgree) {
    if (QStandardPaths::findExecutable(QStringLiteral("rsvg-convert")).isEmpty()) {
        GTEST_SKIP() << "rsvg-convert is not installed";
    }
    SheetOptions options;
    options.size = "small";
    const Sheet sheet = layOut(test::panel(), options);
    const std::string svg = svgText(sheet);
    const QImage qt = bySvgRenderer(svg, sheet.pages[0]);
    const QImage other = byRsvg(svg, sheet.pages[0]);
    ASSERT_EQ(other.size(), qt.size());
    // Over the chart itself; letters are smoothed differently.
    const Rectangle frame = test::frameOf(sheet.pages[0]);
    double sum = 0;
    for (int y = frame.top * kDots; y < frame.bottom * kDots; ++y) {
        for (int x = frame.left * kDots; x < frame.right * kDots; ++x) {
            sum += std::abs(qGray(qt.pixel(x, y)) - qGray(other.pixel(x, y)));
        }
    }
    const double area =
        1.0 * (frame.right - frame.left) * (frame.bottom - frame.top) * kDots * kDots;
    EXPECT_LT(sum / 255 / area, 0.01);

    const Sheet small = layOut(lace(), {});
    expectLaceInk(Ink(byRsvg(svgText(small), small.pages[0]), small.pages[0]));
}

}  // namespace
}  // namespace lacewright::app
