#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/base/extras.h"
#include "core/chart/grading.h"
#include "core/chart/row_list.h"
#include "core/stitch/catalogue.h"

// The chart as a plain value. Three counting systems meet here, so every name says which it is:
//   column  1-based from the RIGHT edge, as knitters number stitches on a right-side row
//   index   0-based position in Chart::rows, from the bottom
//   number  the row number a knitter reads, from 1; differs from index + 1 when only the rows of
//           one side are charted
namespace lacewright {

enum class Worked : std::uint8_t { Flat, InTheRound };
enum class Side : std::uint8_t { Right, Wrong };

// Whether every row is drawn, or every second one with a rule for the rows between.
enum class Uncharted : std::uint8_t {
    None,           // every row is drawn
    AsTheyPresent,  // between two drawn rows, work every stitch as it presents itself
    Purl,           // purl across (flat); knit across is Knit
    Knit
};

inline constexpr int kMaxWidth = 4000;       // columns
inline constexpr int kMaxRows = 4000;        // charted rows
inline constexpr int kMaxCells = 4'000'000;  // columns x rows
inline constexpr int kMaxRepeats = 64;       // in one chart
inline constexpr int kMaxSizes = 64;
inline constexpr int kMaxPoints = 256;
inline constexpr int kMaxTimes = 100'000;         // how often a repeat may be worked across
inline constexpr int kMaxNeedle = 100'000'000;    // stitches on a needle
inline constexpr int kMaxGauge = 1000;            // stitches or rows over 10 cm
inline constexpr int kMaxSubstitutions = 10'000;  // of one size
inline constexpr int kMaxOwnStitches = 1000;      // stitches that a chart defines itself
inline constexpr int kMaxTextLength = 20'000;     // characters in any one text

// A shift of a repeat's edges on one row, in columns, positive to the left.
struct Jog {
    int right = 0;  // shift of the right edge
    int left = 0;   // shift of the left edge
    Extras extras = {};
    bool operator==(const Jog&) const = default;
};

// Columns right..left inclusive of a repeat on one row.
struct Box {
    int right = 1;
    int left = 1;
    int width() const { return left - right + 1; }
    bool operator==(const Box&) const = default;
};

// A box of columns over a span of rows, worked n times across.
struct Repeat {
    std::string name;         // "A", "B" ...: what sizes and findings call it
    int right = 1;            // column of its right edge
    int left = 1;             // column of its left edge, >= right
    int firstRow = 0;         // row index, bottom
    int lastRow = 0;          // row index, top, inclusive
    std::map<int, Jog> jogs;  // by row index
    Extras extras;

    bool covers(int rowIndex) const { return rowIndex >= firstRow && rowIndex <= lastRow; }
    // Requires: covers(rowIndex).
    Box on(int rowIndex) const;
    bool operator==(const Repeat&) const = default;
};

// Rows that are worked again and again upward.
struct RowRepeat {
    int firstRow = 0;  // row index
    int lastRow = 0;   // row index, inclusive
    int grows = 0;     // stitches more (or fewer) after each time, by the designer's intent
    Extras extras = {};
    bool operator==(const RowRepeat&) const = default;
};

// A lettered place at the foot of the chart that sizes refer to.
struct Point {
    std::string name;
    int column = 1;
    Extras extras;
    bool operator==(const Point&) const = default;
};

// The columns between which a size works.
struct Reach {
    int start = 1;  // column it begins with on a right-side row
    int end = 1;    // column it ends with, >= start
    bool operator==(const Reach&) const = default;
};

// A reach of its own over a span of rows (shaping), and its own times if they differ there.
struct ReachChange {
    int firstRow = 0;  // row index
    int lastRow = 0;   // row index, inclusive
    Reach reach;
    Extras extras = {};
    bool operator==(const ReachChange&) const = default;
};

// Which edge of a size: its start is at the right, its end at the left.
enum class Edge : std::uint8_t { Start, End };

// A cell that one size works differently, because its edge parts the drawn stitch from its
// companion. Of the times the size works the cell, only the one nearest that edge is replaced.
struct Substitution {
    int row = 0;  // row index
    int column = 1;
    Edge edge = Edge::Start;
    std::string stitch;  // id, spanning as many cells as the one it replaces
    Extras extras = {};
    bool operator==(const Substitution&) const = default;
};

struct Size {
    std::string name;
    Reach reach;
    std::vector<ReachChange> changes;  // in row order, not overlapping
    std::map<std::string, int> times;  // full passes of each repeat, by repeat name
    std::optional<int> stitches;       // the count its designer expects on the needle for row 1
    std::vector<Substitution> substitutions;
    std::optional<double> body;  // centimetres around the body this size is for
    std::optional<int>
        shoulder;  // stitches of the shoulder that each of its shoulders is joined to
    Extras extras;

    // The reach on one row.
    Reach on(int rowIndex) const;
    bool operator==(const Size&) const = default;
};

// What is on the needle before row 1.
struct CastOn {
    int multiple = 0;  // 0: a fixed count, `plus`
    int plus = 0;
    Extras extras = {};
    bool operator==(const CastOn&) const = default;
};

// Stitches and rows over 10 cm; 0 when not known.
struct Gauge {
    double stitches = 0;
    double rows = 0;
    Extras extras = {};
    bool operator==(const Gauge&) const = default;
};

struct Chart {
    std::string name;
    std::string notes;
    std::string source;  // where a published chart comes from: title, author, year, place
    Worked worked = Worked::Flat;
    Side firstSide = Side::Right;  // side facing on row 1; always Right in the round
    Uncharted uncharted = Uncharted::None;
    std::optional<CastOn> castOn;
    Gauge gauge;
    StitchCataloguePtr stitches = builtInStitches();
    int width = 1;  // every row has this many cells
    RowList rows;
    std::vector<Repeat> repeats;
    std::optional<RowRepeat> rowRepeat;
    std::vector<Point> points;
    std::vector<Size> sizes;
    Grading grading;
    Extras extras;

    int height() const { return static_cast<int>(rows.size()); }
    const Row& row(int index) const { return *rows[static_cast<std::size_t>(index)]; }
    // Requires: 0 <= index < height().
    int rowNumber(int index) const {
        return uncharted == Uncharted::None ? index + 1 : 2 * index + 1;
    }
    // The charted row with this number, if it is charted.
    std::optional<int> indexOfRowNumber(int number) const;
    Side sideOf(int index) const;

    const Repeat* findRepeat(std::string_view name) const;
    const Size* findSize(std::string_view name) const;
    const Point* findPoint(std::string_view name) const;
    // The first point at that column, or null.
    const Point* pointAt(int column) const;

    // The same chart to a reader: catalogues compare by the stitches they hold.
    bool operator==(const Chart& other) const;
};

// A chart of knit stitches. Requires: sizes within the limits above.
Chart blankChart(int width, int height);

// Everything but the rows is the same in both: a check of one may reuse rows of the other.
bool sameFrame(const Chart& a, const Chart& b);

}  // namespace lacewright
