#include "core/words/number_name.h"

#include <algorithm>
#include <array>

namespace lacewright {

int numberNamed(std::string_view word) {
    static constexpr std::array<std::string_view, 20> kNames = {
        "zero",     "one",     "two",     "three",     "four",     "five",    "six",
        "seven",    "eight",   "nine",    "ten",       "eleven",   "twelve",  "thirteen",
        "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"};
    static constexpr std::array<std::string_view, 8> kTens = {
        "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"};
    const auto one = std::find(kNames.begin(), kNames.end(), word);
    if (one != kNames.end()) return static_cast<int>(one - kNames.begin());
    const auto ten = std::find(kTens.begin(), kTens.end(), word);
    return ten == kTens.end() ? 0 : 10 * (static_cast<int>(ten - kTens.begin()) + 2);
}

}  // namespace lacewright
