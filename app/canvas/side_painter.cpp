#include "app/canvas/side_painter.h"

#include <QFontMetrics>
#include <QPainter>
#include <algorithm>

#include "app/canvas/finding_marks.h"
#include "app/canvas/number_steps.h"

namespace lacewright::app {
namespace {

// Device-independent pixels.
constexpr double kGap = 7;  // between grid, number and sign
constexpr double kSign = 14;
constexpr double kBracket = 8;  // lane of the row repeat's bracket, beside its label

int numberWidth(const ViewScene& scene) {
    QFont bold = scene.font;
    bold.setBold(true);
    const int highest = scene.chart.rowNumber(scene.chart.height() - 1);
    return QFontMetrics(bold).horizontalAdvance(QString::number(std::max(highest, 10)));
}

// Rows that a strip of the view shows.
struct Rows {
    int first = 0;
    int last = -1;
};
Rows rowsIn(const ViewScene& scene, const QRect& exposed) {
    const ChartGeometry& geometry = scene.geometry;
    const QRect lane(geometry.cells().left(), exposed.top() - scene.origin().y(), 1,
                     exposed.height());
    // A number may be taller than its cell: look one number's height further.
    const int reach = QFontMetrics(scene.font).height();
    const auto area = geometry.cellsIn(lane.adjusted(0, -reach, 0, reach));
    return area ? Rows{area->firstRow, area->lastRow} : Rows{};
}

// When only some rows are numbered, the right-side rows of flat work count on from 1 and the others
// are multiples, so that numbers still stand at both sides.
bool isRowNumbered(const ViewScene& scene, int row, int step) {
    const int number = scene.chart.rowNumber(row);
    const bool countsOn =
        scene.chart.worked == Worked::Flat && scene.chart.sideOf(row) == Side::Right;
    return step == 1 || (countsOn ? (number - 1) % step == 0 : isNumbered(number, step));
}

// Flat work writes on alternating sides, so that each number has the room of two rows.
int rowNumberStep(const ViewScene& scene) {
    const int needed = QFontMetrics(scene.font).height();
    const bool alternates =
        scene.chart.height() > 1 && scene.chart.sideOf(0) != scene.chart.sideOf(1);
    if (alternates && 2 * scene.geometry.cell() >= needed) return 1;
    return numberStep(scene.geometry.cell(), needed);
}

// The lanes of numbers and signs, measured once for all rows.
struct Lanes {
    explicit Lanes(const ViewScene& scene)
        : gap(scene.px(kGap)),
          number(numberWidth(scene)),
          height(QFontMetrics(scene.font).height()) {}

    int gap;
    int number;  // width
    int height;  // of a number
};

int middleOf(const ViewScene& scene, int row) {
    return (scene.geometry.topOf(row) + scene.geometry.bottomOf(row)) / 2 + scene.origin().y();
}

void paintNumber(QPainter& painter, const ViewScene& scene, const Lanes& lanes,
                 MarginPictures& pictures, int row, bool faulty) {
    const bool atRight = scene.chart.sideOf(row) == Side::Right;
    const QRect& strip = atRight ? scene.layout.right : scene.layout.left;
    QRect place(strip.left(), middleOf(scene, row) - lanes.height / 2, strip.width(), lanes.height);
    if (atRight) {
        place.setWidth(lanes.gap + lanes.number);
    } else {
        place.setRight(strip.right() - lanes.gap);
    }
    pictures.paintNumber(painter, place, Qt::AlignRight, scene.chart.rowNumber(row),
                         faulty || row == scene.cursor.row);
}

void paintRowSign(QPainter& painter, const ViewScene& scene, const Lanes& lanes,
                  MarginPictures& pictures, int row, Severity severity) {
    const int side = std::clamp(scene.geometry.cell() - scene.px(2), scene.px(5), scene.px(kSign));
    const int lane = scene.layout.right.left() + lanes.gap + lanes.number + lanes.gap;
    const int x = lane + (scene.px(kSign) - side) / 2;
    const QRect square(x, middleOf(scene, row) - side / 2, side, side);
    if (side + 2 <= scene.geometry.cell()) {
        pictures.paintSign(painter, scene, severity, square);
    } else {
        paintSign(painter, scene, severity, square);  // signs one above the other touch
    }
}

// A bracket around the rows that are worked again, open towards the grid.
void paintRowRepeat(QPainter& painter, const ViewScene& scene, const RowRepeat& repeat) {
    const int line = scene.px(1.6);
    const int tick = scene.px(5);
    const QFontMetrics metrics(scene.font);
    const int x = scene.layout.left.left() + metrics.height() + scene.px(2);
    const int y = scene.origin().y();
    const int top = scene.geometry.topOf(std::min(repeat.lastRow, scene.chart.height() - 1)) + y;
    const int bottom = scene.geometry.bottomOf(repeat.firstRow) + y;
    const QColor& colour = scene.colours.text;
    painter.fillRect(x, top, line, bottom - top, colour);
    painter.fillRect(x, top, tick, line, colour);
    painter.fillRect(x, bottom - line, tick, line, colour);

    const QString label = QObject::tr("repeat");
    const int seenTop = std::max(top, scene.layout.left.top());
    const int seenBottom = std::min(bottom, scene.layout.left.bottom());
    if (seenBottom - seenTop < metrics.horizontalAdvance(label) + scene.px(12)) return;
    painter.save();
    const int middle = (seenTop + seenBottom) / 2;
    painter.translate(x - scene.px(2), middle);
    painter.rotate(-90);
    painter.setFont(scene.font);
    painter.setPen(colour);
    const int half = (seenBottom - seenTop) / 2;
    painter.drawText(QRect(-half, -metrics.height(), 2 * half, metrics.height()),
                     Qt::AlignHCenter | Qt::AlignBottom, label);
    painter.restore();
}

}  // namespace

SideWidths sideWidths(const ViewScene& scene) {
    const int number = numberWidth(scene);
    const int gap = scene.px(kGap);
    const int bracket =
        scene.chart.rowRepeat ? scene.px(kBracket) + QFontMetrics(scene.font).height() : 0;
    const bool numbersAtLeft = scene.chart.height() > 1 && scene.chart.sideOf(1) != Side::Right;
    const bool firstAtLeft = scene.chart.sideOf(0) != Side::Right;
    const int left = numbersAtLeft || firstAtLeft ? number + 2 * gap : gap;
    return {left + bracket, number + 3 * gap + scene.px(kSign)};
}

void paintSides(QPainter& painter, const ViewScene& scene, MarginPictures& pictures,
                const QRect& exposed) {
    const Rows rows = rowsIn(scene, exposed);
    const Lanes lanes(scene);
    pictures.setStyle(scene, lanes.height);
    const int step = rowNumberStep(scene);
    for (int row = rows.first; row <= rows.last; ++row) {
        const int number = scene.chart.rowNumber(row);
        const auto grave = gravest(findingsOfRow(scene.report, number));
        const bool faulty = grave == Severity::Fault;
        if (isRowNumbered(scene, row, step))
            paintNumber(painter, scene, lanes, pictures, row, faulty);
        if (grave) paintRowSign(painter, scene, lanes, pictures, row, *grave);
    }
    if (scene.chart.rowRepeat) paintRowRepeat(painter, scene, *scene.chart.rowRepeat);
}

}  // namespace lacewright::app
