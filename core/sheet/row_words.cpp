#include "core/sheet/row_words.h"

#include <algorithm>
#include <vector>

#include "core/base/text.h"
#include "core/count/path.h"

namespace lacewright {
namespace {

// "knit 3", but "knit 2 together 3 times".
std::string timesInWords(const Stitch& stitch, const std::string& words, int times) {
    const bool counts = stitch.kind == StitchKind::Plain && words.find(' ') == std::string::npos;
    if (counts) return words + " " + std::to_string(times);
    return times == 1 ? words : words + " " + std::to_string(times) + " times";
}

std::string segmentInWords(const Chart& chart, const Row& row, const Segment& segment, Side side) {
    std::vector<std::string> parts;
    const bool rightToLeft = side == Side::Right;
    const int step = rightToLeft ? 1 : -1;
    StitchIndex last = kCovered;
    int times = 0;
    const auto finish = [&] {
        if (times > 0) {
            parts.push_back(timesInWords((*chart.stitches)[last],
                                         stitchInWords(*chart.stitches, last, side), times));
        }
        times = 0;
    };
    const int begin = rightToLeft ? segment.first : segment.last;
    for (int column = begin; column >= segment.first && column <= segment.last; column += step) {
        const StitchIndex stitch = row.at(column);
        if (stitch == kCovered || (*chart.stitches)[stitch].kind == StitchKind::NoStitch) continue;
        if (stitch != last) finish();
        last = stitch;
        ++times;
    }
    finish();
    std::string words = join(parts, ", ");
    if (segment.repeat < 0 || words.empty()) return words;
    return "[repeat " + chart.repeats[static_cast<std::size_t>(segment.repeat)].name + ": " +
           words + "]";
}

}  // namespace

std::string stitchInWords(const StitchCatalogue& stitches, StitchIndex stitch, Side side) {
    const Stitch& drawn = stitches[stitch];
    if (side == Side::Right || drawn.wrongSide.abbreviation.empty()) return drawn.name;
    // The wrong-side reading is the right-side reading of another stitch: find its name.
    for (std::size_t i = 1; i <= stitches.size(); ++i) {
        const Stitch& other = stitches[static_cast<StitchIndex>(i)];
        if (other.rightSide.abbreviation == drawn.wrongSide.abbreviation) return other.name;
    }
    return drawn.wrongSide.abbreviation;
}

std::string rowsInWords(const Chart& chart, int firstRow, int lastRow) {
    std::string words = chart.worked == Worked::Flat ? "row" : "round";
    const std::string first = std::to_string(chart.rowNumber(firstRow));
    if (firstRow == lastRow) return words + " " + first;
    return words + "s " + first + "\u2013" + std::to_string(chart.rowNumber(lastRow));
}

std::string rowInWords(const Chart& chart, int row) {
    const Side side = chart.sideOf(row);
    std::string words =
        (chart.worked == Worked::Flat ? "Row " : "Round ") + std::to_string(chart.rowNumber(row));
    if (chart.worked == Worked::Flat)
        words += side == Side::Right ? ", right side" : ", wrong side";
    Path path = pathOn(chart, row, nullptr);
    if (side == Side::Wrong) std::reverse(path.begin(), path.end());
    std::vector<std::string> parts;
    for (const Segment& segment : path) {
        std::string part = segmentInWords(chart, chart.row(row), segment, side);
        if (!part.empty()) parts.push_back(std::move(part));
    }
    return words + ": " + (parts.empty() ? "no stitch" : join(parts, ", ")) + ".";
}

}  // namespace lacewright
