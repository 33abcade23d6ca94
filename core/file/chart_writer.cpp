#include <vector>

#include "core/file/chart_text.h"
#include "core/file/grading_text.h"
#include "core/file/json_value.h"
#include "core/file/layout_text.h"
#include "core/file/object_writer.h"
#include "core/file/row_text.h"
#include "core/file/size_text.h"
#include "core/file/spellings.h"
#include "core/file/stitch_text.h"
#include "core/file/version_steps.h"

namespace lacewright {
namespace {

void writeHead(ObjectWriter& out, const Chart& chart) {
    out.text("format", "lacewright-chart");
    out.number("version", kChartVersion);
    out.textUnlessEmpty("name", chart.name);
    out.textUnlessEmpty("notes", chart.notes);
    out.textUnlessEmpty("source", chart.source);
    if (chart.worked != Worked::Flat) {
        out.text("worked", spelt(kWorked, chart.worked));
    } else if (chart.firstSide != Side::Right) {
        out.text("firstSide", spelt(kSides, chart.firstSide));
    }
    if (chart.uncharted != Uncharted::None)
        out.text("uncharted", spelt(kUncharted, chart.uncharted));
}

std::string writeCastOn(const CastOn& castOn) {
    ObjectWriter out;
    if (castOn.multiple == 0) {
        out.number("stitches", castOn.plus);
    } else {
        out.number("multiple", castOn.multiple);
        out.numberUnless("plus", castOn.plus, 0);
    }
    out.extras(castOn.extras);
    return out.onOneLine();
}

std::string writeGauge(const Gauge& gauge) {
    ObjectWriter out;
    if (gauge.stitches != 0) out.decimal("stitches", gauge.stitches);
    if (gauge.rows != 0) out.decimal("rows", gauge.rows);
    out.extras(gauge.extras);
    return out.onOneLine();
}

void listUnlessEmpty(ObjectWriter& out, std::string_view name,
                     const std::vector<std::string>& items) {
    if (!items.empty()) out.raw(name, listOnLines(items));
}

template <class Item, class Write>
std::vector<std::string> all(const std::vector<Item>& items, Write write) {
    std::vector<std::string> texts;
    texts.reserve(items.size());
    for (const Item& item : items) texts.push_back(write(item));
    return texts;
}

std::vector<std::string> writeRows(const Chart& chart) {
    std::vector<std::string> rows;
    rows.reserve(chart.rows.size());
    for (int i = 0; i < chart.height(); ++i) {
        rows.push_back(quoteJson(writeRow(chart.row(i).cells(), *chart.stitches)));
    }
    return rows;
}

}  // namespace

std::string writeChart(const Chart& chart) {
    ObjectWriter out;
    writeHead(out, chart);
    if (chart.castOn) out.raw("castOn", writeCastOn(*chart.castOn));
    if (!(chart.gauge == Gauge{})) out.raw("gauge", writeGauge(chart.gauge));
    listUnlessEmpty(out, "stitches", writeOwnStitches(*chart.stitches));
    out.number("width", chart.width);
    listUnlessEmpty(out, "repeats", all(chart.repeats, [&](const Repeat& repeat) {
                        return writeRepeat(repeat, chart);
                    }));
    if (chart.rowRepeat) out.raw("rowRepeat", writeRowRepeat(*chart.rowRepeat, chart));
    listUnlessEmpty(out, "points", all(chart.points, writePoint));
    listUnlessEmpty(out, "sizes",
                    all(chart.sizes, [&](const Size& size) { return writeSize(size, chart); }));
    if (!(chart.grading == Grading{})) out.raw("grading", writeGrading(chart.grading, chart));
    out.raw("rows", listOnLines(writeRows(chart)));
    out.extras(chart.extras);
    return out.onLines();
}

}  // namespace lacewright
