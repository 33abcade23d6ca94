#pragma once

#include <QFont>
#include <QPoint>
#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

#include "app/canvas/chart_geometry.h"
#include "app/canvas/colours.h"
#include "app/canvas/view_layout.h"
#include "core/check/check.h"

namespace lacewright::app {

// Everything a painter of the view needs to know, gathered for one repaint. Refers to what the view
// owns; copied nowhere.
struct ViewScene {
    const Chart& chart;
    const Report& report;
    const ChartColours& colours;
    const ChartGeometry& geometry;
    const ViewLayout& layout;
    QPoint scrolled;               // position of the sheet
    double scale = 1;              // device pixels in a device-independent pixel
    QFont font;                    // of numbers and labels, sized in device pixels
    const Size* chosen = nullptr;  // the size looked at
    Cell cursor;
    CellArea selection;
    bool hasSelection = false;
    bool hasFocus = false;
    bool showsCompanions = false;  // of all rows
    std::optional<Cell> hovered;   // under the pointer

    // Where the sheet's (0, 0) lies in the view.
    QPoint origin() const { return layout.origin(scrolled); }
    // A length in device-independent pixels as whole device pixels, at least 1.
    int px(double length) const {
        return std::max(1, static_cast<int>(std::lround(length * scale)));
    }
};

// The findings of one row, by its number as the knitter reads it; number 0 gives those of the chart
// as a whole. Logarithmic in the number of findings.
std::span<const Finding> findingsOfRow(const Report& report, int number);

// The gravest severity among findings; nothing for none.
std::optional<Severity> gravest(std::span<const Finding> findings);

}  // namespace lacewright::app
