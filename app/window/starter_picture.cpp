#include "app/window/starter_picture.h"

#include <QGuiApplication>
#include <QPainter>
#include <QPalette>

#include "app/canvas/colours.h"
#include "app/canvas/stitch_picture.h"

namespace lacewright::app {

namespace {

constexpr int kCell = 14;  // device-independent pixels

}  // namespace

QIcon starterPicture(const Starter& starter, const QPalette& palette, QSize size) {
    const Result<Chart> chart = chartOf(starter);
    if (!chart) return {};
    const ChartColours colours = coloursFor(palette);
    const double ratio = qGuiApp->devicePixelRatio();
    QPixmap pixmap(size * ratio);
    pixmap.fill(colours.ground);
    QPainter painter(&pixmap);
    const int cell = static_cast<int>(kCell * ratio);
    const int columns = pixmap.width() / cell + 1;
    const int rows = pixmap.height() / cell + 1;
    // The middle of the chart shows its motif best.
    const int firstColumn = std::max(1, (chart->width - columns) / 2 + 1);
    for (int row = 0; row < std::min(rows, chart->height()); ++row) {
        for (int i = 0; i < columns; ++i) {
            const int column = firstColumn + i;
            const int x = pixmap.width() - (i + 1) * cell;
            const int y = pixmap.height() - (row + 1) * cell;
            const StitchIndex index =
                column <= chart->width ? chart->row(row).at(column) : kCovered;
            if (index != kCovered) {
                const Stitch& stitch = (*chart->stitches)[index];
                painter.drawImage(
                    x - (stitch.span - 1) * cell, y,
                    stitchImage(stitch, {cell, colours.ground, colours.glyph, colours.hatch}));
            }
            painter.setPen(colours.gridFine);
            painter.drawRect(x, y, cell, cell);
        }
    }
    painter.setPen(colours.gridTen);
    painter.drawRect(0, 0, pixmap.width() - 1, pixmap.height() - 1);
    painter.end();
    pixmap.setDevicePixelRatio(ratio);
    return QIcon(pixmap);
}

}  // namespace lacewright::app
