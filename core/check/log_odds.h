#pragma once

#include <cmath>
#include <limits>
#include <utility>

// Sums of odds that are kept as logarithms.
namespace lacewright {

inline constexpr double kImpossible = -std::numeric_limits<double>::infinity();

// log(exp(a) + exp(b))
inline double logAdd(double a, double b) {
    if (a < b) std::swap(a, b);
    return b == kImpossible ? a : a + std::log1p(std::exp(b - a));
}

}  // namespace lacewright
