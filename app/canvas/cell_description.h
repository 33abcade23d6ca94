#pragma once

#include <QString>

#include "app/document/view_state.h"
#include "core/check/check.h"

namespace lacewright::app {

// A cell in words, a line each: place, the stitch with what it takes and makes, how it is worked on
// this row, and what the findings say about it. Plain text.
QString describeCell(const Chart& chart, const Report& report, Cell cell);

// The place and the stitch alone, for a screen reader: "Row 3, stitch 5: yarn over".
QString nameOfCell(const Chart& chart, Cell cell);

}  // namespace lacewright::app
