#include "app/canvas/row_strip.h"

#include <algorithm>
#include <cassert>
#include <cstring>

namespace lacewright::app {
namespace {

constexpr int kChunk = 4;  // pixels that the processor copies at once

// Copies a line of so many pixels, at least kChunk: the last chunk may overlap the one before.
void copyLine(QRgb* to, const QRgb* from, int pixels) {
    int at = 0;
    for (; at + kChunk <= pixels; at += kChunk)
        std::memcpy(to + at, from + at, kChunk * sizeof *to);
    if (at < pixels) std::memcpy(to + pixels - kChunk, from + pixels - kChunk, kChunk * sizeof *to);
}

// Repeats the first `pixels` of a line to the right.
void repeatLine(QRgb* line, int pixels, int times) {
    const int whole = pixels * times;
    for (int done = pixels; done < whole;) {
        const int next = std::min(done, whole - done);
        std::memcpy(line + done, line, static_cast<std::size_t>(next) * sizeof *line);
        done += next;
    }
}

}  // namespace

void RowStrip::begin(int cells, int cell) {
    const int width = cells * cell;
    if (cell_ != cell || image_.width() < width) image_ = QImage(width, cell, QImage::Format_RGB32);
    cell_ = cell;
    width_ = 0;
}

void RowStrip::append(const TilePixels& tile, int from, int times) {
    assert(width_ + times * cell_ <= image_.width());
    const auto stride = image_.bytesPerLine() / static_cast<qsizetype>(sizeof(QRgb));
    QRgb* to = reinterpret_cast<QRgb*>(image_.bits()) + width_;
    const QRgb* line = tile.pixels + from;
    for (int y = 0; y < cell_; ++y, to += stride, line += tile.stride) {
        if (cell_ >= kChunk) {
            copyLine(to, line, cell_);
        } else {
            std::copy_n(line, cell_, to);
        }
        if (times > 1) repeatLine(to, cell_, times);
    }
    width_ += times * cell_;
}

}  // namespace lacewright::app
