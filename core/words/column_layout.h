#pragma once

#include <vector>

namespace lacewright {

// One stitch of a row that is to stand in columns.
struct LaidStitch {
    int takes = 1;
    int makes = 1;
    int span = 1;    // cells
    int column = 0;  // of its rightmost cell, from 1 at the right edge; found by the layout
};

// From the right edge.
using LaidRow = std::vector<LaidStitch>;

// Finds the columns of every stitch, rows from the bottom, so that a stitch stands as near as can
// be to the loops it takes and to the stitches that take its own: the sum of the sideways distances
// is made small row by row, exactly for a row between two others that stand, in a few sweeps over
// the chart. Rows narrower than the widest get gaps, which are no-stitch cells on paper.
// Gives the width, that of the widest row. Very large charts are only set flush to the right.
int layOut(std::vector<LaidRow>& rows);

}  // namespace lacewright
