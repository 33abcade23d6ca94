#include <QPainter>
#include <QPalette>

#include "app/canvas/cell_painter.h"
#include "app/canvas/finding_marks.h"
#include "app/canvas/margin_pictures.h"
#include "app/canvas/row_states.h"
#include "core/chart/edits.h"
#include "tests/app/canvas/chart_view_fixture.h"

// Whatever is put together or kept ready to paint quickly looks as if it were painted plainly.
namespace lacewright::app {
namespace {

// Wide stitches, runs, cells that lost their stitch, faults, a size and a repeat.
Chart variedChart() {
    Chart chart = lacewright::test::chartOf({
        "k*5 yo k2tog k*20 c22r ssk yo k*7",
        "p*40",
        "yo k2tog yo k2tog gather3 k*9 c22r c22l bobble k*13 yo k",
        "k*12 k3tog k*12 yo k*14",
        "no-stitch*4 k*32 no-stitch*4",
        "k*40",
    });
    const auto lose = [&chart](std::size_t row, std::initializer_list<std::size_t> columns) {
        std::vector<StitchIndex> cells = chart.rows[row]->cells();
        for (const std::size_t column : columns) cells[column - 1] = kCovered;
        chart.rows.replace(row, makeRow(std::move(cells), *chart.stitches));
    };
    lose(1, {1, 2, 8, 9});
    lose(2, {37});  // beside the gathered stitches
    lacewright::test::withRepeat(chart, "A", 3, 12);
    lacewright::test::withSize(chart, "Small", 2, 30, 2);
    return chart;
}

// The pictures of the stitches one by one, in place of whole rows.
void paintPlainly(QPainter& painter, const ViewScene& scene, TileCache& tiles,
                  const QRect& exposed) {
    const CellArea area = *scene.geometry.cellsIn(exposed.translated(-scene.origin()));
    const StitchCatalogue& stitches = *scene.chart.stitches;
    const int cell = scene.geometry.cell();
    std::vector<TileState> states;
    for (int index = area.firstRow; index <= area.lastRow; ++index) {
        const Row& row = scene.chart.row(index);
        fillStates(scene, index, area.right, area.left, states);
        for (int column = area.right; column <= area.left; ++column) {
            const TileState state = states[static_cast<std::size_t>(column - area.right)];
            const QPoint at = scene.geometry.rectOf(Cell{index, column}).topLeft() + scene.origin();
            const int owner = row.ownerOf(column);
            const int past = column - owner;
            if (past >= stitches.spans()[row.at(owner)]) {
                painter.drawImage(at, tiles.tile(kCovered, state));
                continue;
            }
            const int part = stitches.spans()[row.at(owner)] - 1 - past;
            painter.drawImage(at, tiles.tile(row.at(owner), state),
                              QRect(part * cell, 0, cell, cell));
        }
    }
    paintGridLines(painter, scene, exposed);
}

class QuickPaintTest : public ChartViewTest {
 protected:
    void useDark(bool dark) {
        QPalette palette = chartView_.palette();
        palette.setColor(QPalette::Base, QColor(dark ? 0x222222 : 0xFFFFFF));
        chartView_.setPalette(palette);
        settle();
    }
    QImage canvas(double ratio = 1) const {
        const ViewLayout& layout = chartView_.scene().layout;
        QImage image(layout.foot.right() + 1, layout.foot.bottom() + 1, QImage::Format_RGB32);
        image.fill(Qt::magenta);
        image.setDevicePixelRatio(ratio);
        return image;
    }
};

TEST_F(QuickPaintTest, RowsLookLikeTheirStitchesOneByOne) {
    show(variedChart());
    for (const bool dark : {false, true}) {
        useDark(dark);
        for (const char* size : {"", "Small"}) {
            view_.chooseSize(QString::fromLatin1(size));
            for (const int side : {5, 6, 7, 8, 9, 13, 20, 33, 48}) {
                view_.zoomTo(side);
                chartView_.horizontalScrollBar()->setValue(37);
                settle();
                const ViewScene scene = chartView_.scene();
                TileCache tiles;
                tiles.setStyle(scene.chart.stitches, scene.geometry.cell(), scene.colours);
                RowStrip strip;
                QImage quick = canvas();
                QImage plain = canvas();
                QPainter quickly(&quick);
                QPainter plainly(&plain);
                for (const QRect& part :
                     {scene.layout.grid, scene.layout.grid.adjusted(11, 3, -70, -9)}) {
                    paintCells(quickly, scene, tiles, strip, part);
                    paintPlainly(plainly, scene, tiles, part);
                }
                quickly.end();
                plainly.end();
                ASSERT_NE(plain, canvas());
                ASSERT_EQ(quick, plain) << size << " at " << side << (dark ? ", dark" : ", light");
            }
        }
    }
}

TEST_F(QuickPaintTest, NumbersAndSignsLookAsIfSetOneByOne) {
    show(variedChart());
    for (const bool dark : {false, true}) {
        useDark(dark);
        const ViewScene scene = chartView_.scene();
        MarginPictures pictures;
        const int height = QFontMetrics(scene.font).height() + 1;
        pictures.setStyle(scene, height);
        // Twice, as a picture is made the first time and copied the second.
        for (const int number : {1, 7, 10, 11, 88, 421, 1000, 7, 88}) {
            for (const bool strong : {false, true}) {
                for (const auto across : {Qt::AlignRight, Qt::AlignHCenter}) {
                    pictures.setStyle(scene, across == Qt::AlignRight ? height : height + 3);
                    const QRect place(13, 5, 60, across == Qt::AlignRight ? height : height + 3);
                    QImage quick(90, 40, QImage::Format_RGB32);
                    quick.fill(scene.colours.margin);
                    QImage plain = quick;
                    QPainter quickly(&quick);
                    pictures.paintNumber(quickly, place, across, number, strong);
                    quickly.end();
                    QPainter plainly(&plain);
                    QFont font = scene.font;
                    font.setBold(strong);
                    plainly.setFont(font);
                    plainly.setPen(strong ? scene.colours.text : scene.colours.textQuiet);
                    plainly.drawText(place, across | Qt::AlignVCenter, QString::number(number));
                    plainly.end();
                    ASSERT_EQ(quick, plain) << number;
                }
            }
        }
        for (const Severity severity : {Severity::Note, Severity::Warning, Severity::Fault}) {
            for (const int side : {5, 6, 7, 9, 12, 14, 14, 5}) {
                QImage quick(30, 30, QImage::Format_RGB32);
                quick.fill(scene.colours.margin);
                QImage plain = quick;
                const QRect square(7, 8, side, side);
                QPainter quickly(&quick);
                pictures.paintSign(quickly, scene, severity, square);
                quickly.end();
                QPainter plainly(&plain);
                paintSign(plainly, scene, severity, square);
                plainly.end();
                ASSERT_EQ(quick, plain) << static_cast<int>(severity) << " at " << side;
            }
        }
    }
}

// A screen of another density shows the same device pixels.
TEST_F(QuickPaintTest, AViewLooksTheSameOnEveryDevice) {
    show(variedChart());
    const ViewScene scene = chartView_.scene();
    QImage once = canvas();
    Renderer renderer;
    QPainter painter(&once);
    renderer.paint(painter, scene, once.rect());
    painter.end();
    for (const double ratio : {1.25, 1.5, 2.0, 3.0}) {
        QImage dense = canvas(ratio);
        QPainter scaled(&dense);
        scaled.scale(1 / ratio, 1 / ratio);
        renderer.paint(scaled, scene, QRect(QPoint(), dense.size()));
        scaled.end();
        dense.setDevicePixelRatio(1);
        EXPECT_EQ(dense, once) << ratio;
    }
}

}  // namespace
}  // namespace lacewright::app
