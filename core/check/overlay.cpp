#include "core/check/overlay.h"

#include <cmath>

namespace lacewright {
namespace {

using ByKind = std::array<double, kLetterKinds>;

// Cells of every kind that are thought to have been seen before, and how many of them fell on
// their kind because the symmetry holds, the others as chance has it.
constexpr double kKindsBefore = 2.0;
constexpr double kKeptBefore = 0.8;
constexpr double kImagesBefore = 1.0;  // of every kind
constexpr double kPairsBefore = 0.5;   // of one kind, half of them alike
constexpr double kSwapsBefore = 1.0;   // leans that a mirror swapped

std::size_t kindAt(const Alphabet& alphabet, std::size_t letter) {
    return static_cast<std::size_t>(alphabet.kinds[letter]);
}

// log P(image of kind b | cell of kind a) / P(b). Both ways alike: cells on images, images on
// cells.
std::array<ByKind, kLetterKinds> kindOdds(const Overlay& overlay) {
    std::array<ByKind, kLetterKinds> on{};
    ByKind all{};
    double sum = kLetterKinds * kImagesBefore;
    for (std::size_t a = 0; a < kLetterKinds; ++a) {
        for (std::size_t b = 0; b < kLetterKinds; ++b) {
            on[a][b] = (overlay.on[a][b] + overlay.on[b][a]) / 2;
            all[a] += on[a][b];
        }
        sum += all[a];
    }
    std::array<ByKind, kLetterKinds> odds{};
    for (std::size_t a = 0; a < kLetterKinds; ++a) {
        for (std::size_t b = 0; b < kLetterKinds; ++b) {
            const double share = (all[b] + kImagesBefore) / sum;
            const double before = (a == b ? kKeptBefore : 0) + (1 - kKeptBefore) * share;
            odds[a][b] =
                std::log((on[a][b] + kKindsBefore * before) / (all[a] + kKindsBefore) / share);
        }
    }
    return odds;
}

}  // namespace

void Overlay::put(const Alphabet& alphabet, bool mirror, Alphabet::Letter cell,
                  Alphabet::Letter image) {
    const std::size_t letter = Alphabet::placeOf(cell);
    const std::size_t kind = kindAt(alphabet, letter);
    ++on[kind][kindAt(alphabet, Alphabet::placeOf(image))];
    if (image == (mirror ? alphabet.mirrors[letter] : cell)) ++like[kind];
    if (image == cell) ++same[kind];
    ++cells;
}

void Overlay::add(const Overlay& other, double times) {
    for (std::size_t a = 0; a < kLetterKinds; ++a) {
        for (std::size_t b = 0; b < kLetterKinds; ++b) on[a][b] += times * other.on[a][b];
        like[a] += times * other.like[a];
        same[a] += times * other.same[a];
    }
    cells += times * other.cells;
}

std::vector<float> oddsFrom(const Overlay& overlay, const Alphabet& alphabet, bool mirror) {
    const auto letters = static_cast<std::size_t>(alphabet.size());
    ByKind ofKind{};
    ByKind shares{};
    for (std::size_t letter = 0; letter < letters; ++letter) {
        ++ofKind[kindAt(alphabet, letter)];
        shares[kindAt(alphabet, letter)] += alphabet.shares[letter];
    }
    const auto shaping = static_cast<std::size_t>(LetterKind::Shaping);
    const bool swaps = mirror && overlay.like[shaping] + kSwapsBefore > overlay.same[shaping];
    const auto kinds = kindOdds(overlay);
    // Of one kind: on its like, and on each of the others.
    ByKind alike{};
    ByKind unlike{};
    for (std::size_t kind = 0; kind < kLetterKinds; ++kind) {
        const double share = ((swaps ? overlay.like : overlay.same)[kind] + kPairsBefore / 2) /
                             (overlay.on[kind][kind] + kPairsBefore);
        if (ofKind[kind] <= 1) continue;
        alike[kind] = std::log(share);
        unlike[kind] = std::log((1 - share) / (ofKind[kind] - 1));
    }
    std::vector<float> odds(letters * letters);
    for (std::size_t image = 0; image < letters; ++image) {
        const std::size_t kind = kindAt(alphabet, image);
        const auto like = swaps ? Alphabet::placeOf(alphabet.mirrors[image]) : image;
        const double share = ofKind[kind] > 1 ? std::log(alphabet.shares[image] / shares[kind]) : 0;
        for (std::size_t cell = 0; cell < letters; ++cell) {
            double log = kinds[kindAt(alphabet, cell)][kind];
            if (kindAt(alphabet, cell) == kind)
                log += (cell == like ? alike : unlike)[kind] - share;
            odds[image * letters + cell] = static_cast<float>(log);
        }
    }
    return odds;
}

}  // namespace lacewright
