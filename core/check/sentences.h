#pragma once

#include <functional>
#include <string>

#include "core/count/needle.h"

// The words of findings, shared by drawn charts and written rows.
namespace lacewright {

using NameOf = std::function<std::string(Variable)>;

// "1 stitch", "12 stitches".
std::string stitchCount(std::int64_t count);
// "once", "twice", "3 times".
std::string timesText(std::int64_t times);

// What a misfit is about.
struct MisfitPlace {
    std::string row = "Row";  // "Row" or "Round"
    int number = 1;
    std::string name;     // "Set-up row"; empty: by its number
    std::string below;    // "row 6", what it is worked on; empty: the row of the number before
    bool castOn = false;  // it is measured against the cast-on, not against a row
    NameOf repeatName;    // a repeat's name; empty for one without name
    NameOf variableName;  // letter of a free count in formulas: "n"
};

// The general statement and the smallest counter-example in one sentence. `takes` and `available`
// are the forms as drawn, before counts were solved, and are used where they share their repeats.
// Requires: !fit.fits().
std::string misfitSentence(const MisfitPlace& place, const AffineForm& takes,
                           const AffineForm& available, const Fit& fit);

}  // namespace lacewright
