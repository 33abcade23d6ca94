#include "app/canvas/foot_painter.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>
#include <limits>
#include <utility>
#include <vector>

#include "app/canvas/foot_layout.h"
#include "app/canvas/margin_pictures.h"
#include "app/canvas/number_steps.h"

namespace lacewright::app {
namespace {

// Device-independent pixels.
constexpr double kChosenLine = 2.6;
constexpr double kQuietLine = 1.4;
constexpr double kMark = 8;  // half the height of the start mark, and the end bar
constexpr double kLowestLabelledLane = 13;

int middleOf(const ViewScene& scene, int column) {
    return scene.geometry.leftOf(column) + scene.geometry.cell() / 2 + scene.origin().x();
}

void paintColumnNumbers(QPainter& painter, const ViewScene& scene, MarginPictures& pictures,
                        const FootLayout& foot) {
    const QFontMetrics metrics(scene.font);
    const int widest = metrics.horizontalAdvance(QString::number(scene.chart.width));
    const int step = numberStep(scene.geometry.cell(), widest + scene.px(3));
    const QRect shown(scene.layout.grid.left() - scene.origin().x(), scene.geometry.cells().top(),
                      scene.layout.grid.width(), 1);
    const std::optional<CellArea> area = scene.geometry.cellsIn(shown);
    if (!area) return;
    pictures.setStyle(scene, foot.numbers.height());
    const int half = std::max(widest, scene.geometry.cell());
    for (int column = area->right; column <= area->left; ++column) {
        if (!isNumbered(column, step)) continue;
        const QRect place(middleOf(scene, column) - half, foot.numbers.top(), 2 * half,
                          foot.numbers.height());
        pictures.paintNumber(painter, place, Qt::AlignHCenter, column,
                             column == scene.cursor.column);
    }
}

// A wedge that points at the column.
void paintWedge(QPainter& painter, const ViewScene& scene, QPoint tip, int half) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(scene.colours.text);
    painter.drawPolygon(QPolygon({tip, tip + QPoint(half, half), tip + QPoint(-half, half)}));
    painter.setRenderHint(QPainter::Antialiasing, false);
}

// Letters under wedges; where there is no room for all letters, those further to the left go.
void paintPoints(QPainter& painter, const ViewScene& scene, const FootLayout& foot) {
    QFont bold = scene.font;
    bold.setBold(true);
    const QFontMetrics metrics(bold);
    std::vector<const Point*> points;
    for (const Point& point : scene.chart.points) points.push_back(&point);
    std::ranges::sort(points, {}, &Point::column);
    const int half = scene.px(4);
    int free = std::numeric_limits<int>::max();  // left edge of the last letter written
    for (const Point* point : points) {
        const int x = middleOf(scene, point->column);
        paintWedge(painter, scene, QPoint(x, foot.points.top()), half);
        const QString name = QString::fromStdString(point->name);
        const int width = metrics.horizontalAdvance(name) + scene.px(2);
        if (x + width / 2 > free) continue;
        free = x - width / 2;
        painter.setFont(bold);
        painter.setPen(scene.colours.text);
        painter.drawText(
            QRect(x - width, foot.points.top() + half, 2 * width, foot.points.height() - half),
            Qt::AlignCenter, name);
    }
}

QString laneLabel(const ViewScene& scene, const Size& size) {
    QString label = QString::fromStdString(size.name);
    if (size.stitches) label += QObject::tr("  %1 sts").arg(*size.stitches);
    for (const Repeat& repeat : scene.chart.repeats) {
        const auto found = size.times.find(repeat.name);
        if (found == size.times.end()) continue;
        label +=
            QStringLiteral("  %1 × %2").arg(QString::fromStdString(repeat.name)).arg(found->second);
    }
    return label;
}

// Left edge of a label so wide: on the line where the line can be seen, or beside it where the line
// is too short to bear it.
int labelLeft(const ViewScene& scene, const SpanOfSize& span, int width) {
    const QRect& foot = scene.layout.foot;
    const int from = std::clamp(span.end, scene.layout.grid.left(), scene.layout.grid.right());
    const int to = std::clamp(span.start, scene.layout.grid.left(), scene.layout.grid.right());
    int x = (from + to - width) / 2;
    if (to - from < width + scene.px(3 * kMark)) {
        const bool roomAtLeft = from - width - scene.px(kMark) >= foot.left();
        x = roomAtLeft ? from - width - scene.px(kMark) / 2 : to + scene.px(kMark) / 2;
    }
    return std::clamp(x, foot.left(), std::max(foot.left(), foot.right() - width));
}

void paintLaneLabel(QPainter& painter, const ViewScene& scene, const QRect& lane,
                    const SpanOfSize& span, const Size& size, bool chosen) {
    if (lane.height() < scene.px(kLowestLabelledLane)) return;
    QFont font = scene.font;
    font.setBold(chosen);
    const QString label = laneLabel(scene, size);
    const int width = QFontMetrics(font).horizontalAdvance(label) + scene.px(10);
    const int x = labelLeft(scene, span, width);
    const QRect place(x, lane.top(), width, lane.height());
    painter.fillRect(place.adjusted(0, scene.px(2), 0, -scene.px(2)), scene.colours.margin);
    painter.setFont(font);
    painter.setPen(chosen ? scene.colours.text : scene.colours.textQuiet);
    painter.drawText(place, Qt::AlignCenter, label);
}

// Where the size begins and ends on rows of its own: a tick each, joined to the line by dots.
void paintShaping(QPainter& painter, const ViewScene& scene, const QRect& lane, const Size& size,
                  const QColor& colour) {
    const SpanOfSize main = spanOf(scene, size.reach);
    const int middle = lane.center().y();
    const int half = std::min(scene.px(kMark), lane.height()) / 2;
    const int line = scene.px(kQuietLine);
    painter.setPen(QPen(colour, line, Qt::DotLine));
    for (const ReachChange& change : size.changes) {
        const SpanOfSize span = spanOf(scene, change.reach);
        if (span.end < main.end) painter.drawLine(span.end, middle, main.end, middle);
        if (span.start > main.start) painter.drawLine(main.start, middle, span.start, middle);
        for (const auto& [x, other] : {std::pair(span.end, main.end), {span.start, main.start}}) {
            if (x != other) painter.fillRect(x - line / 2, middle - half, line, 2 * half, colour);
        }
    }
}

// From the start mark, an arrow head in the direction of a right-side row, to the bar at the end.
void paintLane(QPainter& painter, const ViewScene& scene, const QRect& lane, const Size& size) {
    const bool chosen = &size == scene.chosen;
    const QColor& colour = chosen ? scene.colours.size : scene.colours.textQuiet;
    const SpanOfSize span = spanOf(scene, size.reach);
    const int line = scene.px(chosen ? kChosenLine : kQuietLine);
    const int middle = lane.center().y();
    const int half = std::min(scene.px(kMark), lane.height()) / 2;
    paintShaping(painter, scene, lane, size, colour);
    painter.fillRect(span.end, middle - line / 2, span.start - span.end, line, colour);
    painter.fillRect(span.end, middle - half, line, 2 * half + 1, colour);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const QPointF tip(span.start - 1.6 * half, middle + 0.5);
    painter.drawPolygon(QPolygonF(
        {tip, QPointF(span.start, middle - half), QPointF(span.start, middle + half + 1)}));
    painter.setRenderHint(QPainter::Antialiasing, false);
    paintLaneLabel(painter, scene, lane, span, size, chosen);
}

}  // namespace

void paintFoot(QPainter& painter, const ViewScene& scene, MarginPictures& pictures) {
    const FootLayout foot = footLayout(scene);
    paintColumnNumbers(painter, scene, pictures, foot);
    paintPoints(painter, scene, foot);
    for (int i = 0; i < foot.lanes; ++i) {
        paintLane(painter, scene, foot.lane(i), scene.chart.sizes[static_cast<std::size_t>(i)]);
    }
}

}  // namespace lacewright::app
