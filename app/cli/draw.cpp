#include <algorithm>
#include <array>
#include <charconv>
#include <ostream>

#include "app/cli/nearest.h"
#include "app/cli/verb.h"
#include "core/base/disk.h"
#include "core/base/text.h"
#include "core/file/chart_file.h"
#include "core/sheet/lay_out.h"
#include "core/sheet/svg.h"

namespace lacewright::cli {
namespace {

constexpr std::array<std::pair<std::string_view, Paper>, 5> kPapers = {
    {{"a4", kA4}, {"a3", kA3}, {"a5", kA5}, {"letter", kLetter}, {"tabloid", kTabloid}}};

std::string endingOf(const std::string& path) {
    const std::size_t dot = path.find_last_of('.');
    return dot == std::string::npos ? "" : lowerAscii(path.substr(dot + 1));
}

Result<SheetOptions> readOptions(const Call& call, const std::string& ending) {
    SheetOptions options;
    options.title = call.get("--title");
    if (call.has("--cell")) {
        const std::string text = call.get("--cell");
        const auto [end, error] =
            std::from_chars(text.data(), text.data() + text.size(), options.cellMm);
        const bool whole = error == std::errc() && end == text.data() + text.size();
        if (!whole || !(options.cellMm >= 1 && options.cellMm <= 50)) {
            return misuse("--cell must be a number of millimetres from 1 to 50, not \"" + text +
                          "\".");
        }
    }
    if (ending == "pdf") {
        const std::string name = lowerAscii(call.get("--paper", "a4"));
        const auto paper = std::find_if(kPapers.begin(), kPapers.end(),
                                        [&](const auto& known) { return known.first == name; });
        if (paper == kPapers.end()) {
            return misuse("--paper must be a4, a3, a5, letter or tabloid, not \"" + name + "\".");
        }
        options.paper = paper->second;
    } else if (call.has("--paper")) {
        return misuse(
            "--paper is for PDF only; an SVG or PNG is one picture as large as the chart.");
    }
    return options;
}

Outcome chooseSize(const Call& call, const Chart& chart, SheetOptions& options) {
    const std::string name = call.get("--size", "all");
    if (name == "all" || chart.findSize(name) != nullptr) {
        options.size = name == "all" ? "" : name;
        return Done{};
    }
    std::vector<std::string> names;
    for (const Size& size : chart.sizes) names.push_back(size.name);
    if (names.empty()) return misuse("The chart has no sizes, so none is called \"" + name + "\".");
    return misuse("The chart has no size \"" + name + "\"" + didYouMean(name, names) +
                  "; its sizes are " + listing(names) + ".");
}

Outcome writePicture(const Call& call, const Sheet& sheet, const std::string& ending,
                     const std::string& path) {
    if (ending == "svg") return writeFile(path, svgText(sheet));
    const auto& painter = ending == "pdf" ? call.painters.pdf : call.painters.png;
    if (painter) return painter(sheet, path);
    return misuse("This build draws SVG only; PDF and PNG need the one with the window.");
}

}  // namespace

int runDraw(const Call& call) {
    if (call.files.size() != 1) return call.refuse("draw takes one chart at a time.");
    const std::string out = call.get("-o");
    if (out.empty()) return call.refuse("draw needs -o and the file to write.");
    const std::string ending = endingOf(out);
    if (ending != "svg" && ending != "pdf" && ending != "png") {
        return call.refuse("The file to write must end in .svg, .pdf or .png, not \"" + out +
                           "\".");
    }
    Result<SheetOptions> options = readOptions(call, ending);
    if (!options) return call.refuse(options.error().text());
    const Result<Chart> chart = loadChart(call.files[0]);
    if (!chart) return call.refuse(chart.error().text());
    if (const Outcome chosen = chooseSize(call, *chart, *options); !chosen) {
        return call.refuse(chosen.error().text());
    }
    const Outcome written = writePicture(call, layOut(*chart, *options), ending, out);
    if (!written) return call.refuse(written.error().text());
    return kDone;
}

}  // namespace lacewright::cli
