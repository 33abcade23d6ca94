#pragma once

#include <gtest/gtest.h>

#include <string>

#include "core/verdict/written_advice.h"
#include "core/verdict/written_report.h"

namespace lacewright::test {

// The report on a text that can be read, for its first size, with advice.
inline Report judged(const std::string& text) {
    const ReadRows read = readWritten(text);
    EXPECT_FALSE(read.hasErrors()) << text;
    Report report = reportOnRows(read, {0}).report;
    adviseOnRows(read.pattern, {0}, report);
    return report;
}

}  // namespace lacewright::test
