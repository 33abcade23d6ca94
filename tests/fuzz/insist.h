#pragma once

#include <cstdlib>
#include <iostream>
#include <string_view>

namespace lacewright::fuzz {

// Ends the run with a sentence where something does not hold.
inline void insist(bool holds, std::string_view what) {
    if (holds) return;
    std::cerr << what << "\n";
    std::abort();
}

}  // namespace lacewright::fuzz
