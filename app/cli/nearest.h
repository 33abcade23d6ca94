#pragma once

#include <string>
#include <vector>

namespace lacewright::cli {

// " (did you mean \"check\"?)" when one of the
// known words is close to the one given; nothing otherwise.
std::string didYouMean(const std::string& word, const std::vector<std::string>& known);

}  // namespace lacewright::cli
