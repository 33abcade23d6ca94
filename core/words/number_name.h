#pragma once

#include <string_view>

namespace lacewright {

// "three" is 3, "twenty" 20, "ninety" 90; 0 for other words and for "zero".
int numberNamed(std::string_view word);

}  // namespace lacewright
