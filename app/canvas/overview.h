#pragma once

#include <QImage>
#include <vector>

#include "app/canvas/view_scene.h"

class QPainter;

namespace lacewright::app {

// The chart seen from afar: one pixel a cell, coloured by what kind of stitch it holds, stretched
// to the size of the cells. Remembers the rows it has drawn and draws only those anew that changed.
class Overview {
 public:
    // Draws the part that `exposed` touches; both in device pixels of the view.
    void paint(QPainter& painter, const ViewScene& scene, const QRect& exposed);

 private:
    void update(const ViewScene& scene);
    void drawRow(int row, const Chart& chart);

    QImage image_;  // row 0 lies at its bottom, column 1 at its right
    RowList rows_;  // drawn in the image
    StitchCataloguePtr stitches_;
    ChartColours colours_;
    std::vector<QRgb> inks_;  // by stitch index
};

}  // namespace lacewright::app
