#pragma once

#include "core/check/check.h"
#include "core/words/prove.h"
#include "core/words/reader.h"

namespace lacewright {

// A report, and the proof that names the counts of its forms: that of the first size asked for.
struct WrittenReport {
    Report report;
    WrittenProof names;
};

// The verdict on written rows in the shape of the verdict on a chart: the same rules, severities
// and sentences. `sizes` chooses sizes of the pattern, counted from 0; findings that several of
// them share are told once.
// Requires: the pattern was read without errors, and `sizes` is not empty.
WrittenReport reportOnRows(const ReadRows& read, const std::vector<std::size_t>& sizes);

}  // namespace lacewright
