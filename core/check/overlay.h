#pragma once

#include <array>
#include <vector>

#include "core/check/alphabet.h"

namespace lacewright {

// How the cells of rows fall on their images by one symmetry.
struct Overlay {
    // Cells of one kind on images of another.
    std::array<std::array<double, kLetterKinds>, kLetterKinds> on{};
    // Of cells on images of their kind: those on their like, a mirror swapping leans, and those on
    // the same letter.
    std::array<double, kLetterKinds> like{};
    std::array<double, kLetterKinds> same{};
    double cells = 0;

    void put(const Alphabet& alphabet, bool mirror, Alphabet::Letter cell, Alphabet::Letter image);
    void add(const Overlay& other, double times);
};

// What an image says of a cell where the symmetry holds, learnt from such rows: log P(image v |
// cell z) / P(v), at [v * letters + z]. A mirror swaps leans or, in patterns that know one decrease
// only, keeps them, as most of the rows have it.
std::vector<float> oddsFrom(const Overlay& overlay, const Alphabet& alphabet, bool mirror);

}  // namespace lacewright
