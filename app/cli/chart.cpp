#include <ostream>

#include "app/cli/nearest.h"
#include "app/cli/verb.h"
#include "core/base/disk.h"
#include "core/base/text.h"
#include "core/check/check.h"
#include "core/file/chart_file.h"
#include "core/words/chart_from_rows.h"
#include "core/words/reader.h"

namespace lacewright::cli {
namespace {

// The size named, counted from 0; nothing for all of them.
Result<std::optional<std::size_t>> sizeNamed(const WrittenPattern& pattern,
                                             const std::string& name) {
    if (name == "all") return std::optional<std::size_t>();
    for (std::size_t i = 0; i < pattern.sizes.size(); ++i) {
        if (pattern.sizes[i] == name) return std::optional(i);
    }
    return Error{ErrorCode::NotFound,
                 "The pattern has no size \"" + name + "\"" + didYouMean(name, pattern.sizes) + ".",
                 {}};
}

// Says what was written and what does not fit; gives the exit code.
int tell(const Call& call, const ChartFromRows& drawn, const std::string& path) {
    const Chart& chart = drawn.chart;
    call.out << path << ": " << chart.height() << " rows, " << chart.width << " columns"
             << (chart.repeats.empty()
                     ? ""
                     : ", " + counted(static_cast<std::int64_t>(chart.repeats.size()), "repeat",
                                      "repeats"))
             << "\n";
    for (const std::string& remark : drawn.remarks) call.out << "  " << remark << "\n";
    const Report report = check(chart);
    for (const Finding& finding : report.findings) {
        if (finding.severity == Severity::Fault) call.out << "  " << finding.message << "\n";
    }
    if (!drawn.knittable && report.knittable) {
        call.out << "  The rows as written cannot be knitted; check the text.\n";
    }
    return drawn.knittable && report.knittable ? kDone : kFound;
}

}  // namespace

int runChart(const Call& call) {
    if (call.files.size() != 1 || !call.has("-o")) {
        return call.refuse("chart needs one file of written rows and -o OUT.lacewright.");
    }
    const std::string& file = call.files.front();
    const std::string path = call.get("-o");
    if (!lowerAscii(path).ends_with(".lacewright")) {
        return call.refuse("A chart is written to a file that ends in .lacewright, not to \"" +
                           path + "\".");
    }
    const Result<std::string> text = readFile(file);
    if (!text) return call.refuse(text.error().text());
    const ReadRows read = readWritten(*text);
    if (read.hasErrors()) {
        for (const ReadMessage& message : read.messages) {
            if (message.error) call.err << rendered(message, *text, file) << "\n";
        }
        return kMisuse;
    }
    const auto size = sizeNamed(read.pattern, call.get("--size", "all"));
    if (!size) return call.refuse(file + ": " + size.error().text());
    const Result<ChartFromRows> drawn = chartFromRows(read.pattern, *size);
    if (!drawn) return call.refuse(file + ": " + drawn.error().text());
    if (const Outcome saved = saveChart(drawn->chart, path); !saved) {
        return call.refuse(saved.error().text());
    }
    return tell(call, *drawn, path);
}

}  // namespace lacewright::cli
