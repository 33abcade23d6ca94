#include "core/file/stitch_id.h"

#include <algorithm>

#include "core/file/fields.h"
#include "core/file/refusal.h"

namespace lacewright {

std::string shownId(std::string_view id) {
    return shown({std::string(id), 0});
}

void checkStitchId(std::string_view id, const JsonValue& value) {
    Stitch stitch;
    stitch.id = id;
    const bool control = std::any_of(id.begin(), id.end(),
                                     [](char c) { return static_cast<unsigned char>(c) < ' '; });
    if (!control && !stitchProblem(stitch)) return;
    refuse(value, "Found " + shownId(id) + "; expected a stitch id of 1 to " +
                      std::to_string(kMaxIdLength) + " bytes without blanks, quotes and *.");
}

StitchIndex findOrAddStitch(std::string_view id, StitchTable& table, const JsonValue& value) {
    const StitchIndex found = table.find(id);
    if (found != kCovered) return found;
    checkStitchId(id, value);
    const StitchIndex added = table.addUnknown(id);
    if (added != kCovered) return added;
    refuse(value, "The chart names more kinds of stitch than the 65534 that are read at most.",
           ErrorCode::OutOfRange);
}

std::string readStitchId(const JsonValue& value, StitchTable& table) {
    std::string id = textOf(value);
    findOrAddStitch(id, table, value);
    return id;
}

}  // namespace lacewright
