#pragma once

#include <gtest/gtest.h>

#include <numeric>
#include <string>

#include "core/verdict/written_advice.h"
#include "core/verdict/written_report.h"

namespace lacewright::test {

// The report on these sizes of a text that can be read, with advice.
inline Report judged(const std::string& text, const std::vector<std::size_t>& sizes) {
    const ReadRows read = readWritten(text);
    EXPECT_FALSE(read.hasErrors()) << text;
    Report report = reportOnRows(read, sizes).report;
    adviseOnRows(read.pattern, sizes, report);
    return report;
}

// For the first size.
inline Report judged(const std::string& text) {
    return judged(text, {0});
}

inline Report judgedInAllSizes(const std::string& text) {
    std::vector<std::size_t> sizes(readWritten(text).pattern.sizeCount());
    std::iota(sizes.begin(), sizes.end(), 0);
    return judged(text, sizes);
}

// The first finding of a rule; null when there is none.
inline const Finding* findingOf(const Report& report, std::string_view rule) {
    for (const Finding& finding : report.findings) {
        if (finding.rule == rule) return &finding;
    }
    return nullptr;
}

inline std::vector<std::string> labelsOf(const Finding* finding) {
    std::vector<std::string> labels;
    for (const Mend& mend : finding->mends) labels.push_back(mend.label);
    return labels;
}

}  // namespace lacewright::test
