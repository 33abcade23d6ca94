#pragma once

#include <functional>
#include <string>

#include "app/cli/verb.h"
#include "core/check/check.h"

namespace lacewright::cli {

// How a report is told, whatever was checked: a chart or written rows.
struct ReportWords {
    std::string file;
    std::string row = "Row";                      // or "Round"
    std::string made = "drawn";                   // or "written"
    std::string proven;                           // the closing sentence when there is no fault
    std::function<std::string(Variable)> nameOf;  // names of the counts in the forms
};

// Writes the report as asked for (--json or not); gives kDone or kFound.
int tellReport(const Call& call, const Report& report, const ReportWords& words);

}  // namespace lacewright::cli
