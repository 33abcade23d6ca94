#include "core/file/size_text.h"

#include <algorithm>
#include <vector>

#include "core/base/text.h"
#include "core/file/file_limits.h"
#include "core/file/layout_text.h"
#include "core/file/object_writer.h"
#include "core/file/refusal.h"
#include "core/file/spellings.h"
#include "core/file/stitch_id.h"

namespace lacewright {
namespace {

constexpr Range kTimes = {"a number of times", 0, kMaxTimes};
constexpr Range kStitches = {"a number of stitches", 0, kMaxCount};

int readPlace(const JsonValue& value, const Chart& chart) {
    const std::string* name = value.text();
    if (name == nullptr) return wholeNumber(value, columnsOf(chart));
    if (const Point* point = chart.findPoint(*name)) return point->column;
    refuse(value, "Found " + shown(value) + "; expected a column or the name of a point.");
}

// Columns from start to end; without a member, the edge of the chart, where `wholeChart` allows it.
Reach readReach(Fields& fields, const Chart& chart, bool wholeChart) {
    constexpr std::string_view kExpected = "a column or the name of a point";
    Reach reach = {1, chart.width};
    const JsonValue* start = wholeChart ? fields.find("start") : &fields.need("start", kExpected);
    if (start != nullptr) reach.start = readPlace(*start, chart);
    const JsonValue* end = wholeChart ? fields.find("end") : &fields.need("end", kExpected);
    if (end != nullptr) reach.end = readPlace(*end, chart);
    if (reach.start <= reach.end) return reach;
    refuse(start != nullptr ? *start : *end,
           "The start is in column " + std::to_string(reach.start) + " and the end in column " +
               std::to_string(reach.end) + "; expected the start not beyond the end.");
}

void readTimes(const JsonValue& value, Size& size) {
    const JsonObject* members = value.object();
    if (members == nullptr || members->size() > kMaxRepeats) {
        refuse(value, "Found " +
                          (members == nullptr ? shown(value)
                                              : std::to_string(members->size()) + " members") +
                          "; expected an object with a number for each of at most " +
                          std::to_string(kMaxRepeats) + " repeats.");
    }
    for (const JsonMember& member : *members) {
        size.times.emplace(member.name, wholeNumber(member.value, kTimes));
    }
}

void readChanges(std::span<const JsonValue> list, Size& size, const Chart& chart) {
    for (const JsonValue& value : list) {
        Fields fields(value);
        const RowSpan span = readRowSpan(fields, chart, false);
        ReachChange change{span.first, span.last, readReach(fields, chart, false)};
        change.extras = fields.extras();
        const auto above = std::lower_bound(
            size.changes.begin(), size.changes.end(), change,
            [](const ReachChange& a, const ReachChange& b) { return a.firstRow < b.firstRow; });
        const bool clashes =
            (above != size.changes.end() && above->firstRow <= change.lastRow) ||
            (above != size.changes.begin() && (above - 1)->lastRow >= change.firstRow);
        if (clashes) {
            refuse(value,
                   "Two changes of this size share a row; expected changes on rows of their own.");
        }
        size.changes.insert(above, std::move(change));
    }
}

Substitution readSubstitution(const JsonValue& value, const Chart& chart, StitchTable& table) {
    Fields fields(value);
    Substitution substitution;
    substitution.row = readRowNumber(fields.need("row", "the number of a drawn row"), chart);
    substitution.column = fields.number("column", columnsOf(chart));
    substitution.edge = fields.choice("edge", kEdges);
    const JsonValue& id = fields.need("stitch", "a stitch id");
    substitution.stitch = readStitchId(id, table);
    substitution.extras = fields.extras();
    return substitution;
}

void writePlace(ObjectWriter& out, std::string_view name, int column, const Chart& chart) {
    if (const Point* point = chart.pointAt(column)) {
        out.text(name, point->name);
    } else {
        out.number(name, column);
    }
}

std::string writeChange(const ReachChange& change, const Chart& chart) {
    ObjectWriter out;
    out.number("firstRow", chart.rowNumber(change.firstRow));
    out.number("lastRow", chart.rowNumber(change.lastRow));
    writePlace(out, "start", change.reach.start, chart);
    writePlace(out, "end", change.reach.end, chart);
    out.extras(change.extras);
    return out.onOneLine();
}

std::string writeSubstitution(const Substitution& substitution, const Chart& chart) {
    ObjectWriter out;
    out.number("row", chart.rowNumber(substitution.row));
    out.number("column", substitution.column);
    if (substitution.edge != Edge::Start) out.text("edge", spelt(kEdges, substitution.edge));
    out.text("stitch", substitution.stitch);
    out.extras(substitution.extras);
    return out.onOneLine();
}

// A list on one line under that name, unless it would be empty.
template <class Item>
void writeList(ObjectWriter& out, std::string_view name, const std::vector<Item>& items,
               std::string (*write)(const Item&, const Chart&), const Chart& chart) {
    if (items.empty()) return;
    std::vector<std::string> texts;
    texts.reserve(items.size());
    for (const Item& item : items) texts.push_back(write(item, chart));
    out.raw(name, listOnOneLine(texts));
}

}  // namespace

Size readSize(const JsonValue& value, const Chart& chart, StitchTable& table) {
    Fields fields(value);
    Size size;
    size.name = fields.needText("name");
    size.reach = readReach(fields, chart, true);
    if (const JsonValue* times = fields.find("times")) readTimes(*times, size);
    if (const JsonValue* count = fields.find("stitches"))
        size.stitches = wholeNumber(*count, kStitches);
    readChanges(fields.list("changes", kMaxRows), size, chart);
    for (const JsonValue& item : fields.list("substitutions", kMaxSubstitutions)) {
        size.substitutions.push_back(readSubstitution(item, chart, table));
    }
    if (const JsonValue* body = fields.find("body"))
        size.body = positiveNumber(*body, static_cast<int>(kMaxBody));
    if (const JsonValue* count = fields.find("shoulder"))
        size.shoulder = wholeNumber(*count, kStitches);
    size.extras = fields.extras();
    return size;
}

std::string writeSize(const Size& size, const Chart& chart) {
    ObjectWriter out;
    out.text("name", size.name);
    writePlace(out, "start", size.reach.start, chart);
    writePlace(out, "end", size.reach.end, chart);
    if (!size.times.empty()) {
        ObjectWriter times;
        for (const auto& [repeat, count] : size.times) times.number(repeat, count);
        out.raw("times", times.onOneLine());
    }
    if (size.stitches) out.number("stitches", *size.stitches);
    writeList(out, "changes", size.changes, writeChange, chart);
    writeList(out, "substitutions", size.substitutions, writeSubstitution, chart);
    if (size.body) out.decimal("body", *size.body);
    if (size.shoulder) out.number("shoulder", *size.shoulder);
    out.extras(size.extras);
    return out.onOneLine();
}

}  // namespace lacewright
