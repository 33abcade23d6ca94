#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "core/check/finding.h"
#include "core/check/survey.h"

namespace lacewright {

// What row 1 of a size takes, and could take if its repeats were worked another number of times.
class FirstRow {
 public:
    // Both must live longer. Requires: a chart with rows.
    FirstRow(const Survey& survey, const SizeSurvey& size);

    std::int64_t count() const { return count_; }
    // "Size M: row 1 takes 45 stitches"
    std::string words() const;
    // Another number of times of one repeat gives `wanted`.
    bool canTake(std::int64_t wanted) const;
    // Adds to the message of a finding how `wanted` stitches, which are not count(), can be had or
    // else what comes near, with the full stop; and the mends that give them.
    void explain(std::int64_t wanted, Finding& finding) const;

 private:
    struct Box {
        int repeat = 0;
        std::int64_t each = 0;  // stitches it takes each time
        std::int64_t now = 0;   // how often it is worked
    };

    std::int64_t timesFor(const Box& box, std::int64_t wanted) const;
    void addWay(std::int64_t wanted, const std::vector<std::pair<Box, std::int64_t>>& times,
                Finding& finding) const;
    bool changeOne(std::int64_t wanted, Finding& finding) const;
    bool changeTwo(std::int64_t wanted, Finding& finding) const;
    std::string nearest(std::int64_t wanted) const;

    const Chart* chart_;
    const SizeSurvey* size_;
    std::int64_t count_ = 0;
    std::vector<Box> boxes_;
};

}  // namespace lacewright
