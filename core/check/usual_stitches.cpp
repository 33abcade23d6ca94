#include "core/check/usual_stitches.h"

#include <algorithm>
#include <array>

namespace lacewright {
namespace {

struct Usual {
    std::string_view id;
    double patterns;
};

constexpr double kRare = 0.5;
constexpr std::array<Usual, 13> kUsual = {{{"k", 28},
                                           {"yo", 26},
                                           {"p", 18},
                                           {"k2tog", 16},
                                           {"p2tog", 7},
                                           {"ssk", 5},
                                           {"skp", 5},
                                           {"sk2p", 4},
                                           {"k3tog", 4},
                                           {"slwyb", 3},
                                           {"yo2", 3},
                                           {"slwyf", 2},
                                           {"s2kp", 1}}};

}  // namespace

double usualness(std::string_view id) {
    const auto found = std::find_if(kUsual.begin(), kUsual.end(),
                                    [&](const Usual& usual) { return usual.id == id; });
    return found == kUsual.end() ? kRare : found->patterns;
}

}  // namespace lacewright
