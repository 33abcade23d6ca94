#pragma once

#include <string>
#include <vector>

// Published body measurements, from resources/body_sizes.json. They are those of bodies, without
// any ease.
namespace lacewright {

// A measurement of one size: from the smallest to the largest body it is for.
struct BodySpan {
    double low = 0;
    double high = 0;
    double middle() const { return (low + high) / 2; }
    bool operator==(const BodySpan&) const = default;
};

struct BodyMeasurement {
    std::string id;  // "bust"
    std::string name;
    std::vector<BodySpan> inches;  // by size, as printed; empty where the source gives none
    std::vector<BodySpan> cm;      // by size, as printed, not converted
};

// Measured around the body, so that it can have ease.
inline bool isGirth(const BodyMeasurement& measurement) {
    return measurement.id == "bust" || measurement.id == "waist" || measurement.id == "hips" ||
           measurement.id == "upper-arm";
}

struct BodySizeTable {
    std::string id;  // "women"
    std::string title;
    std::string source;  // says so where figures are from memory
    std::vector<std::string> sizes;
    std::vector<BodyMeasurement> measurements;
};

const std::vector<BodySizeTable>& bodySizeTables();

}  // namespace lacewright
