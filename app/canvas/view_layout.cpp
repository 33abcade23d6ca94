#include "app/canvas/view_layout.h"

#include <algorithm>

namespace lacewright::app {
namespace {

int downTo(int value, int step) {
    return value - value % step;
}

// One axis of scrolledTo.
int scrolledAlong(int scrolled, int window, int range, int from, int length, int spare) {
    const int room = std::clamp((window - length) / 2, 0, spare);
    const int nearest = from - room;                     // further on hides the beginning
    const int farthest = from + length + room - window;  // less far hides the end
    const int wanted = farthest > nearest ? nearest : std::clamp(scrolled, farthest, nearest);
    return std::clamp(wanted, 0, range);
}

}  // namespace

ViewLayout layOut(QSize view, QSize sheet, const MarginSizes& margins, int step) {
    const int width = std::clamp(view.width() - margins.left - margins.right, 0, sheet.width());
    const int height = std::clamp(view.height() - margins.foot, 0, sheet.height());
    const int spareX = std::max(0, view.width() - margins.left - margins.right - width);
    const int spareY = std::max(0, view.height() - margins.foot - height);
    const int x = downTo(spareX / 2 + margins.left, step);
    const int y = downTo(spareY / 2, step);

    ViewLayout layout;
    layout.grid = QRect(x, y, width, height);
    layout.left = QRect(x - margins.left, y, margins.left, height);
    layout.right = QRect(x + width, y, margins.right, height);
    layout.foot =
        QRect(layout.left.left(), y + height, margins.left + width + margins.right, margins.foot);
    layout.scrollRange = sheet - QSize(width, height);
    return layout;
}

QPoint scrolledTo(const ViewLayout& layout, QPoint scrolled, const QRect& part, int spare) {
    return {scrolledAlong(scrolled.x(), layout.grid.width(), layout.scrollRange.width(),
                          part.left(), part.width(), spare),
            scrolledAlong(scrolled.y(), layout.grid.height(), layout.scrollRange.height(),
                          part.top(), part.height(), spare)};
}

}  // namespace lacewright::app
