#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/words/row_phrases.h"
#include "core/words/unrolled_row.h"

// Are a charted row and a written one the same stitches?
//
// For a size both are plain sequences and are compared as such. Without a size both have the form
// u v^n w for a free n, with a box v of the chart and a starred stretch v' of the text. When box
// and stretch take as many stitches, comparing n = 1 and n = 2 proves every n >= 1: let u' = u t
// (else change places). Equality at n gives v^n w = t v'^n w'. Equality at n + 1 gives v v^n w = t
// v'^(n+1) w', so v t v'^n w' = t v' v'^n w' and, v t and t v' being equally long, v t = t v'. Then
// equality at n carries over to n + 1, and back, by taking v off the front. With several boxes,
// each beside its own stretch, the same holds for one count while the others stand still, so all
// combinations of 1 and 2 prove all others. A repeat that stands
// rotated in the text, "k1, *yo, k2tog; ..", is proven alike. When their widths differ the text's
// count must follow from the stitches of the row: it is solved for each n; n = 1..kTriedRepeats are
// compared, enough for equal edges of up to that many repeats.
namespace lacewright {

inline constexpr int kTriedRepeats = 4;

// What the size works on the row, stitch by stitch, with the column of each. `open`: how often the
// repeats are worked without a size. Nothing when that is more than kMostUnrolled stitches.
struct ChartedStitch {
    std::string key;  // as in UnrolledStitch
    int takes = 1;
    int makes = 1;
    int column = 1;
};
std::optional<std::vector<ChartedStitch>> chartedStitches(const Chart& chart, int rowIndex,
                                                          const Size* size, const OpenTimes& open,
                                                          StitchWords& words);

// The two are the same work, stitch by stitch.
bool sameWork(const std::vector<ChartedStitch>& charted,
              const std::vector<UnrolledStitch>& written);

// The written row in its usual reading is the charted one for every one of the sizes, or without
// sizes for every number of repeats. Size i of the list is size i of the pattern, which `row` is
// of.
bool provenSame(const Chart& chart, int rowIndex, const std::vector<const Size*>& sizes,
                StitchWords& words, const WrittenPattern& pattern, const WrittenRow& row);

}  // namespace lacewright
