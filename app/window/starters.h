#pragma once

#include <QString>
#include <vector>

#include "core/base/result.h"
#include "core/chart/chart.h"

namespace lacewright::app {

// A chart to begin with, built into the program.
struct Starter {
    const char* file;  // in the resources under /starters; empty for the blank chart
    const char* title;
    const char* about;  // one line
};

const std::vector<Starter>& starters();
// The chart that is open when the program starts for the first time.
const Starter& firstStarter();
Result<Chart> chartOf(const Starter& starter);

}  // namespace lacewright::app
