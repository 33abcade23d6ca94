#pragma once

#include <string>

#include "app/cli/verb.h"

namespace lacewright::cli {

// Proves one chart and tells the report; gives the exit code.
int checkChart(const Call& call, const std::string& file);

}  // namespace lacewright::cli
