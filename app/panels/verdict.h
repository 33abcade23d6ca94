#pragma once

#include <QString>

#include "core/check/check.h"

namespace lacewright::app {

// What the check says of a chart, in words for a person.
struct Verdict {
    Severity worst = Severity::Note;
    bool proven = false;  // no fault and no warning
    QString sentence;     // "Proven for every size and any number of repeats."
    QString shortForm;    // for the status bar: "Proven" or "2 faults, 1 warning"
    QString assumed;      // what the proof rests on; empty when on nothing
};

Verdict verdictOf(const Chart& chart, const Report& report);

}  // namespace lacewright::app
