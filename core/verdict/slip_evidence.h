#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "core/verdict/slip_frame.h"

namespace lacewright {

// How well a row as it may have been meant agrees with the rest of its text. Frames are drawn once
// for all rows that count alike.
class SlipEvidence {
 public:
    explicit SlipEvidence(std::size_t size) : size_(size) {}

    // Log odds of the row as meant, which `text` holds, against the row as written: of one
    // slip that shows so many times over. Nothing where they cannot be drawn.
    std::optional<double> of(const WrittenPattern& text, std::size_t row, const PlacedRow& meant,
                             const PlacedRow& written, std::size_t times);

 private:
    std::size_t size_;
    std::map<std::vector<int>, std::unique_ptr<SlipFrame>> frames_;  // by row, lengths, counts
    int notDrawn_ = 0;  // frames that could not be made
};

}  // namespace lacewright
