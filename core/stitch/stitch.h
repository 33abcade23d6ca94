#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "core/base/extras.h"

namespace lacewright {

// The way the top loop of a decrease, an increase or a crossing leans, seen from the right side.
enum class Lean : std::uint8_t { None, Right, Left, Centred };

// What family a stitch belongs to, for palettes, rules and wording.
enum class StitchKind : std::uint8_t {
    Plain,     // knit, purl, through the back loop: the ground of the fabric
    YarnOver,  // a hole: takes nothing, makes loops from the yarn alone
    Increase,  // makes more than it takes, without a hole
    Decrease,  // takes more than it makes
    Gather,    // takes several and makes as many out of them
    Cross,     // twisted and crossed stitches
    Slip,      // moved without being worked
    Texture,   // bobble and its kin
    BindOff,   // takes loops and leaves none
    CastOn,    // makes loops at an edge
    NoStitch,  // exists only on paper
    Unknown    // named in a file but defined nowhere; counted as one into one
};

// How a stitch is written on one side of the work.
struct SideWording {
    std::string
        abbreviation;  // as in written rows: "k2tog"; empty when it is not worked on this side
    std::string instruction;  // a whole sentence for the legend, without the full stop
    Extras extras = {};

    bool operator==(const SideWording&) const = default;
};

// One pen movement of a glyph. Coordinates are in cell units: a cell is kCellUnits wide and high, x
// to the right, y downward, (0,0) the upper left corner of the leftmost cell the stitch spans.
struct GlyphStroke {
    int x = 0;  // where the pen is set down
    int y = 0;
    std::string tail;     // SVG path data, relative commands only (l h v c q a z): at home anywhere
    bool filled = false;  // filled shape without outline, or else an outline without fill
    Extras extras = {};

    bool operator==(const GlyphStroke&) const = default;
};

inline constexpr int kCellUnits = 20;

// One thing a knitter does: it takes loops off the left needle, makes loops on the right one, and
// spans cells of the chart. Shown as seen from the right side.
struct Stitch {
    std::string id;    // stable name in files and on the command line: "k2tog"
    std::string name;  // for people: "knit 2 together"
    int takes = 1;     // 0..kMaxLoops
    int makes = 1;     // 0..kMaxLoops
    int span = 1;      // cells, 1..kMaxSpan
    Lean lean = Lean::None;
    StitchKind kind = StitchKind::Plain;
    std::string mirror;  // id of the stitch seen in a mirror; empty when it is its own mirror
    SideWording rightSide;
    SideWording wrongSide;
    std::vector<GlyphStroke> glyph;
    bool shaded = false;  // the cell is drawn on a grey ground (no stitch)
    std::string source;   // where takes, makes and meaning come from
    Extras extras = {};

    int net() const { return makes - takes; }
    bool operator==(const Stitch&) const = default;
};

inline constexpr int kMaxIdLength = 64;  // bytes
inline constexpr int kMaxLoops = 60;
inline constexpr int kMaxSpan = 60;

}  // namespace lacewright
