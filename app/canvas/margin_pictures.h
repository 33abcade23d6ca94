#pragma once

#include <QFont>
#include <QImage>
#include <QRect>
#include <unordered_map>

#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// What stands in the margin as often as there are rows: numbers and the signs of findings. Setting
// a number in type takes many times as long as copying its picture, so every one is set once, on
// the ground of the margin. Nothing else may stand where a picture goes, as it is opaque.
class MarginPictures {
 public:
    // `height`: of the place of a number. Forgets everything when anything differs.
    void setStyle(const ViewScene& scene, int height);

    // Draws a number upright in the middle of `place`, strong where it is bold and dark. Requires:
    // `place` has the height of the style; `across` is Qt::AlignRight or Qt::AlignHCenter, and
    // always the same.
    void paintNumber(QPainter& painter, const QRect& place, Qt::AlignmentFlag across, int number,
                     bool strong);
    // Requires: a pixel around the square is free as well.
    void paintSign(QPainter& painter, const ViewScene& scene, Severity severity,
                   const QRect& square);

 private:
    QImage numberPicture(Qt::AlignmentFlag across, int number, bool strong) const;

    QFont font_;
    ChartColours colours_;
    double scale_ = 0;
    int height_ = 0;
    std::unordered_map<int, QImage> numbers_[2];  // quiet, strong
    std::unordered_map<int, QImage> signs_;       // by severity
};

}  // namespace lacewright::app
