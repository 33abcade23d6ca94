#include "app/canvas/overlay_painter.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

#include "app/canvas/companion_painter.h"
#include "app/canvas/finding_marks.h"
#include "app/canvas/stepped_line.h"

namespace lacewright::app {
namespace {

constexpr double kRepeatLine = 3.0;  // device-independent pixels, as all lengths here
constexpr double kSizeLine = 2.0;
constexpr double kCursorLine = 2.0;

// The rows of a span that may be seen, with one more on each side so that the ends of an outline
// that goes on stay out of sight. Empty when first > last.
struct RowSpan {
    int first = 0;
    int last = -1;
};
RowSpan seenOf(int firstRow, int lastRow, const CellArea& seen) {
    return {std::max(firstRow, seen.firstRow - 1), std::min(lastRow, seen.lastRow + 1)};
}

// Thinner where cells are small.
int repeatLine(const ViewScene& scene) {
    return std::clamp(scene.geometry.cell() / 5, scene.px(1.5), scene.px(kRepeatLine));
}

void paintTag(QPainter& painter, const ViewScene& scene, const QString& text, QPoint lowerRight) {
    QFont font = scene.font;
    font.setBold(true);
    const QFontMetrics metrics(font);
    const int width = metrics.horizontalAdvance(text) + scene.px(8);
    const QRect tag(lowerRight.x() - width, lowerRight.y() - metrics.height(), width,
                    metrics.height());
    painter.fillRect(tag, scene.colours.repeat);
    painter.setFont(font);
    painter.setPen(scene.colours.ground);
    painter.drawText(tag, Qt::AlignCenter, text);
}

void paintRepeat(QPainter& painter, const ViewScene& scene, const Repeat& repeat,
                 const CellArea& seen) {
    const int top = std::min(repeat.lastRow, scene.chart.height() - 1);
    const RowSpan rows = seenOf(repeat.firstRow, top, seen);
    if (rows.first > rows.last) return;
    const auto boxOn = [&](int row) {
        Box box = repeat.on(row);
        return Box{std::clamp(box.right, 1, scene.chart.width),
                   std::clamp(box.left, 1, scene.chart.width)};
    };
    QPolygon outline = steppedOutline(scene.geometry, rows.first, rows.last, boxOn);
    outline.translate(scene.origin());
    const int line = repeatLine(scene);
    paintSteps(painter, outline, line, scene.colours.repeat);
    if (rows.last == top && scene.geometry.cell() >= scene.px(10)) {
        const QPoint corner(scene.geometry.rightOf(boxOn(top).right) + line - line / 2,
                            scene.geometry.topOf(top));
        paintTag(painter, scene, repeatLabel(repeat, scene.chosen), corner + scene.origin());
    }
}

void paintSizeEdges(QPainter& painter, const ViewScene& scene, const CellArea& seen) {
    const RowSpan rows = seenOf(0, scene.chart.height() - 1, seen);
    QPolygon outline = steppedOutline(scene.geometry, rows.first, rows.last, [&scene](int row) {
        const Reach reach = scene.chosen->on(row);
        return Box{std::clamp(reach.start, 1, scene.chart.width),
                   std::clamp(reach.end, 1, scene.chart.width)};
    });
    outline.translate(scene.origin());
    paintSteps(painter, outline, scene.px(kSizeLine), scene.colours.size);
}

// A filled corner where the chosen size works another stitch than the one drawn.
void paintSubstitutions(QPainter& painter, const ViewScene& scene) {
    for (const Substitution& substitution : scene.chosen->substitutions) {
        const QRect cell = scene.geometry.rectOf(Cell{substitution.row, substitution.column})
                               .translated(scene.origin());
        const int side = std::max(scene.px(4), cell.width() / 3);
        const QPoint corner = cell.topLeft();
        painter.setPen(Qt::NoPen);
        painter.setBrush(scene.colours.size);
        painter.drawPolygon(QPolygon({corner, corner + QPoint(side, 0), corner + QPoint(0, side)}));
    }
}

void paintSelectionEdge(QPainter& painter, const ViewScene& scene) {
    const QRect selected = scene.geometry.rectOf(scene.selection).translated(scene.origin());
    const int line = scene.px(1);
    paintBox(painter, selected, line, scene.colours.ground);
    paintBox(painter, selected, line, scene.colours.text, scene.px(4));
}

// Dark outside and light inside, to be seen on any ground.
void paintCursor(QPainter& painter, const ViewScene& scene) {
    const QRect cell = scene.geometry.rectOf(scene.cursor).translated(scene.origin());
    const int line = scene.px(scene.hasFocus ? kCursorLine : 1);
    paintBox(painter, cell.adjusted(line, line, -line, -line), line, scene.colours.ground);
    paintBox(painter, cell, line, scene.colours.text);
}

}  // namespace

QString repeatLabel(const Repeat& repeat, const Size* chosen) {
    QString times = QStringLiteral("n");
    if (chosen != nullptr) {
        const auto found = chosen->times.find(repeat.name);
        if (found != chosen->times.end()) times = QString::number(found->second);
    }
    return QStringLiteral("%1 × %2").arg(QString::fromStdString(repeat.name), times);
}

int overlayReach(const ViewScene& scene) {
    return scene.px(kRepeatLine) + 1;
}

void paintOverlays(QPainter& painter, const ViewScene& scene, const QRect& exposed) {
    const int reach = overlayReach(scene);
    const std::optional<CellArea> seen = scene.geometry.cellsIn(
        exposed.translated(-scene.origin()).adjusted(-reach, -reach, reach, reach));
    if (!seen) return;
    if (scene.hasSelection) {
        painter.fillRect(scene.geometry.rectOf(scene.selection).translated(scene.origin()),
                         scene.colours.selection);
    }
    if (scene.chosen != nullptr) {
        paintSizeEdges(painter, scene, *seen);
        paintSubstitutions(painter, scene);
    }
    for (const Repeat& repeat : scene.chart.repeats) paintRepeat(painter, scene, repeat, *seen);
    paintFindingMarks(painter, scene, *seen);
    paintCompanions(painter, scene, *seen);
    if (scene.hasSelection) paintSelectionEdge(painter, scene);
    paintCursor(painter, scene);
}

}  // namespace lacewright::app
