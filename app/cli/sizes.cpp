#include <ostream>

#include "app/cli/plan_options.h"
#include "app/cli/plan_report.h"
#include "app/cli/text_table.h"
#include "app/cli/verb.h"
#include "core/base/text.h"
#include "core/file/chart_file.h"
#include "core/file/object_writer.h"
#include "core/plan/gauge.h"
#include "core/plan/planner.h"
#include "core/plan/size_summary.h"
#include "core/words/size_words.h"

namespace lacewright::cli {
namespace {

std::string partedWords(const SizeSummary& size) {
    std::vector<std::string> pairs;
    for (const PartedByEdge& parted : size.parted) {
        pairs.push_back("row " + std::to_string(parted.row) + " columns " +
                        std::to_string(parted.pair.increase) + " and " +
                        std::to_string(parted.pair.decrease) +
                        (parted.edge == Edge::Start ? " (start)" : " (end)"));
    }
    return pairs.empty() ? "none" : join(pairs, "; ");
}

std::string place(const std::string& point, int column) {
    return point.empty() ? std::to_string(column) : point + " (" + std::to_string(column) + ")";
}

TextTable readingTable(const Chart& chart, const std::vector<SizeSummary>& sizes) {
    TextTable table = {{"size", "start", "end"}};
    for (const Repeat& repeat : chart.repeats) table[0].push_back("times " + repeat.name);
    for (const char* heading : {"row 1", "last row", "width", "parted"})
        table[0].emplace_back(heading);
    for (const SizeSummary& size : sizes) {
        std::vector<std::string> line = {size.name, place(size.startPoint, size.reach.start),
                                         place(size.endPoint, size.reach.end)};
        for (const auto& [repeat, times] : size.times) line.push_back(std::to_string(times));
        line.push_back(std::to_string(size.first));
        line.push_back(std::to_string(size.last));
        line.push_back(size.cm ? lengthText(*size.cm) : "no gauge");
        line.push_back(partedWords(size));
        table.push_back(std::move(line));
    }
    return table;
}

TextTable csvTable(const Chart& chart, const std::vector<SizeSummary>& sizes) {
    TextTable table = {{"size", "start", "end", "start_point", "end_point"}};
    for (const Repeat& repeat : chart.repeats) table[0].push_back("times_" + repeat.name);
    for (const char* heading :
         {"row_1", "last_row", "width_cm", "width_in", "last_width_cm", "last_width_in", "parted"})
        table[0].emplace_back(heading);
    for (const SizeSummary& size : sizes) {
        std::vector<std::string> line = {size.name, std::to_string(size.reach.start),
                                         std::to_string(size.reach.end), size.startPoint,
                                         size.endPoint};
        for (const auto& [repeat, times] : size.times) line.push_back(std::to_string(times));
        line.push_back(std::to_string(size.first));
        line.push_back(std::to_string(size.last));
        for (const auto& cm : {size.cm, size.lastCm}) {
            line.push_back(cm ? tenths(*cm) : "");
            line.push_back(cm ? tenths(inchesOf(*cm)) : "");
        }
        line.push_back(std::to_string(size.parted.size()));
        table.push_back(std::move(line));
    }
    return table;
}

std::string jsonOf(const Chart& chart, const std::vector<SizeSummary>& sizes) {
    std::vector<std::string> items;
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        const SizeSummary& size = sizes[i];
        ObjectWriter out;
        out.text("size", size.name);
        out.number("start", size.reach.start);
        out.number("end", size.reach.end);
        out.textUnlessEmpty("startPoint", size.startPoint);
        out.textUnlessEmpty("endPoint", size.endPoint);
        ObjectWriter times;
        for (const auto& [repeat, count] : size.times) times.number(repeat, count);
        out.raw("times", times.onOneLine());
        out.raw("firstRow", std::to_string(size.first));
        out.raw("lastRow", std::to_string(size.last));
        if (size.cm) out.decimal("cm", *size.cm);
        if (size.cm) out.decimal("inches", inchesOf(*size.cm));
        if (size.lastCm) out.decimal("lastCm", *size.lastCm);
        if (size.lastCm) out.decimal("lastInches", inchesOf(*size.lastCm));
        std::vector<std::string> parted;
        for (const PartedByEdge& one : size.parted) {
            ObjectWriter pair;
            pair.text("edge", one.edge == Edge::Start ? "start" : "end");
            pair.number("row", one.row);
            pair.number("increase", one.pair.increase);
            pair.number("decrease", one.pair.decrease);
            parted.push_back(pair.onOneLine());
        }
        out.raw("parted", listOnOneLine(parted));
        out.text("words", join(sizeInstructionSentences(chart, chart.sizes[i]), " "));
        items.push_back(out.onOneLine());
    }
    return listOnOneLine(items);
}

// With what a plan has to say, where the sizes are those of a plan.
void tellSizes(const Call& call, const Chart& chart, const PlanReport* planned = nullptr) {
    const std::vector<SizeSummary> sizes = summarizeSizes(chart);
    if (call.has("--csv")) {
        TextTable table = csvTable(chart, sizes);
        if (planned != nullptr) addPlanColumns(table, planned->plan);
        writeCsv(call.out, table);
    } else if (call.has("--json")) {
        ObjectWriter out;
        out.text("file", call.files[0]);
        out.raw("sizes", jsonOf(chart, sizes));
        if (planned != nullptr) addPlan(out, *planned);
        call.out << out.onOneLine() << "\n";
    } else if (sizes.empty()) {
        call.out << call.files[0] << ": The chart has no sizes.\n";
    } else {
        writeTable(call.out, readingTable(chart, sizes));
        call.out << "\n";
        for (const Size& size : chart.sizes)
            call.out << join(sizeInstructionSentences(chart, size), " ") << "\n";
        if (planned != nullptr) tellPlan(call.out, *planned);
    }
}

int runPlan(const Call& call, const Chart& chart) {
    const Result<PlanOptions> options = readPlanOptions(call, chart);
    if (!options) return call.refuse(options.error().text());
    const Result<Plan> plan = planSizes(chart, options->request);
    if (!plan) return call.refuse(plan.error().text());
    const Result<Chart> used = usePlan(chart, *plan);
    if (!used) return call.refuse(used.error().text());
    PlanReport report{*plan, lostByPlan(chart, *plan), {}, options->lengthCm};
    if (options->lengthCm > 0)
        report.length = planLength(*used, used->gauge.rows, options->lengthCm);
    tellSizes(call, *used, &report);
    if (!call.has("-o")) return kDone;
    const Outcome saved = saveChart(*used, call.get("-o"));
    return saved ? kDone : call.refuse(saved.error().text());
}

}  // namespace

int runSizes(const Call& call) {
    if (call.files.size() != 1) return call.refuse("sizes takes one chart at a time.");
    if (call.has("--csv") && call.has("--json"))
        return call.refuse("Choose --csv or --json, not both.");
    const Result<Chart> chart = loadChart(call.files[0]);
    if (!chart) return call.refuse(chart.error().text());
    if (chart->height() == 0) return call.refuse(call.files[0] + ": The chart has no rows.");
    if (call.has("--widths") || call.has("--table")) return runPlan(call, *chart);
    for (const char* option : {"--gauge", "--part", "--ease", "--edge", "--tolerance", "--multiple",
                               "--hold", "--length", "-o"}) {
        if (call.has(option))
            return call.refuse(std::string(option) + " needs --widths or --table.");
    }
    tellSizes(call, *chart);
    return kDone;
}

}  // namespace lacewright::cli
