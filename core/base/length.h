#pragma once

#include <string>

// Lengths are centimetres unless a name says inches; an inch is 2.54 cm exactly (international yard
// and pound agreement, 1959).
namespace lacewright {

inline constexpr double kCmPerInch = 2.54;

inline double inchesOf(double cm) {
    return cm / kCmPerInch;
}
inline double cmOf(double inches) {
    return inches * kCmPerInch;
}

// How long so many stitches or rows are. Requires: perTenCm > 0.
double lengthOf(int count, double perTenCm);

// "42.5 cm (16.7 in)": both from the length as it is, each to the nearest tenth, a half away from
// zero.
std::string lengthText(double cm);
// One decimal, a half away from zero, never "-0.0".
std::string tenths(double value);

}  // namespace lacewright
