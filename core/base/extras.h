#pragma once

#include <string>
#include <utility>
#include <vector>

namespace lacewright {

// JSON members of a chart file that this version does not know, in file order, kept as text so that
// saving loses nothing: the name, and its value as well-formed JSON.
using Extras = std::vector<std::pair<std::string, std::string>>;

}  // namespace lacewright
