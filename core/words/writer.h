#pragma once

#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/words/row_text.h"

namespace lacewright {

struct WriteOptions {
    // Names of the sizes to write together, "S (M, L)"; empty: all of the chart's, or the whole
    // width of a chart without sizes.
    std::vector<std::string> sizes;
    WriterStyle style;
};

// One line of written rows. It stands for one charted row, for several that are worked alike, or
// for the rows between the charted ones.
struct WrittenLine {
    std::string label;              // "Row 1 (RS)", "Row 2 and all WS rows"
    std::vector<TextPiece> pieces;  // without the full stop
    std::string stated;             // "(41 sts)" where the row changes the count; may be empty
    std::vector<int> rowIndices;    // charted rows; empty for rows that are not charted
    std::vector<int> columns;       // what the pieces point at, see RowPhrases

    std::string text() const;  // "Row 1 (RS): k1, yo, k2tog. (4 sts)"
};

struct GlossaryEntry {
    std::string word;  // "k2tog"
    std::string meaning;
};

// A chart in written rows, proven to be the same knitting: read back, each charted row gives stitch
// by stitch what the chart's path works, for every size or every number of repeats.
struct WrittenChart {
    std::string title;
    std::vector<std::string> heading;  // "Cast on: 41", "Worked: flat", a line each
    std::vector<WrittenLine> lines;
    std::vector<GlossaryEntry> glossary;  // in the order of first use
    Terms terms = Terms::Us;

    std::string text() const;  // lines end in "\n"; what readWritten reads
    std::string html() const;  // a whole page
};

// Refuses an unknown size, a size that does not say how often a repeat is worked, a whole width
// with more than kMostNamedRepeats repeats on a row, and a row that no text says without doubt.
Result<WrittenChart> writeRows(const Chart& chart, const WriteOptions& options = {});

}  // namespace lacewright
