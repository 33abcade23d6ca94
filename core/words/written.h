#pragma once

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/chart/chart.h"
#include "core/words/token.h"

// Written rows as a tree. Stitches stand in working order: the first is the first one worked, on
// wrong-side rows too.
namespace lacewright {

// A number that may differ from size to size: "3" or "3 (4, 5)".
struct Figure {
    std::vector<int> bySize = {1};  // one for all sizes, or one per size

    Figure() = default;
    explicit Figure(int value) : bySize{value} {}
    // `size` counts from 0.
    int of(std::size_t size) const {
        return bySize[bySize.size() == 1 ? 0 : std::min(size, bySize.size() - 1)];
    }
    bool operator==(const Figure&) const = default;
};

struct Element;
using Elements = std::vector<Element>;

// Several loops worked as one thing, some times over: "k3", "k2tog".
struct Working {
    std::string term;  // as the vocabulary spells it
    int takes = 1;
    int makes = 1;        // negative for what only passes over: "psso" takes 0, makes -1
    std::string rightId;  // stitch of the catalogue when worked on a right-side row; may be empty
    std::string wrongId;  // and on a wrong-side row
    Figure count;
};

// The term of increases or decreases whose places are not said.
inline constexpr std::string_view kEvenly = "evenly";

// The term of what lets the yarn overs of the row below fall, "dropping extra loops".
inline constexpr std::string_view kDropsOvers = "drop overs";

// "[k2tog, yo] 3 times"
struct Group {
    Elements body;
    Figure times;
    std::optional<Figure> orTimes = {};  // "rep from * 3 times" may also mean 3 in all
    bool starred = false;                // a repeat of the pattern rather than a bracket
};

// "(k1, yo, k1) in next st": everything into the same stitches.
struct IntoOne {
    Elements body;
    int takes = 1;
};

// What a stretch may go up to instead of the row's end.
// Turned: where an earlier short row was turned, "to wrapped st".
// Made: "until there are 14 sts on right needle".
enum class Landmark { None, Marker, Centre, BoundOff, Turned, Made };

// A stretch worked as often as the row has room: "*..; rep from * to last 2 sts", "k to end".
struct Stretch {
    Elements body;
    std::optional<Figure>
        leaves;                   // stitches that must be left after it; none: what follows says it
    Elements lastTime;            // worked once more at the end in this form, when not empty
    bool starred = false;         // a repeat of the pattern rather than "k to end"
    bool breaksAnywhere = false;  // a rib or ground that may stop in the middle of its body
    std::optional<std::size_t> named;  // "A times": which of WrittenPattern::counts
    Landmark to = Landmark::None;      // "k to m": how far, the markers say
    Figure before{0};                  // "k to 2 sts before m"
    Figure stitches{1};                // for Centre: "to centre 3 sts"; for Made: how many
    // "inc evenly to 36 sts": worked so often that the whole row makes this many.
    std::optional<Figure> total = {};
};

// Things that count nothing: markers, turning, where the yarn lies.
struct Aside {
    std::string term;
    int marks = 0;  // for a bare "**": how many stars
};

struct Reading {
    std::string meaning;  // "3 times in all"
    Elements elements;
};

// Words that may be understood in several ways; the first reading is the usual one.
struct Choice {
    std::vector<Reading> readings;
};

struct Element {
    Place place;
    std::variant<Working, Group, IntoOne, Stretch, Aside, Choice> what;
};

// How many elements there are, those within others included.
std::size_t elementCount(const Elements& elements);

struct WrittenRow {
    int number = 1;     // as the knitter reads it; 0 and less for set-up rows before row 1
    std::string label;  // "Row 3", "Rnd 1", "Set-up row"
    Side side = Side::Right;
    Elements elements;
    Elements unsettled = {};            // "k to m" as it is said, where `elements` say how far
    std::optional<Figure> statedCount;  // "(41 sts)": stitches after the row
    Place statedPlace;
    Place place;  // its text; of the first printing when several rows share one text
    std::vector<std::size_t> sizes = {};  // "size L only": counted from 0; empty: all of them

    bool isFor(std::size_t size) const {
        return sizes.empty() || std::find(sizes.begin(), sizes.end(), size) != sizes.end();
    }
};

// Before row 1: `plus` stitches, or multiple * r + plus, or plus and so many for each of the counts
// that the pattern names.
struct WrittenCastOn {
    Figure multiple{0};
    Figure plus{0};
    Place place = {};
    std::vector<int> forEach = {};  // by WrittenPattern::counts; may be shorter

    // With named counts: of what all of them are multiples.
    CastOn of(std::size_t size) const {
        const int shared = std::accumulate(forEach.begin(), forEach.end(), 0,
                                           [](int a, int b) { return std::gcd(a, b); });
        return {shared > 0 ? shared : multiple.of(size), plus.of(size)};
    }
};

struct OwnStitch {
    std::string name;
    int takes = 1;
    int makes = 1;
    Place place;
};

// "Rep rows 3 and 4 five more times", said after row `after`.
struct RowsAgain {
    int after = 0;  // row number
    int first = 1;
    int last = 1;
    Figure times;                  // more times, after they have been worked once
    std::optional<Figure> until;   // instead: until so many stitches are on the needle
    std::optional<Figure> stated;  // "(12 sts)": stitches when they have been worked
    Place place;
    Place statedPlace;
};

// A further piece of the work, "Sleeve", which begins with loops of its own.
struct WrittenPiece {
    int first = 1;                        // number of its first row
    std::optional<WrittenCastOn> castOn;  // nothing: the text does not say how many there are
};

struct WrittenPattern {
    std::string title;
    std::string source;  // the lines "Source:", "Author:", "Year:" and "Place:", joined by commas
    Worked worked = Worked::Flat;
    std::optional<WrittenCastOn> castOn;
    std::vector<std::string> sizes;  // empty: one size without a name
    // Names for how often a repeat is worked, the same on every row that uses them: "A", "B".
    std::vector<std::string> counts;
    std::vector<OwnStitch> ownStitches;
    std::optional<int> repeatFrom;     // row number that follows the last row
    std::vector<RowsAgain> again;      // by ascending `after`
    std::vector<WrittenRow> rows;      // by ascending number; each row written out once
    std::vector<WrittenPiece> pieces;  // behind the first one, by ascending first row
    bool marksElsewhere = false;       // words that are no rows speak of markers

    std::size_t sizeCount() const { return sizes.empty() ? 1 : sizes.size(); }
    const WrittenRow* findRow(int number) const;
};

}  // namespace lacewright
