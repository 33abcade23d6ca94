#pragma once

#include <span>

#include "core/file/json_value.h"

// How files of older versions become files of this one. To make version n + 1: append to
// kVersionSteps a function that turns a document of version n into one of version n + 1, and
// describe the new version in resources/chart.schema.json. The rest of core/file knows the newest
// version only.
namespace lacewright {

// Throws Refusal when the document cannot be understood.
using VersionStep = void (*)(JsonValue& document);

// [0] leads from version 1 to version 2. None yet: version 1 is the newest.
inline constexpr std::span<const VersionStep> kVersionSteps = {};
inline constexpr int kChartVersion = static_cast<int>(kVersionSteps.size()) + 1;

// Takes every step the document still needs and sets its "version". Throws Refusal when it has no
// version or one beyond the last step.
void bringUpToDate(JsonValue& document, std::span<const VersionStep> steps);

}  // namespace lacewright
