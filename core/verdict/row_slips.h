#pragma once

#include <functional>

#include "core/words/written.h"

namespace lacewright {

// Single slips that may have gone into a written row: each is told by what undoes it.
struct SlipUndone {
    // Rest: a stretch goes on to another number of stitches before the end or a landmark. Count,
    // Brackets: stitches, or brackets, are worked another number of times.
    enum class Kind : std::uint8_t { Reworked, PutIn, LeftOut, Rest, Count, Brackets };
    Kind kind = Kind::Reworked;
    Elements elements;  // of the row, as it was meant
    // The stitch that was meant, once; of one left out again, that one. Its term of Brackets tells
    // them from a repeat.
    Working meant;
    bool twice = false;  // a stitch left out again stands beside its like
    // Of Rest, Count and Brackets: the number that was meant, and that which is written.
    Figure figure = {};
    Figure written = {};
    Landmark to = Landmark::None;  // of Rest
};

// The place of a stitch that was not there before, as it stands in the elements and what is made of
// them.
inline constexpr Place kNewPlace{static_cast<std::size_t>(-1), 0, 0, 0};

// Every way to work one stitch of the row otherwise, to put one in or to leave one out, and every
// other number near each that is written: of stitches, of times, of what a stretch may go up to;
// each row that comes of it once. Within brackets this concerns each time they are worked.
void forEachSlip(const WrittenRow& row, const std::vector<Working>& letters, std::size_t size,
                 const std::function<void(const SlipUndone&)>& visit);

}  // namespace lacewright
