#include "core/base/length.h"

#include <cmath>
#include <cstdio>

namespace lacewright {

double lengthOf(int count, double perTenCm) {
    return count * 10.0 / perTenCm;
}

std::string tenths(double value) {
    double rounded = std::round(value * 10) / 10;
    if (rounded == 0) rounded = 0;  // no minus before zero
    char text[64];
    std::snprintf(text, sizeof text, "%.1f", rounded);
    return text;
}

std::string lengthText(double cm) {
    return tenths(cm) + " cm (" + tenths(inchesOf(cm)) + " in)";
}

}  // namespace lacewright
