#pragma once

#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/words/row_alignment.h"
#include "core/words/written.h"

namespace lacewright {

enum class RowContrast {
    Stitches,     // both are there and differ
    Side,         // the row is worked from the other side
    NotInText,    // charted, or said to lie between charted rows, but not written
    NotInChart,   // written, but not charted
    NotCountable  // as written, the row cannot take what the chart takes; shown as near as it comes
};

// A stitch of one side or a gap, beside its counterpart.
struct ContrastedStitch {
    AlignedStep::Kind kind = AlignedStep::Kind::Same;
    std::string charted;  // as worded on the row's side; empty for a gap
    std::string written;
    int column = 0;  // of the charted stitch, or of the one it would stand before; 0: row's end
    Place place;     // of the written word, or of the one it would stand before
    bool operator==(const ContrastedStitch&) const = default;
};

struct RowDifference {
    int number = 1;
    RowContrast contrast = RowContrast::Stitches;
    std::vector<std::string> sizes;  // where it differs; the stitches are those of the first
    std::string repeatsWorked;       // without sizes: how often in the example, "3 times"
    std::vector<ContrastedStitch> stitches;  // the whole row, aligned, in working order

    // Where they part; the end when they do not.
    std::size_t firstDifference() const;
    // What to replace, put in or leave out to turn either into the other: cells of the chart or
    // words of the text, each once.
    std::vector<ContrastedStitch> changes() const;
};

struct Comparison {
    std::vector<RowDifference> differences;  // by row number
    bool same() const { return differences.empty(); }
};

// Proves that chart and text are the same knitting: for the size named, for all of the chart's, or,
// in a chart without sizes, for every number of repeats (the proof stands in row_proof.h).
// Refuses an unknown size and a text whose sizes are not those of the chart.
Result<Comparison> compareRows(const Chart& chart, const WrittenPattern& pattern,
                               const std::string& size = {});

}  // namespace lacewright
