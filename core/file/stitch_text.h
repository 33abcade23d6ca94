#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/file/json_value.h"
#include "core/stitch/catalogue.h"

// The stitches that a chart defines itself: those that are not built in, and those that differ from
// the built-in stitch with their id.
namespace lacewright {

// Throws Refusal.
std::vector<Stitch> readOwnStitches(std::span<const JsonValue> list);

// The definitions to be written, one JSON object each; unknown stitches are defined nowhere.
std::vector<std::string> writeOwnStitches(const StitchCatalogue& stitches);

}  // namespace lacewright
