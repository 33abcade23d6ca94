#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lacewright {

// What working some written stitches did, found by moving loops between two needles one by one:
// independent of the numbers in the catalogue.
struct WorkedLoops {
    int takes = 0;  // loops gone from the left needle
    int makes = 0;  // loops now on the right needle
    // The loop that lies on top of the others, counted from 0 in the order they are met; -1 when
    // none lies over another.
    int onTop = -1;
    bool passedOver = false;  // it lies on top because it was passed over, not by working together
};

// Two needles with their tips at the back of each vector. Every loop remembers which loop of the
// row below lies on top in it (-1: made from the yarn alone).
class LoopNeedles {
 public:
    LoopNeedles();

    // Works comma-separated stitches such as "sl1, k2tog, psso". False when a part is not known or
    // finds too few loops.
    bool work(std::string_view text);
    WorkedLoops worked() const;

 private:
    bool workPart(const std::string& part);
    bool workSimple(const std::string& part);
    bool workTogether(int count, bool throughBack);
    bool workIntoSame(const std::string& inner, int count);
    bool passOver(int depth, int count);
    bool passOnLeft(int place);
    bool slip(int count);
    bool bring(int count);
    bool hold(int count);
    bool workHeld(int count);

    std::vector<int> left_;
    std::vector<int> right_;
    std::vector<int> held_;
    int onTop_ = -1;
    bool passedOver_ = false;
};

// Works an abbreviation on fresh needles; nothing when it cannot be read.
std::optional<WorkedLoops> workOut(std::string_view abbreviation);

}  // namespace lacewright
