#pragma once

#include <string>
#include <string_view>

namespace lacewright::test {

// Where a file or folder of the project lies; `path` is relative to its top ("samples/...").
std::string inSourceTree(std::string_view path);

}  // namespace lacewright::test
