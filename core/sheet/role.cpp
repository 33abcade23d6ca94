#include "core/sheet/role.h"

#include <array>
#include <cstddef>

namespace lacewright {
namespace {

// Okabe and Ito, Color Universal Design (2008): colours that people with any kind of colour vision
// tell apart. Only blue is dark enough for text on white (5.19:1) and carries black on its tint.
constexpr std::uint32_t kBlack = 0x000000;
constexpr std::uint32_t kBlue = 0x0072B2;
constexpr std::uint32_t kBlueTint = 0xDCEBF5;
constexpr std::uint32_t kVermillion = 0xD55E00;
constexpr std::uint32_t kWhite = 0xFFFFFF;
constexpr std::uint32_t kGridGrey = 0x9A9A9A;
constexpr std::uint32_t kDarkGrey = 0x5A5A5A;
constexpr std::uint32_t kNoStitchGrey = 0xD9D9D9;

constexpr std::array<Look, static_cast<std::size_t>(Role::Count)> kLooks = {{
    {"paper", 0, kBlack, true, kWhite},
    {"no-stitch", 0, kBlack, true, kNoStitchGrey},
    {"size-ground", 0, kBlack, true, kBlueTint},
    {"grid", 0.6, kGridGrey},
    {"heavy-grid", 1.0, kDarkGrey},
    {"stitch", 1.4, kBlack},
    {"solid", 0, kBlack, true, kBlack},
    {"veil", 0, kBlack, true, kWhite, 0.72},
    {"frame", 2.0, kBlack},
    {"cut", 1.4, kBlack, false, kWhite, 1, 4},
    {"repeat", 3.2, kVermillion},
    {"bracket", 1.4, kVermillion},
    {"size-outline", 2.6, kBlue},
    {"size-edge", 1.4, kBlue, false, kWhite, 1, 3},
    {"size-line", 1.2, kDarkGrey},
    {"chosen-size-line", 2.6, kBlue},
    {"swap", 0, kBlack, true, kBlue},
    {"swap-outline", 1.6, kBlue},
    {"point-mark", 1.0, kBlack},
    {"join", 0, kBlack, true, kDarkGrey},
    {"legend-cell", 1.0, kDarkGrey, true, kWhite},
    {"rule", 0.6, kGridGrey},
    {"title", 0, kBlack, false, kWhite, 1, 0, true},
    {"heading", 0, kBlack, false, kWhite, 1, 0, true},
    {"name", 0, kBlack, false, kWhite, 1, 0, true},
    {"body", 0, kBlack},
    {"row-number", 0, kBlack},
    {"column-number", 0, kDarkGrey},
    {"repeat-name", 0, kBlack},
    {"point-name", 0, kBlack, false, kWhite, 1, 0, true},
    {"size-name", 0, kBlack},
    {"chosen-size-name", 0, kBlue, false, kWhite, 1, 0, true},
    {"join-mark", 0, kDarkGrey},
}};

}  // namespace

const Look& lookOf(Role role) {
    return kLooks[static_cast<std::size_t>(role)];
}

}  // namespace lacewright
