#include "core/file/layout_text.h"

#include <algorithm>
#include <vector>

#include "core/file/file_limits.h"
#include "core/file/object_writer.h"
#include "core/file/refusal.h"

namespace lacewright {
namespace {

constexpr std::string_view kAnyRow = "the number of a drawn row";
constexpr Range kShift = {"a shift in columns", -kMaxWidth, kMaxWidth};
constexpr Range kGrowth = {"a number of stitches", -kMaxCount, kMaxCount};

void readJogs(std::span<const JsonValue> list, Repeat& repeat, const Chart& chart) {
    for (const JsonValue& value : list) {
        Fields fields(value);
        const JsonValue& rowValue = fields.need("row", kAnyRow);
        const int row = readRowNumber(rowValue, chart);
        Jog jog;
        jog.right = fields.number("right", kShift, 0);
        jog.left = fields.number("left", kShift, 0);
        jog.extras = fields.extras();
        if (!repeat.jogs.emplace(row, std::move(jog)).second) {
            refuse(rowValue, "A second jog is on row " + shown(rowValue) + "; expected one a row.");
        }
        const Box box = repeat.on(row);
        if (1 <= box.right && box.right <= box.left && box.left <= chart.width) continue;
        refuse(value,
               "The jog moves the repeat to the columns " + std::to_string(box.right) + " to " +
                   std::to_string(box.left) + "; expected columns from right to left within 1 to " +
                   std::to_string(chart.width) + ".",
               ErrorCode::OutOfRange);
    }
}

}  // namespace

Range columnsOf(const Chart& chart) {
    return {"a column", 1, chart.width};
}

int readRowNumber(const JsonValue& value, const Chart& chart) {
    const std::int64_t* number = value.whole();
    const int last = chart.rowNumber(chart.height() - 1);
    if (number != nullptr && *number >= 1 && *number <= last) {
        if (const auto index = chart.indexOfRowNumber(static_cast<int>(*number))) return *index;
    }
    const std::string allowed = chart.uncharted == Uncharted::None
                                    ? " from 1 to " + std::to_string(last)
                                    : ", an odd one from 1 to " + std::to_string(last);
    refuse(value, "Found " + shown(value) + "; expected " + std::string(kAnyRow) + allowed + ".",
           number != nullptr ? ErrorCode::OutOfRange : ErrorCode::Malformed);
}

RowSpan readRowSpan(Fields& fields, const Chart& chart, bool wholeChart) {
    RowSpan span = {0, chart.height() - 1};
    const JsonValue* first =
        wholeChart ? fields.find("firstRow") : &fields.need("firstRow", kAnyRow);
    if (first != nullptr) span.first = readRowNumber(*first, chart);
    const JsonValue* last = wholeChart ? fields.find("lastRow") : &fields.need("lastRow", kAnyRow);
    if (last != nullptr) span.last = readRowNumber(*last, chart);
    if (span.first <= span.last) return span;
    refuse(last != nullptr ? *last : *first,
           "The first row is " + std::to_string(chart.rowNumber(span.first)) +
               " and the last row " + std::to_string(chart.rowNumber(span.last)) +
               "; expected the last not below the first.");
}

Repeat readRepeat(const JsonValue& value, const Chart& chart) {
    Fields fields(value);
    Repeat repeat;
    repeat.name = fields.needText("name");
    repeat.right = fields.number("right", columnsOf(chart));
    repeat.left = fields.number("left", columnsOf(chart));
    if (repeat.right > repeat.left) {
        refuse(*fields.find("right"),
               "The right edge is in column " + std::to_string(repeat.right) +
                   " and the left edge in column " + std::to_string(repeat.left) +
                   "; expected the right one not beyond the left one.");
    }
    const RowSpan span = readRowSpan(fields, chart, true);
    repeat.firstRow = span.first;
    repeat.lastRow = span.last;
    readJogs(fields.list("jogs", kMaxRows), repeat, chart);
    repeat.extras = fields.extras();
    return repeat;
}

RowRepeat readRowRepeat(const JsonValue& value, const Chart& chart) {
    Fields fields(value);
    const RowSpan span = readRowSpan(fields, chart, false);
    RowRepeat repeat{span.first, span.last, fields.number("grows", kGrowth, 0)};
    repeat.extras = fields.extras();
    return repeat;
}

Point readPoint(const JsonValue& value, const Chart& chart) {
    Fields fields(value);
    Point point;
    point.name = fields.needText("name");
    point.column = fields.number("column", columnsOf(chart));
    point.extras = fields.extras();
    return point;
}

std::string writeRepeat(const Repeat& repeat, const Chart& chart) {
    ObjectWriter out;
    out.text("name", repeat.name);
    out.number("right", repeat.right);
    out.number("left", repeat.left);
    out.number("firstRow", chart.rowNumber(repeat.firstRow));
    out.number("lastRow", chart.rowNumber(repeat.lastRow));
    std::vector<std::string> jogs;
    for (const auto& [row, jog] : repeat.jogs) {
        ObjectWriter one;
        one.number("row", chart.rowNumber(row));
        one.numberUnless("right", jog.right, 0);
        one.numberUnless("left", jog.left, 0);
        one.extras(jog.extras);
        jogs.push_back(one.onOneLine());
    }
    if (!jogs.empty()) out.raw("jogs", listOnOneLine(jogs));
    out.extras(repeat.extras);
    return out.onOneLine();
}

std::string writeRowRepeat(const RowRepeat& repeat, const Chart& chart) {
    ObjectWriter out;
    out.number("firstRow", chart.rowNumber(repeat.firstRow));
    out.number("lastRow", chart.rowNumber(repeat.lastRow));
    out.numberUnless("grows", repeat.grows, 0);
    out.extras(repeat.extras);
    return out.onOneLine();
}

std::string writePoint(const Point& point) {
    ObjectWriter out;
    out.text("name", point.name);
    out.number("column", point.column);
    out.extras(point.extras);
    return out.onOneLine();
}

}  // namespace lacewright
