#pragma once

#include "core/words/prove.h"

// How a proof tries the readings of a row.
namespace lacewright {

// A reading of a row held against the needle.
struct RowAttempt {
    CountedRow counted;
    Fit fit;
    RowVerdict verdict = RowVerdict::Fits;

    bool fits() const { return verdict == RowVerdict::Fits; }
};

// Requires: `counted` is a reading of a row.
RowAttempt rowAttempt(const Needle& needle, CountedRow counted);

// Puts what the row makes on the needle; a row that cannot be counted leaves nothing known.
void workOn(Needle& needle, RowAttempt& attempt);

// The loops, how many of them wait beyond a turn, out of reach of the next row, and what the yarn
// overs of the last row made.
struct NeedleReach {
    Needle needle;
    AffineForm waiting = {};
    OverLoops overs = {};
};

// Every reading of the row as it is worked there, the usual one first.
std::vector<CountedRow> readingsThere(const WrittenRow& row, std::size_t size,
                                      Variable firstVariable, const NeedleReach& reach,
                                      Worked worked);

// The row goes from end to end and takes the same whatever the row below made.
bool isWorkedThrough(const WrittenRow& row);

// After the row is worked as attempted.
NeedleReach after(const NeedleReach& reach, RowAttempt attempt);

}  // namespace lacewright
