#pragma once

#include <optional>
#include <vector>

#include "core/base/extras.h"

// What a designer says about the sizes of a chart as a family. The checks across sizes judge only
// what is said here. Row arguments are row indices, columns count from the right, lengths are
// centimetres.
namespace lacewright {

// Stitches that are joined one by one to those of another shoulder.
struct Shoulder {
    int row = 0;    // the row that leaves them
    int right = 1;  // their columns, right..left
    int left = 1;
    Extras extras = {};
    bool operator==(const Shoulder&) const = default;
};

struct Grading {
    bool rising = false;              // sizes stand from the smallest to the largest
    bool halved = false;              // every size is divided into two halves alike
    int pieces = 1;                   // so many pieces of this width go round the body
    int edgeStitches = 0;             // plain stitches at each side beside the charted ones
    std::optional<double> leastEase;  // finished width less body, of all pieces together
    std::optional<double> mostEase;
    std::vector<Shoulder> shoulders;
    Extras extras = {};
    bool operator==(const Grading&) const = default;
};

inline constexpr int kMaxPieces = 100;
inline constexpr int kMaxShoulders = 64;
inline constexpr double kMaxEase = 1000;   // centimetres, more or fewer
inline constexpr double kMaxBody = 10000;  // centimetres

}  // namespace lacewright
