#include <algorithm>
#include <set>
#include <unordered_map>

#include "core/base/text.h"
#include "core/chart/edits.h"
#include "core/file/chart_text.h"
#include "core/file/fields.h"
#include "core/file/file_limits.h"
#include "core/file/grading_text.h"
#include "core/file/layout_text.h"
#include "core/file/refusal.h"
#include "core/file/row_text.h"
#include "core/file/size_text.h"
#include "core/file/spellings.h"
#include "core/file/stitch_text.h"
#include "core/file/version_steps.h"

namespace lacewright {
namespace {

constexpr Range kWidth = {"a number of columns", 1, kMaxWidth};
constexpr Range kNeedle = {"a number of stitches", 0, kMaxCount};
constexpr Range kMultiple = {"a multiple", 1, kMaxCount};
constexpr Range kPlus = {"a number of stitches", -kMaxCount, kMaxCount};

void checkFormat(const JsonValue& document) {
    constexpr std::string_view kFormat = "lacewright-chart";
    const JsonValue& format = Fields(document).need("format", quoteJson(kFormat));
    if (format.text() != nullptr && *format.text() == kFormat) return;
    refuse(format, "Found " + shown(format) + "; expected " + quoteJson(kFormat) + ".",
           ErrorCode::Unsupported);
}

CastOn readCastOn(const JsonValue& value) {
    Fields fields(value);
    CastOn castOn;
    const JsonValue* stitches = fields.find("stitches");
    const JsonValue* multiple = fields.find("multiple");
    if ((stitches == nullptr) == (multiple == nullptr)) {
        refuse(value, "Found " + std::string(stitches == nullptr ? "neither" : "both") +
                          " of \"stitches\" and \"multiple\"; expected one of them.");
    }
    if (stitches != nullptr) {
        castOn.plus = wholeNumber(*stitches, kNeedle);
    } else {
        castOn.multiple = wholeNumber(*multiple, kMultiple);
        castOn.plus = fields.number("plus", kPlus, 0);
    }
    castOn.extras = fields.extras();
    return castOn;
}

Gauge readGauge(const JsonValue& value) {
    Fields fields(value);
    Gauge gauge;
    if (const JsonValue* found = fields.find("stitches"))
        gauge.stitches = positiveNumber(*found, kMaxGauge);
    if (const JsonValue* found = fields.find("rows"))
        gauge.rows = positiveNumber(*found, kMaxGauge);
    gauge.extras = fields.extras();
    return gauge;
}

const std::string& rowText(const JsonValue& row) {
    if (row.text() != nullptr) return *row.text();
    refuse(row, "Found " + shown(row) + "; expected a text of stitch ids.");
}

// The cells of rows that read differently, and which of them every row has.
struct Cells {
    std::vector<std::vector<StitchIndex>> distinct;
    std::vector<std::size_t> ofRow;
};

Cells readCells(const JsonList& rows, const RowWidth& width, const Chart& chart,
                RowReader& reader) {
    Cells cells;
    cells.ofRow.reserve(rows.size());
    std::unordered_map<std::string_view, std::size_t> known;
    for (const JsonValue& row : rows) {
        const std::string& text = rowText(row);
        const auto [place, isNew] = known.try_emplace(text, cells.distinct.size());
        if (isNew) {
            const int number = chart.rowNumber(static_cast<int>(cells.ofRow.size()));
            cells.distinct.push_back(reader.cells(text, width, number, row));
        }
        cells.ofRow.push_back(place->second);
    }
    return cells;
}

// Sets the width; gives the rows' cells, which wait for the catalogue to be complete.
Cells readRows(Fields& fields, Chart& chart, StitchTable& table) {
    RowReader reader(table);
    const JsonValue* width = fields.find("width");
    if (width != nullptr) chart.width = wholeNumber(*width, kWidth);
    const JsonValue& value = fields.need("rows", "a list of row texts");
    const JsonList& rows = listOf(value, kMaxRows);
    if (rows.empty()) refuse(value, "Found no row; expected at least one.");
    if (width == nullptr) {
        chart.width = reader.columns(rowText(rows.front()), rows.front());
        if (chart.width < 1 || chart.width > kMaxWidth) {
            refuse(rows.front(),
                   "Row 1 has " + std::string(chart.width < 1 ? "no column" : "too many columns") +
                       "; expected 1 to " + std::to_string(kMaxWidth) + ".",
                   ErrorCode::OutOfRange);
        }
    }
    if (rows.size() > static_cast<std::size_t>(kMaxCells / chart.width)) {
        refuse(value,
               "The chart has " + std::to_string(chart.width) + " columns and " +
                   std::to_string(rows.size()) + " rows; expected at most " +
                   std::to_string(kMaxCells) + " cells.",
               ErrorCode::OutOfRange);
    }
    const std::string_view expected = width != nullptr ? "the width of the chart" : "as in row 1";
    return readCells(rows, {chart.width, expected}, chart, reader);
}

RowList makeRows(Cells cells, const StitchCatalogue& stitches) {
    std::vector<RowPtr> distinct;
    distinct.reserve(cells.distinct.size());
    for (auto& row : cells.distinct) distinct.push_back(makeRow(std::move(row), stitches));
    std::vector<RowPtr> rows;
    rows.reserve(cells.ofRow.size());
    for (const std::size_t index : cells.ofRow) rows.push_back(distinct[index]);
    return RowList(rows);
}

// Reads every item of a list of named things; refuses a second one of the same name.
template <class Item, class Read>
std::vector<Item> readNamed(std::span<const JsonValue> list, std::string_view what, Read read) {
    std::vector<Item> items;
    std::set<std::string> names;
    for (const JsonValue& value : list) {
        items.push_back(read(value));
        if (names.insert(items.back().name).second) continue;
        refuse(*value.find("name"), "A second " + std::string(what) + " is called " +
                                        quoteJson(items.back().name) +
                                        "; expected names that differ.");
    }
    return items;
}

void readHead(Fields& fields, Chart& chart) {
    fields.find("format");
    fields.find("version");
    chart.name = fields.text("name");
    chart.notes = fields.text("notes");
    chart.source = fields.text("source");
    chart.worked = fields.choice("worked", kWorked);
    chart.firstSide = fields.choice("firstSide", kSides);
    if (chart.worked == Worked::InTheRound && chart.firstSide == Side::Wrong) {
        refuse(*fields.find("firstSide"),
               "Found \"wrong\"; expected \"right\", the only side that faces when working in the "
               "round.");
    }
    chart.uncharted = fields.choice("uncharted", kUncharted);
    if (const JsonValue* found = fields.find("castOn")) chart.castOn = readCastOn(*found);
    if (const JsonValue* found = fields.find("gauge")) chart.gauge = readGauge(*found);
}

Chart chartFrom(const JsonValue& document) {
    Fields fields(document);
    Chart chart;
    readHead(fields, chart);
    StitchTable table(readOwnStitches(fields.list("stitches", kMaxOwnStitches)));
    Cells cells = readRows(fields, chart, table);
    // Stands for the height until the catalogue, and with it the rows, are complete.
    chart.rows = RowList(std::vector<RowPtr>(cells.ofRow.size()));
    chart.repeats =
        readNamed<Repeat>(fields.list("repeats", kMaxRepeats), "repeat",
                          [&chart](const JsonValue& v) { return readRepeat(v, chart); });
    if (const JsonValue* found = fields.find("rowRepeat"))
        chart.rowRepeat = readRowRepeat(*found, chart);
    chart.points = readNamed<Point>(fields.list("points", kMaxPoints), "point",
                                    [&chart](const JsonValue& v) { return readPoint(v, chart); });
    chart.sizes = readNamed<Size>(fields.list("sizes", kMaxSizes), "size",
                                  [&](const JsonValue& v) { return readSize(v, chart, table); });
    if (const JsonValue* found = fields.find("grading")) chart.grading = readGrading(*found, chart);
    chart.extras = fields.extras();
    chart.stitches = table.takeCatalogue();
    chart.rows = makeRows(std::move(cells), *chart.stitches);
    return chart;
}

// "NAME:LINE:COLUMN" without a path, "NAME:LINE: /PATH" with one; line and column from 1.
std::string placeOf(std::string_view text, std::string_view fileName, std::size_t offset,
                    bool column, const std::string& path) {
    const std::string_view before = text.substr(0, offset);
    const std::size_t lineStart = before.find_last_of('\n') + 1;  // 0 on the first line
    const auto line = 1 + std::count(before.begin(), before.end(), '\n');
    std::string place = fileName.empty() ? "line " : std::string(fileName) + ":";
    place += std::to_string(line);
    if (column) {
        // A byte that is not UTF-8 may stand in the line; everything before it is sound.
        const std::size_t characters = characterCount(before.substr(lineStart));
        place += (fileName.empty() ? ", column " : ":") + std::to_string(1 + characters);
    }
    if (!path.empty()) place += (fileName.empty() ? ", " : ": ") + path;
    return place;
}

}  // namespace

Result<Chart> readChart(std::string_view text, std::string_view fileName) {
    constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
    if (text.size() > kMaxFileBytes) {
        return Error{ErrorCode::OutOfRange,
                     "The text is longer than the " + std::to_string(kMaxFileBytes >> 20U) +
                         " MiB that are read at most.",
                     std::string(fileName)};
    }
    JsonValue document;
    try {
        document = parseJson(text);
        checkFormat(document);
        bringUpToDate(document, kVersionSteps);
        Chart chart = chartFrom(document);
        // What is wrong between members that are each right by themselves.
        if (const auto problem = frameProblem(chart)) {
            return Error{ErrorCode::Malformed, problem->message, std::string(fileName)};
        }
        return chart;
    } catch (const Refusal& refusal) {
        const bool parsed = refusal.value != nullptr;
        const std::string path = parsed ? jsonPathOf(document, *refusal.value) : refusal.path;
        const std::size_t offset = parsed ? refusal.value->offset : refusal.offset;
        return Error{refusal.code, refusal.message,
                     placeOf(text, fileName, offset, path.empty() && !parsed, path)};
    }
}

}  // namespace lacewright
