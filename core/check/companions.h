#pragma once

#include <vector>

#include "core/chart/chart.h"
#include "core/count/path.h"

// Which decrease makes up for which increase on one row.
//
// A stitch that makes m loops more than it takes brings m increase units, one that makes m fewer
// brings m decrease units: a double decrease goes with two yarn overs. Among all pairings the one
// is chosen that pairs the most units, then has the smallest sum of distances in columns, then has
// no two pairs crossing each other, then leaves the units unpaired that are read last.
//
// Mathematics. Let F(c) be what the columns 1..c make less what they take. On a line, the smallest
// sum of distances over all pairings of a balanced row is the sum of |F|; pairing each unit with
// the last open one of the other kind (a stack) reaches it without crossings, and such a pairing is
// unique. On a circle (a repeat, whose left edge meets its right edge in the next time) it is the
// smallest sum of |F - c| over the constants c, reached where c is a weighted median of F; the
// circle is then cut where F = c. An unbalanced row leaves units of its surplus unpaired: dynamic
// programming over stitches and units left out (with hundreds of them: the stack alone).
// Sources, from memory: Werman, Peleg, Melter and Kong, "Bipartite graph matching for points on a
// line or a circle", 1986; Rabin, Delon and Gousseau, "Transportation distances on the circle",
// 2011; Aggarwal et al., "Efficient minimum cost matching using quadrangle inequality", 1995.
//
// Columns count from the right; a wide stitch stands in its rightmost column. Stitches that bind
// off or cast on are not shaping and have no companion.
namespace lacewright {

// True when no stitch of the row changes its count without ever having a companion: none is bound
// off or cast on.
bool allHaveCompanions(const Row& row);

struct CompanionPair {
    int increase = 1;  // column
    int decrease = 1;  // column
    // Columns from the increase to the decrease, positive to the left, over the edge of the repeat
    // where the pair is acrossRepeats.
    int offset = 0;
    bool acrossRepeats = false;  // the decrease belongs to the increase of the neighbouring time
    bool operator==(const CompanionPair&) const = default;
};

struct Companions {
    std::vector<CompanionPair> pairs;  // by column of the increase
    std::vector<int> orphans;          // columns of units without partner, ascending, one per unit
    bool ambiguous = false;            // another pairing is just as short: `*yo, k2tog*`
    bool operator==(const Companions&) const = default;
};

// Every repeat is paired within itself as a circle, every stretch between repeats as a line.
// Stretches outside repeats that make up for each other (one more at the right edge, one fewer at
// the left one) are paired over the repeats between them, as drawn once.
// Requires: the path fits the row. Cost: the number of columns; for an unbalanced stretch also
// shaping stitches x surplus, in a repeat times the range of F.
Companions companionsOn(const Row& row, const Path& path, const StitchCatalogue& stitches);
// Over the whole width of the chart. Requires: 0 <= rowIndex < height.
Companions companionsOn(const Chart& chart, int rowIndex);

// The orphans alone, which is cheaper: columns, ascending, one for each unit.
std::vector<int> orphansOn(const Row& row, const Path& path, const StitchCatalogue& stitches);
std::vector<int> orphansOn(const Chart& chart, int rowIndex);

// How many loops the fabric to the left of `column` is pushed to the left by the columns
// first..column of this row (F above). Requires: 1 <= first <= column <= width.
int displacement(const Row& row, int first, int column);

// How far the columns first..last of a row push their loops to the left, in loops, on the average
// of the columns; over many rows the fabric leans that way.
double bias(const Row& row, int first, int last);
// The average over all charted rows of a repeat, or of the whole width without one. Plain rows
// count too, so do the uncharted ones between.
double bias(const Chart& chart, const Repeat* repeat);

}  // namespace lacewright
