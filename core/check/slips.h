#pragma once

#include "core/check/alphabet.h"

// How charts come to be wrong, before anything is known of this one.
namespace lacewright {

// How often a cell is drawn wrong, or a stitch left out or drawn twice.
inline constexpr double kRedrawn = 0.002;
inline constexpr double kLeftOut = 0.002;
inline constexpr double kDrawnTwice = 0.001;
inline constexpr double kCastOnMistaken = 0.0005;
// A surplus stitch unlike its neighbour, against one that is drawn twice.
inline constexpr double kUnlikeNeighbour = 0.025;
// Times as often as in the ground, a slip hits a figure.
inline constexpr double kFigureSlips = 5.0;
// A gap is a matter of drawing: few stitches stand where one was meant.
inline constexpr double kGapSlips = 0.1;

// Times as often as a stitch of the ground: what is hit is what was meant to stand there.
inline double slipsIn(const Alphabet& alphabet, Alphabet::Letter meant) {
    if (meant == Alphabet::kGround) return 1;
    return meant == alphabet.noStitch ? kGapSlips : kFigureSlips;
}

}  // namespace lacewright
