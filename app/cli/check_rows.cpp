#include "app/cli/check_rows.h"

#include <algorithm>
#include <ostream>

#include "app/cli/nearest.h"
#include "app/cli/report_out.h"
#include "core/base/disk.h"
#include "core/check/proven.h"
#include "core/verdict/written_advice.h"
#include "core/verdict/written_report.h"

namespace lacewright::cli {
namespace {

std::string proven(const WrittenPattern& pattern, const Report& report, const std::string& size) {
    if (size != "all") return "Proven for size " + size + ".";
    const bool free = std::any_of(report.rows.begin(), report.rows.end(), [](const RowCount& row) {
        return !row.forms.takes.isConstant();
    });
    return provenSentence(!pattern.sizes.empty(), free);
}

int refuseText(const Call& call, const ReadRows& read, const std::string& text,
               const std::string& file) {
    for (const ReadMessage& message : read.messages) {
        if (message.error) call.err << rendered(message, text, file) << "\n";
    }
    return kMisuse;
}

// The sizes asked for, counted from 0; empty when the pattern has no such size.
std::vector<std::size_t> sizesNamed(const WrittenPattern& pattern, const std::string& name) {
    std::vector<std::size_t> sizes;
    for (std::size_t i = 0; i < pattern.sizeCount(); ++i) {
        if (name == "all" || (i < pattern.sizes.size() && pattern.sizes[i] == name))
            sizes.push_back(i);
    }
    return sizes;
}

}  // namespace

int checkRows(const Call& call, const std::string& file) {
    const Result<std::string> text = readFile(file);
    if (!text) return call.refuse(text.error().text());
    const ReadRows read = readWritten(*text);
    if (read.hasErrors()) return refuseText(call, read, *text, file);
    const WrittenPattern& pattern = read.pattern;
    const std::string name = call.get("--size", "all");
    const auto sizes = sizesNamed(pattern, name);
    if (sizes.empty()) {
        return call.refuse(file + ": The pattern has no size \"" + name + "\"" +
                           didYouMean(name, pattern.sizes) + ".");
    }
    WrittenReport written = reportOnRows(read, sizes);
    adviseOnRows(pattern, sizes, written.report);
    ReportWords words;
    words.file = file;
    words.made = "written";
    words.row = pattern.worked == Worked::Flat ? "Row" : "Round";
    words.proven = proven(pattern, written.report, name);
    words.nameOf = [&written](Variable count) { return written.names.nameOf(count); };
    return tellReport(call, written.report, words);
}

}  // namespace lacewright::cli
