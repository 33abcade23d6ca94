#pragma once

#include "core/words/marked_row.h"

// "K to marker" does not say how far; where the markers were placed does, and likewise for the
// centre of the row and for stitches bound off in the row below.
namespace lacewright {

// Puts a number of times in place of each stretch that goes to a landmark and is worked as often
// whenever its row is, in every size, as far as the counts are fixed: from a cast-on of a fixed
// number to the first row that does not fit. A marker that is not mentioned is slipped where it
// comes. What cannot be followed is left as it was.
void settleMarkers(WrittenPattern& pattern);

// The pattern before that, to be settled anew when a row of it has been changed.
WrittenPattern unsettled(WrittenPattern pattern);

// A stretch of the pattern goes to a landmark.
bool goesToLandmark(const WrittenPattern& pattern);

// Rows go to markers or slip them, and no words but the rows themselves say where these lie.
bool placesItsMarkers(const WrittenPattern& pattern);

// The row with such numbers in it as `needle` finds them, which works the row.
WrittenRow settledRow(WrittenRow row, Side side, LandmarkFollower& needle);

}  // namespace lacewright
