#pragma once

#include <cstdint>
#include <vector>

#include "core/chart/chart.h"

namespace lacewright {

// The stitches of a chart as a few small numbers, for statistics over its cells. Only stitches one
// cell wide take part: those the chart holds, the mirror images of them, and a yarn over and two
// leaning decreases that could be missing altogether. A cell without a stitch has a letter too.
struct Alphabet {
    using Letter = std::int8_t;
    static constexpr Letter kNone = -1;  // wide and covered cells
    static constexpr int kMaxLetters = 16;

    std::vector<StitchIndex> stitches;  // by letter, the most frequent first
    std::vector<Letter> mirrors;        // by letter
    std::vector<bool> centred;          // by letter: a decrease that leans to neither side
    std::vector<double> shares;    // of each letter among the figures; for letter 0 of all cells
    std::vector<Letter> letterOf;  // by stitch index
    Letter noStitch = kNone;       // the letter of cells without a stitch, if there are any

    // The ground of the fabric: the most frequent stitch. Every other stitch is a figure.
    static constexpr Letter kGround = 0;

    int size() const { return static_cast<int>(stitches.size()); }
    Letter at(const Chart& chart, int row, int column) const {
        return letterOf[chart.row(row).at(column)];
    }
};

Alphabet alphabetOf(const Chart& chart);

// Letters of a span of rows, x = column - 1, y = row index - firstRow.
class LetterGrid {
 public:
    LetterGrid(const Chart& chart, const Alphabet& alphabet, int firstRow, int lastRow);

    int width() const { return width_; }
    int height() const { return height_; }
    int firstRow() const { return firstRow_; }
    int lastRow() const { return firstRow_ + height_ - 1; }
    bool holds(int row) const { return row >= firstRow_ && row <= lastRow(); }
    Alphabet::Letter at(int x, int y) const {
        return letters_[static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
                        static_cast<std::size_t>(x)];
    }
    bool isFigure(int x, int y) const {
        return at(x, y) > Alphabet::kGround && at(x, y) != noStitch_;
    }

 private:
    int width_ = 0;
    int height_ = 0;
    int firstRow_ = 0;
    Alphabet::Letter noStitch_ = Alphabet::kNone;
    std::vector<Alphabet::Letter> letters_;
};

}  // namespace lacewright
