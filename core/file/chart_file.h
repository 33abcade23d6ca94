#pragma once

#include <string>

#include "core/base/result.h"
#include "core/chart/chart.h"

// Charts on the disk. Paths are UTF-8.
namespace lacewright {

Result<Chart> loadChart(const std::string& path);

// Replaces the file in one step; on failure the old one is untouched.
// Requires: what writeChart requires.
Outcome saveChart(const Chart& chart, const std::string& path);

}  // namespace lacewright
