#pragma once

#include <string>
#include <utility>

#include "core/chart/chart.h"
#include "core/file/fields.h"

// Repeats, the row repeat and points. Rows are named by the number the knitter reads. Readers take
// the chart read so far (its width, its rows and the rule for uncharted rows) and throw Refusal.
namespace lacewright {

Repeat readRepeat(const JsonValue& value, const Chart& chart);
RowRepeat readRowRepeat(const JsonValue& value, const Chart& chart);
Point readPoint(const JsonValue& value, const Chart& chart);

std::string writeRepeat(const Repeat& repeat, const Chart& chart);
std::string writeRowRepeat(const RowRepeat& repeat, const Chart& chart);
std::string writePoint(const Point& point);

// The index of the row with that number.
int readRowNumber(const JsonValue& value, const Chart& chart);
// Indices of the first and last row of the members "firstRow" and "lastRow"; without them, where
// `wholeChart` allows it, those of the chart.
struct RowSpan {
    int first = 0;
    int last = 0;
};
RowSpan readRowSpan(Fields& fields, const Chart& chart, bool wholeChart);
Range columnsOf(const Chart& chart);

}  // namespace lacewright
