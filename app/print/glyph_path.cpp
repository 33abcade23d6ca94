#include "app/print/glyph_path.h"

#include <QTransform>
#include <QtMath>
#include <cmath>

#include "core/sheet/path_data.h"

namespace lacewright::app {
namespace {

// An elliptic arc as SVG describes it, ends and radii; SVG 1.1, appendix F.6.5.
void arcTo(QPainterPath& path, const PathStep& step, QPointF end) {
    const auto& n = step.numbers;
    double rx = std::abs(n[0]);
    double ry = std::abs(n[1]);
    const QPointF start = path.currentPosition();
    if (rx == 0 || ry == 0 || start == end) {
        path.lineTo(end);
        return;
    }
    QTransform turn;
    turn.rotate(n[2]);
    // The half chord in the ellipse's own axes, the ellipse shrunk to a circle of radius 1.
    const QPointF half = turn.inverted().map((start - end) / 2);
    QPointF h(half.x() / rx, half.y() / ry);
    const double length = std::hypot(h.x(), h.y());
    if (length > 1) {  // radii too small for the chord grow until they reach
        rx *= length;
        ry *= length;
        h /= length;
    }
    const double distance = std::sqrt(std::max(0.0, 1 / QPointF::dotProduct(h, h) - 1));
    const double side = (n[3] != 0) != (n[4] != 0) ? 1 : -1;
    const QPointF centre(side * distance * h.y(), -side * distance * h.x());
    const double from = std::atan2(h.y() - centre.y(), h.x() - centre.x());
    double sweep = std::atan2(-h.y() - centre.y(), -h.x() - centre.x()) - from;
    if (n[4] != 0 && sweep < 0) sweep += 2 * M_PI;
    if (n[4] == 0 && sweep > 0) sweep -= 2 * M_PI;

    QPainterPath unit;
    const QRectF circle(-1, -1, 2, 2);
    unit.arcMoveTo(circle, -qRadiansToDegrees(from));
    unit.arcTo(circle, -qRadiansToDegrees(from), -qRadiansToDegrees(sweep));
    const QPointF middle = (start + end) / 2;
    const QPointF shift = turn.map(QPointF(centre.x() * rx, centre.y() * ry)) + middle;
    QTransform place;
    place.translate(shift.x(), shift.y());
    place.rotate(n[2]);
    place.scale(rx, ry);
    const QPainterPath arc = place.map(unit);
    for (int i = 1; i + 2 < arc.elementCount(); i += 3) {
        path.cubicTo(arc.elementAt(i), arc.elementAt(i + 1),
                     i + 3 == arc.elementCount() ? end : QPointF(arc.elementAt(i + 2)));
    }
}

class Pen {
 public:
    explicit Pen(QPainterPath& path) : path_(path) {}

    void draw(const PathStep& step) {
        const QPointF at = path_.currentPosition();
        const auto point = [&](std::size_t i) {
            return at + QPointF(step.numbers[i], step.numbers[i + 1]);
        };
        QPointF control = at;
        switch (step.letter) {
            case 'm':
                path_.moveTo(point(0));
                break;
            case 'l':
                path_.lineTo(point(0));
                break;
            case 'h':
                path_.lineTo(at + QPointF(step.numbers[0], 0));
                break;
            case 'v':
                path_.lineTo(at + QPointF(0, step.numbers[0]));
                break;
            case 'c':
                control = point(2);
                path_.cubicTo(point(0), control, point(4));
                break;
            case 's':
                control = point(0);
                path_.cubicTo(reflected("cs", at), control, point(2));
                break;
            case 'q':
                control = point(0);
                path_.quadTo(control, point(2));
                break;
            case 't':
                control = reflected("qt", at);
                path_.quadTo(control, point(0));
                break;
            case 'a':
                arcTo(path_, step, point(5));
                break;
            default:
                path_.closeSubpath();
        }
        lastControl_ = control;
        last_ = step.letter;
    }

 private:
    // The last control point seen from the other side, after a step of these letters.
    QPointF reflected(const char* letters, QPointF at) const {
        return last_ == letters[0] || last_ == letters[1] ? 2 * at - lastControl_ : at;
    }

    QPainterPath& path_;
    QPointF lastControl_;
    char last_ = 'm';
};

}  // namespace

QPainterPath glyphPath(const GlyphStroke& stroke) {
    const auto steps = parsePathTail(stroke.tail);
    QPainterPath path;
    if (!steps) return path;
    path.moveTo(stroke.x, stroke.y);
    Pen pen(path);
    for (const PathStep& step : *steps) pen.draw(step);
    return path;
}

}  // namespace lacewright::app
