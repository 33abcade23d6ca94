#pragma once

#include <string>
#include <vector>

#include "core/check/check.h"

namespace lacewright::test {

// Every finding on a line, for failure messages.
inline std::string describe(const Report& report) {
    static const char* const kSeverities[] = {"note", "warning", "fault"};
    std::string all = report.findings.empty() ? "no findings" : "";
    for (const Finding& f : report.findings) {
        all += std::string(kSeverities[static_cast<int>(f.severity)]) + " " + f.rule + ": " +
               f.message + "\n";
    }
    return all;
}

inline std::vector<Finding> faultsOf(const Report& report) {
    std::vector<Finding> faults;
    for (const Finding& finding : report.findings) {
        if (finding.severity == Severity::Fault) faults.push_back(finding);
    }
    return faults;
}

}  // namespace lacewright::test
