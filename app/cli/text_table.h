#pragma once

#include <ostream>
#include <string>
#include <vector>

namespace lacewright::cli {

// The first line is the heading.
using TextTable = std::vector<std::vector<std::string>>;

// Columns under one another, two blanks apart.
void writeTable(std::ostream& out, const TextTable& table);
// Comma-separated values as RFC 4180 describes them, lines ending in a plain newline.
void writeCsv(std::ostream& out, const TextTable& table);

}  // namespace lacewright::cli
