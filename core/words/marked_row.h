#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "core/words/written.h"

// Where markers, the centre and bound-off stitches lie while rows are worked, and so how far "k to
// m" goes. Only a plain number of stitches can be followed.
namespace lacewright {

// How often each stretch to a landmark is worked, by the stretch's address; negative when that
// differs from one working to the next.
using LandmarkTimes = std::map<const Stretch*, int>;

// Loops on the needle and how many of them lie before each place, from the start of the row.
struct LoopsAndPlaces {
    std::int64_t loops = 0;
    std::int64_t waiting = 0;            // before the row, beyond the last turn
    std::vector<std::int64_t> markers;   // ascending
    std::vector<std::int64_t> boundOff;  // where the last row bound off
    std::vector<std::int64_t> turns;     // of short rows that no row has passed since

    // To be worked from the other end.
    void turn();
};

// The needle of one size with its markers, row after row. `size` counts from 0.
class LandmarkFollower {
 public:
    // Requires: the pattern has a cast-on.
    LandmarkFollower(const WrittenPattern& pattern, std::size_t size);

    // Works the row and notes in `found` how far its stretches go, also where the row then does not
    // fit. False for a row that cannot be followed and for every one after it.
    bool work(const WrittenRow& row, Side side, LandmarkTimes& found);
    // What the row worked last says of a marker that does not lie there, "it slips a marker where
    // none lies"; empty when all is well, or words can be read in more than one way.
    const std::string& trouble() const { return trouble_; }
    std::int64_t loops() const { return now_.loops; }

 private:
    bool round_;
    std::size_t size_;
    bool lost_;
    LoopsAndPlaces now_;
    Side side_ = Side::Right;
    std::int64_t worked_ = 0;  // stitches in all rows
    std::string trouble_;
};

}  // namespace lacewright
