#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/chart/chart.h"

namespace lacewright {

enum class Severity : std::uint8_t {
    Note,     // worth knowing
    Warning,  // can be knitted, but will surprise
    Fault     // cannot be knitted as drawn
};

// A stitch drawn over whatever the cell holds now.
struct ReplaceStitch {
    int row = 0;  // row index
    int column = 1;
    std::string stitch;  // id, spanning as many cells as the one it replaces
    bool operator==(const ReplaceStitch&) const = default;
};
// The cells of a row from column `first` on, rewritten to the end of the row (a stitch put in or
// taken out moves its neighbours). As many cells as the chart is wide.
struct RewriteRow {
    int row = 0;  // row index
    std::vector<StitchIndex> cells;
    bool operator==(const RewriteRow&) const = default;
};
struct SubstituteForSize {
    std::string size;
    Substitution substitution;
    bool operator==(const SubstituteForSize&) const = default;
};
// A size begins or ends at another column.
struct MoveEdge {
    std::string size;
    Edge edge = Edge::Start;
    int column = 1;
    bool operator==(const MoveEdge&) const = default;
};
// A repeat is worked another number of times by a size.
struct ChangeTimes {
    std::string size;
    std::string repeat;
    int times = 1;
    bool operator==(const ChangeTimes&) const = default;
};
struct ChangeCastOn {
    CastOn castOn;
    bool operator==(const ChangeCastOn&) const = default;
};
// The count a size's designer expects is corrected.
struct ChangeExpected {
    std::string size;
    int stitches = 0;
    bool operator==(const ChangeExpected&) const = default;
};
using MendStep = std::variant<ReplaceStitch, RewriteRow, SubstituteForSize, MoveEdge, ChangeTimes,
                              ChangeCastOn, ChangeExpected>;

// A cell that a mend draws anew.
struct RedrawnCell {
    int row = 0;  // row NUMBER as the knitter reads it
    int column = 1;
    std::string stitch;  // id of what it then holds
    bool operator==(const RedrawnCell&) const = default;
};

// A written row as a mend leaves it.
struct ReworkedRow {
    int row = 0;                        // row NUMBER as the knitter reads it
    std::vector<std::string> stitches;  // ids, in working order, what repeats once
    bool operator==(const ReworkedRow&) const = default;
};

// A small edit that takes a finding away; applied in one undo step by applyMend (mend.h).
struct Mend {
    std::string label;   // "Draw a yarn over in row 5, column 7"
    std::string reason;  // "mirror cell column 12 is a yarn over"; may be empty
    std::vector<MendStep> steps;
    std::vector<RedrawnCell> redrawn{};   // all that differ afterwards; none for mends of a size
    std::vector<ReworkedRow> reworked{};  // of written rows those that change; none in a chart
    bool operator==(const Mend&) const = default;
};

// A cell that may be the wrong one, most likely first in a list. It may stand in the row below the
// one that fails.
struct Suspect {
    int row = 0;  // row NUMBER as the knitter reads it
    int column = 1;
    double weight = 0;     // share of the suspicion, 0..1
    std::string rather{};  // id of the stitch the rest of the chart suggests; may be empty
    bool operator==(const Suspect&) const = default;
};

// Something about a chart, as data. Row 0 means the chart as a whole.
struct Finding {
    std::string rule;  // stable id: "continuity", "size-edge" ...
    Severity severity = Severity::Note;
    int row = 0;                     // row NUMBER as the knitter reads it
    std::vector<int> columns;        // columns concerned, ascending; empty: the whole row
    std::vector<std::string> sizes;  // sizes concerned; empty: every one
    std::string message;             // one sentence for a knitter
    std::vector<Suspect> suspects;
    std::vector<Mend> mends;
    std::vector<Finding> folded;  // what follows from the same cause

    bool operator==(const Finding&) const = default;
};

}  // namespace lacewright
