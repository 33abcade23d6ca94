#pragma once

#include <map>

#include "core/words/cut_rows.h"

namespace lacewright {

// The counts of a proof, one after the other expressed in those of the boxes.
class BoxCounts {
 public:
    // `named`: the pattern's own counts are those of the boxes; otherwise all free counts are n.
    explicit BoxCounts(bool named) : named_(named) {}

    AffineForm inBoxes(const AffineForm& form);
    // Gives a value to what the proof of one row left open.
    void settle(const WrittenRowProof& row);

 private:
    bool isBox(Variable count) const { return named_ && isNamedCount(count); }

    bool named_;
    std::map<Variable, AffineForm> known_;
};

}  // namespace lacewright
