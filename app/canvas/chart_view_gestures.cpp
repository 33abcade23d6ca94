#include <QMouseEvent>
#include <QScrollBar>

#include "app/canvas/chart_view.h"
#include "app/canvas/gestures.h"
#include "core/check/clean_edges.h"

namespace lacewright::app {
namespace {

// A row line as moveRepeatEdge counts it: the row below the line nearest to the pointer.
int rowLineNear(const ChartGeometry& geometry, QPoint sheet) {
    const QPoint half(0, geometry.cell() / 2);
    if (sheet.y() + half.y() >= geometry.cells().bottom()) return -1;
    return geometry.nearestCell(sheet + half).row;
}

}  // namespace

std::unique_ptr<Gesture> ChartView::dragFor(const Hit& hit, Qt::KeyboardModifiers modifiers) {
    const Chart& chart = document_.chart();
    const auto index = static_cast<std::size_t>(hit.index);
    switch (hit.kind) {
        case Hit::Kind::RepeatEdge: {
            const bool jog = modifiers.testFlag(Qt::ShiftModifier);
            const std::optional<int> onlyRow =
                jog ? std::optional<int>(hit.cell.row) : std::nullopt;
            const bool level = hit.side == BoxSide::Top || hit.side == BoxSide::Bottom;
            return std::make_unique<EditGesture>(
                document_, jog ? tr("Shift repeat on one row") : tr("Move repeat's edge"),
                [this, name = chart.repeats[index].name, side = hit.side, level, onlyRow](
                    const Chart& before, const PointerPlace& place) {
                    const int line = level ? rowLineNear(geometry_, place.sheet) : place.line;
                    return moveRepeatEdge(before, name, side, line, onlyRow);
                });
        }
        case Hit::Kind::SizeMark:
            return sizeMarkDrag(hit);
        case Hit::Kind::Point:
            return std::make_unique<EditGesture>(
                document_, tr("Move point"),
                [point = chart.points[index], clean = cleanLines(chart)](
                    const Chart& before, const PointerPlace& place) -> Result<Chart> {
                    const int column = place.cell.column;
                    if (column == point.column) return before;
                    const bool free = place.modifiers.testFlag(Qt::ControlModifier);
                    return movePoint(before, point.name,
                                     free ? column : cleanColumn(before, point, clean, column));
                });
        default:
            return nullptr;
    }
}

// Goes to lines where nothing is parted; with Ctrl to any line. On a selected row the selected rows
// are shaped.
std::unique_ptr<Gesture> ChartView::sizeMarkDrag(const Hit& hit) {
    const Chart& chart = document_.chart();
    const Size& size = chart.sizes[static_cast<std::size_t>(hit.index)];
    const std::optional<int> onRow = hit.onGrid ? std::optional<int>(hit.cell.row) : std::nullopt;
    const Reach reach = onRow ? size.on(*onRow) : size.reach;
    std::optional<RowSpan> rows = view_.selectedRows();
    if (!onRow || (rows && !rows->holds(*onRow))) rows.reset();
    const int from = hit.edge == Edge::Start ? reach.start - 1 : reach.end;
    return std::make_unique<EditGesture>(
        document_, hit.edge == Edge::Start ? tr("Move start of size") : tr("Move end of size"),
        [name = size.name, edge = hit.edge, onRow, rows, from,
         clean = cleanLines(chart, size, hit.edge)](const Chart& before,
                                                    const PointerPlace& place) -> Result<Chart> {
            if (place.line == from) return before;
            const bool free = place.modifiers.testFlag(Qt::ControlModifier);
            const int line = free ? place.line : nearestClean(clean, place.line);
            return rows ? shapeSizeMark(before, name, edge, line, *rows)
                        : moveSizeMark(before, name, edge, line, onRow);
        });
}

std::unique_ptr<Gesture> ChartView::gestureFor(const QMouseEvent& event) {
    const Hit hit = hitUnder(toDevice(event.position()));
    if (event.button() == Qt::MiddleButton) {
        return std::make_unique<PanGesture>([this](QPoint by) {
            scrollTo(QPoint(horizontalScrollBar()->value(), verticalScrollBar()->value()) + by);
        });
    }
    if (event.button() != Qt::LeftButton) return nullptr;
    if (hit.kind != Hit::Kind::Cell) return dragFor(hit, event.modifiers());
    const bool selects = tool_ == Tool::Select || event.modifiers().testFlag(Qt::ControlModifier);
    if (selects) {
        return std::make_unique<SelectGesture>(view_,
                                               event.modifiers().testFlag(Qt::ShiftModifier));
    }
    const auto stitch = document_.chart().stitches->find(view_.stitch().toStdString());
    if (!stitch) return nullptr;
    return std::make_unique<StrokeGesture>(document_, view_, *stitch);
}

}  // namespace lacewright::app
