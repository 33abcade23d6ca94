#pragma once

#include <string>

#include "app/cli/verb.h"

namespace lacewright::cli {

// Reads and proves one file of written rows and tells the report; gives the exit code. Reading
// errors are all told, each with its place, and give kMisuse.
int checkRows(const Call& call, const std::string& file);

}  // namespace lacewright::cli
